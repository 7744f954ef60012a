import { ageWindows, type UnloggedLength } from '$lib/hardware/ageWindows';
import { unloggedOnBuild } from '../hardware/unloggedDistance';
import { listWheelRecords } from '../hardware/wheels';
import type { Ledger } from '../ledger/openLedger';
import { remember } from '../ledger/remember';
import { countsFor } from '../rates/programmeRows';
import { agesBuild } from '../rides/agesBuild';
import { allRideFacts, type RideFacts } from '../rides/rideFacts';
import { evidenceOfRides, type RideEvidence } from './evidenceRides';

/** A ride that counts, where it lies in the life of the build, and what it tells. */
export interface EvidenceRide extends RideEvidence {
	readonly rideId: number;
	readonly wheelId: number;
	readonly riderId: number | null;
	readonly riderCode: string | null;
	readonly wet: boolean | null;
	readonly startMs: number;
	/** metres of the wheel since the build was fitted, when the ride began */
	readonly ageFromM: number;
	readonly totalM: number;
	readonly observedM: number;
}

/** Everything that rides tell about one build. */
export interface BuildEvidence {
	readonly buildId: number;
	readonly build: string;
	/** that carried it, by number; `endM` = distance of the build on this wheel, counted rides or not */
	readonly wheels: readonly { readonly id: number; readonly name: string; readonly endM: number }[];
	/** rides that count, wheel by wheel in order of age */
	readonly rides: readonly EvidenceRide[];
}

/**
 * Gathers the evidence about builds. Age and standing follow the rules of the rides' pages: what counts in
 * no rate still adds to the age.
 *
 * @param builds each once
 */
export function evidenceOfBuilds(
	ledger: Ledger,
	builds: readonly { readonly id: number; readonly name: string }[]
): BuildEvidence[] {
	return builds.map((build) =>
		remember(ledger, `evidence of build ${build.id}`, () => gather(ledger, build))
	);
}

function gather(ledger: Ledger, build: { readonly id: number; readonly name: string }): BuildEvidence {
	const facts = allRideFacts(ledger).filter((ride) => agesBuild(ride, build.id) || countsFor(ride, build.id));
	const counted = facts.filter((ride) => countsFor(ride, build.id));
	const told = evidenceOfRides(
		ledger,
		counted.map(({ id }) => id)
	);
	const wheels = listWheelRecords(ledger).filter(({ id }) => facts.some(({ wheelId }) => wheelId === id));
	const ages = wheels.map(({ id }) =>
		agesOnWheel(
			facts.filter(({ wheelId }) => wheelId === id),
			unloggedOnBuild(ledger, id, build.id)
		)
	);
	return {
		buildId: build.id,
		build: build.name,
		wheels: wheels.map(({ id, name }, index) => ({ id, name, endM: ages[index].endM })),
		rides: wheels.flatMap(({ id }, index) =>
			counted
				.filter(({ wheelId }) => wheelId === id)
				.map((ride) => toEvidence(ride, id, ages[index].fromM.get(ride.id)!, told.get(ride.id)!))
				.sort((a, b) => a.ageFromM - b.ageFromM)
		)
	};
}

function agesOnWheel(
	rides: readonly RideFacts[],
	unlogged: readonly UnloggedLength[]
): { fromM: ReadonlyMap<number, number>; endM: number } {
	const windows = ageWindows(
		rides.map(({ id, startMs, totalM }) => ({ rideId: id, startMs, totalM })),
		unlogged
	);
	return {
		fromM: new Map(windows.map(({ rideId, fromM }) => [rideId, fromM])),
		endM: windows[windows.length - 1]?.toM ?? 0
	};
}

function toEvidence(ride: RideFacts, wheelId: number, ageFromM: number, told: RideEvidence): EvidenceRide {
	return {
		...told,
		rideId: ride.id,
		wheelId,
		riderId: ride.riderId,
		riderCode: ride.riderCode,
		wet: ride.wet === null ? null : ride.wet === 1,
		startMs: ride.startMs,
		ageFromM,
		totalM: ride.totalM,
		observedM: ride.observedM
	};
}
