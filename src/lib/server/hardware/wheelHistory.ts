import { distanceReached } from '$lib/hardware/distanceReached';
import { gapsBetween } from '$lib/hardware/gapsBetween';
import { rideDistance } from '$lib/hardware/rideDistance';
import type { AxisPiece } from '$lib/hardware/wheelAxis';
import { toInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import type { Instant } from '../views';
import { listBikeRecords } from './bikeRows';
import { listBuildRecords } from './builds';
import { axisOfWheel, sumOf, type DistanceSum, type WheelPiece } from './distances';
import { listPeriods } from './periodRows';
import { listServices, type ServiceRecord } from './services';
import { listUnloggedDistance } from './unloggedDistance';
import { listOnBikes, onBikeAt } from './wheelOnBike';
import { slipsOnAxis, type SlipOnAxis } from './wheelSlips';
import { noticesOnAxis, type NoticeOnAxis } from './wheelNotices';
import { findWheel } from './wheels';

/** A stretch of the wheel's distance axis with the time that it stands for. */
export interface AxisBand {
	fromM: number;
	toM: number;
	from: Instant;
	until: Instant | null;
}

export interface WheelHistory extends DistanceSum {
	builds: (AxisBand & { id: number; build: { id: number; name: string } })[];
	/** times between builds when none was fitted, with what was ridden in them */
	gaps: AxisBand[];
	services: (Omit<ServiceRecord, 'atMs' | 'wheelId'> & {
		at: Instant;
		atM: number;
		/** until the next service, or until now */
		toM: number;
	})[];
	rides: {
		rideId: number;
		startedAt: Instant;
		fromM: number;
		toM: number;
		observedM: number;
		/** false = it ages the hub and counts in no rate */
		counted: boolean;
	}[];
	unlogged: { id: number; at: Instant; fromM: number; toM: number; note: string }[];
	slips: SlipOnAxis[];
	notices: NoticeOnAxis[];
	/** metres that belong to no build: ridden in a gap, or across a change and not answered yet */
	withoutBuildM: number;
	/** where tyre and device circumference are known: how many rides, and what they come to */
	corrected: { rides: number; recordedM: number; correctedM: number } | null;
}

/** Everything that happened to a wheel along its distance axis. */
export function wheelHistory(ledger: Ledger, wheelId: number): WheelHistory {
	const axis = axisOfWheel(ledger, wheelId);
	const reached = (ms: number | null) => distanceReached(axis, ms ?? Infinity);
	const band = ({ fromMs, untilMs }: { fromMs: number; untilMs: number | null }): AxisBand => ({
		fromM: reached(fromMs),
		toM: reached(untilMs),
		from: toInstant(fromMs),
		until: untilMs === null ? null : toInstant(untilMs)
	});
	const periods = listPeriods(ledger).filter((period) => period.wheelId === wheelId);
	const names = new Map(listBuildRecords(ledger).map(({ id, name }) => [id, name]));
	const services = listServices(ledger, wheelId);
	const notes = new Map(listUnloggedDistance(ledger, wheelId).map(({ id, note }) => [id, note]));
	return {
		...sumOf(axis),
		builds: periods.map((period) => ({
			...band(period),
			id: period.id,
			build: { id: period.buildId, name: names.get(period.buildId) ?? '' }
		})),
		gaps: gapsBetween(periods).map(band),
		services: services.map(({ atMs, wheelId: _, ...service }, index) => ({
			...service,
			at: toInstant(atMs),
			atM: reached(atMs),
			toM: reached(services[index + 1]?.atMs ?? null)
		})),
		rides: axis.flatMap((piece) => rideOnAxis(piece)),
		unlogged: axis
			.filter(({ kind }) => kind === 'unlogged')
			.map(({ id, startMs, fromM, toM }) => ({
				id,
				at: toInstant(startMs),
				fromM,
				toM,
				note: notes.get(id) ?? ''
			})),
		slips: slipsOnAxis(ledger, axis),
		notices: noticesOnAxis(ledger, wheelId, axis),
		withoutBuildM: sumOf(axis.filter(({ buildId }) => buildId === null)).totalM,
		corrected: correctedDistance(ledger, wheelId, axis)
	};
}

function rideOnAxis({ id, startMs, fromM, toM, part }: AxisPiece<WheelPiece>): WheelHistory['rides'] {
	if (part === null) return [];
	const counted = part.standing.state === 'counted' && part.buildId !== null;
	return [
		{
			rideId: id,
			startedAt: toInstant(startMs),
			fromM,
			toM,
			observedM: counted ? part.observedM : 0,
			counted
		}
	];
}

/** Only where the speed is counted at this wheel: elsewhere the tyre says nothing about the recording. */
function correctedDistance(
	ledger: Ledger,
	wheelId: number,
	axis: readonly WheelPiece[]
): WheelHistory['corrected'] {
	const tyreM = findWheel(ledger, wheelId).circumferenceM;
	const onBikes = listOnBikes(ledger);
	const sensors = new Map(listBikeRecords(ledger).map(({ id, speedSensor }) => [id, speedSensor]));
	const sum = { rides: 0, recordedM: 0, correctedM: 0 };
	for (const { part, startMs, distanceM } of axis) {
		const on = part && onBikeAt(onBikes, wheelId, startMs);
		if (!on || sensors.get(on.bikeId) !== 'rear hub') continue;
		const { correctedM } = rideDistance(distanceM, { tyreM, deviceM: on.deviceCircumferenceM });
		if (correctedM === null) continue;
		sum.rides += 1;
		sum.recordedM += distanceM;
		sum.correctedM += correctedM;
	}
	return sum.rides > 0 ? sum : null;
}
