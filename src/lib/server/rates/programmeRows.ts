import type { FittedPeriod } from '$lib/hardware/buildOfRide';
import { listBuildRecords, type BuildRecord } from '../hardware/builds';
import { incidentCounts, NO_INCIDENTS, type IncidentCounts } from '../hardware/incidentsView';
import { listPeriods } from '../hardware/periodRows';
import { listWheelRecords } from '../hardware/wheels';
import type { Ledger } from '../ledger/openLedger';
import { remember } from '../ledger/remember';
import { evidenceParts, partTallies, type EvidencePart } from '../rides/evidenceParts';
import type { RideFacts } from '../rides/rideFacts';
import type { BuildRow } from '../views';
import { countView, unitsOfTallies, type CountedRide } from './countView';
import { buildsBefore, firstLender, type Lender } from './lender';

/** Each build with its distances and its counted slips, in the order in which the builds were made. */
export function programmeRows(ledger: Ledger): readonly BuildRow[] {
	return remember(ledger, 'programme rows', () => buildRows(ledger, evidenceParts(ledger)));
}

/** The same from rides and parts of split rides that were read already. */
export function buildRows(ledger: Ledger, facts: readonly EvidencePart[]): BuildRow[] {
	const periods = listPeriods(ledger);
	const wheels = listWheelRecords(ledger);
	const incidents = incidentCounts(ledger);
	const builds = listBuildRecords(ledger);
	const ridesOf = new Map(builds.map(({ id }) => [id, facts.filter((ride) => countsFor(ride, id))]));
	const counted = new Map(
		builds.map(({ id }): [number, CountedRide[]] => {
			const rides = ridesOf.get(id)!;
			const tallies = partTallies(ledger, rides);
			return [id, rides.map(({ observedM }, place) => ({ tally: tallies[place], observedM }))];
		})
	);
	return builds.map((build) => {
		const rides = ridesOf.get(build.id)!;
		const wheelIds = wheelsOf(build, periods, rides);
		return toRow(
			build,
			wheels.filter(({ id }) => wheelIds.has(id)),
			rides,
			counted.get(build.id)!,
			firstLender(buildsBefore(builds, build.id), ({ id }) =>
				unitsOfTallies(counted.get(id)!, ({ confirmed, unreviewed }) => confirmed + unreviewed)
			),
			incidents.get(build.id) ?? NO_INCIDENTS
		);
	});
}

/** Whether a ride is evidence about a build. */
export function countsFor(ride: RideFacts, buildId: number): boolean {
	return ride.standing.state === 'counted' && ride.buildId === buildId;
}

function wheelsOf(
	build: BuildRecord,
	periods: readonly FittedPeriod[],
	rides: readonly RideFacts[]
): Set<number> {
	const ids = new Set<number>();
	for (const period of periods) if (period.buildId === build.id) ids.add(period.wheelId);
	for (const ride of rides) if (ride.wheelId !== null) ids.add(ride.wheelId);
	return ids;
}

function toRow(
	build: BuildRecord,
	wheels: readonly { id: number; name: string }[],
	rides: readonly RideFacts[],
	counted: readonly CountedRide[],
	lender: Lender | undefined,
	incidents: IncidentCounts
): BuildRow {
	const sum = (pick: (ride: RideFacts) => number) => rides.reduce((total, ride) => total + pick(ride), 0);
	const observedM = sum((ride) => ride.observedM);
	return {
		id: build.id,
		name: build.name,
		description: build.description,
		state: build.state,
		wheels: wheels.map(({ id, name }) => ({ id, name })),
		rides: new Set(rides.map(({ id: rideId }) => rideId)).size,
		totalM: sum((ride) => ride.totalM),
		observedM,
		drivenM: sum((ride) => ride.drivenM),
		counted: countView(counted, lender),
		incidents,
		example: build.example === 1
	};
}
