import { distanceBetween, distanceReached } from '$lib/hardware/distanceReached';
import { instantAt } from '$lib/hardware/instantAt';
import { toInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import type { Instant } from '../views';
import { axisOfWheel } from './distances';
import { listBuildRecords } from './builds';
import { listPeriods } from './periodRows';
import { listServices, type ServiceRecord } from './services';
import { listOnBikes, onBikeAt } from './wheelOnBike';

/** What was on a wheel at one moment. */
export interface WheelState {
	at: Instant;
	/** distance of the wheel by then */
	atM: number;
	/** null = none was fitted */
	build: { id: number; name: string; fitted: Instant; sinceM: number } | null;
	parts: PartThen[];
	/** the last service before; null = none is written down */
	service:
		| (Pick<ServiceRecord, 'id' | 'lubricant' | 'amountG' | 'partsTurned'> & {
				at: Instant;
				sinceM: number;
		  })
		| null;
	bike: { id: number; name: string } | null;
}

interface PartThen {
	partId: number;
	number: string;
	name: string;
	kind: string;
	revision: string;
	batch: string;
	serial: string;
	quantity: number;
}

/**
 * What was on a wheel at an instant, or where its distance axis had come so far.
 *
 * @param when `atMs`, milliseconds since 1970 UTC, or `atM`, metres on the axis
 * @returns null for a distance on a wheel that was never ridden
 */
export function wheelStateAt(
	ledger: Ledger,
	wheelId: number,
	when: { atMs: number } | { atM: number }
): WheelState | null {
	const axis = axisOfWheel(ledger, wheelId);
	const ms = 'atMs' in when ? when.atMs : instantAt(axis, when.atM);
	if (ms === null) return null;
	const period = listPeriods(ledger).find(
		(one) => one.wheelId === wheelId && one.fromMs <= ms && (one.untilMs === null || ms < one.untilMs)
	);
	const service = listServices(ledger, wheelId).findLast(({ atMs }) => atMs <= ms);
	const on = onBikeAt(listOnBikes(ledger), wheelId, ms);
	const build = period && listBuildRecords(ledger).find(({ id }) => id === period.buildId);
	const ofBuild = axis.filter(({ buildId }) => buildId === period?.buildId);
	return {
		at: toInstant(Math.round(ms)),
		atM: distanceReached(axis, ms),
		build: build
			? {
					id: build.id,
					name: build.name,
					fitted: toInstant(period.fromMs),
					sinceM: distanceReached(ofBuild, ms)
				}
			: null,
		parts: build ? partsOf(ledger, build.id) : [],
		service: service
			? {
					id: service.id,
					at: toInstant(service.atMs),
					lubricant: service.lubricant,
					amountG: service.amountG,
					partsTurned: service.partsTurned,
					sinceM: distanceBetween(axis, service.atMs, ms)
				}
			: null,
		bike: on && { id: on.bikeId, name: on.bike }
	};
}

function partsOf(ledger: Ledger, buildId: number): PartThen[] {
	return ledger.database
		.prepare<[number], PartThen>(
			`SELECT p.id AS partId, p.number, p.name, p.kind, p.revision, p.batch, b.serial, b.quantity
			FROM build_part b JOIN part p ON p.id = b.part_id WHERE b.build_id = ? ORDER BY b.position`
		)
		.all(buildId);
}
