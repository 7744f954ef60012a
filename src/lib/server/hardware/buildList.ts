import type { Ledger } from '../ledger/openLedger';
import { remember } from '../ledger/remember';
import { rideBriefs } from '../rides/rideBriefs';
import type { BuildRow } from '../views';
import { listBuildRecords } from './builds';
import { listPeriods } from './periodRows';
import { listWheelRecords } from './wheels';

/** A build in the list of builds. */
export interface BuildListRow extends Pick<
	BuildRow,
	'id' | 'name' | 'state' | 'wheels' | 'rides' | 'totalM' | 'example'
> {
	revision: number;
	/** the build that this one goes back to */
	predecessor: { id: number; name: string } | null;
	/** lines of its bill of parts */
	parts: number;
}

/** Every build, in the order in which they were made; computed anew when the evidence changes. */
export function buildList(ledger: Ledger): readonly BuildListRow[] {
	return remember(ledger, 'list of builds', () => computeList(ledger));
}

function computeList(ledger: Ledger): BuildListRow[] {
	const builds = new Map(listBuildRecords(ledger).map((build) => [build.id, build]));
	const lines = linesOfBills(ledger);
	const rides = ridesByBuild(ledger);
	const periods = listPeriods(ledger);
	const wheels = listWheelRecords(ledger);
	return [...builds.values()].map(({ id, name, state, revision, revisionOf, copiedFrom, example }) => {
		const own = rides.get(id);
		const on = new Set(periods.filter(({ buildId }) => buildId === id).map(({ wheelId }) => wheelId));
		for (const wheelId of own?.wheelIds ?? []) on.add(wheelId);
		const before = builds.get(revisionOf ?? copiedFrom ?? -1);
		return {
			...{ id, name, state, revision, example: example === 1 },
			wheels: wheels.filter((wheel) => on.has(wheel.id)).map((wheel) => ({ id: wheel.id, name: wheel.name })),
			rides: own?.rides ?? 0,
			totalM: own?.totalM ?? 0,
			predecessor: before ? { id: before.id, name: before.name } : null,
			parts: lines.get(id) ?? 0
		};
	});
}

interface OfBuild {
	rides: number;
	totalM: number;
	wheelIds: Set<number>;
	lastRide: number;
}

/** What rides, and parts of split rides, tell about each build. */
function ridesByBuild(ledger: Ledger): Map<number, OfBuild> {
	const builds = new Map<number, OfBuild>();
	for (const { id, wheelId, evidence } of rideBriefs(ledger)) {
		for (const { buildId, totalM } of evidence) {
			let own = builds.get(buildId);
			if (!own) builds.set(buildId, (own = { rides: 0, totalM: 0, wheelIds: new Set(), lastRide: -1 }));
			// two parts of one ride may be on the same build
			if (own.lastRide !== id) own.rides++;
			own.lastRide = id;
			own.totalM += totalM;
			if (wheelId !== null) own.wheelIds.add(wheelId);
		}
	}
	return builds;
}

function linesOfBills(ledger: Ledger): Map<number, number> {
	const rows = ledger.database
		.prepare<[], { id: number; parts: number }>(
			'SELECT build_id AS id, count(*) AS parts FROM build_part GROUP BY build_id'
		)
		.all();
	return new Map(rows.map(({ id, parts }) => [id, parts]));
}
