import { ageWindows } from '$lib/hardware/ageWindows';
import { unloggedOnBuild } from '../hardware/unloggedDistance';
import { listWheelRecords } from '../hardware/wheels';
import type { Ledger } from '../ledger/openLedger';
import { remember } from '../ledger/remember';
import { countsFor } from '../rates/programmeRows';
import { agesBuild } from '../rides/agesBuild';
import { evidenceParts, type EvidencePart } from '../rides/evidenceParts';
import { evidenceOfRides, type RideEvidence } from './evidenceRides';
import { partOfEvidence } from './partOfEvidence';

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
	const parts = evidenceParts(ledger).filter(
		(ride) => agesBuild(ride, build.id) || countsFor(ride, build.id)
	);
	const told = evidenceOfRides(ledger, [
		...new Set(parts.filter((ride) => countsFor(ride, build.id)).map(({ id }) => id))
	]);
	const wheels = listWheelRecords(ledger)
		.filter(({ id }) => parts.some(({ wheelId }) => wheelId === id))
		.map((wheel) => {
			const onWheel = parts.filter(({ wheelId }) => wheelId === wheel.id);
			return { ...wheel, windows: windowsOn(ledger, build.id, wheel.id, onWheel) };
		});
	return {
		buildId: build.id,
		build: build.name,
		wheels: wheels.map(({ id, name, windows }) => ({ id, name, endM: windows.at(-1)?.toM ?? 0 })),
		rides: wheels.flatMap(({ id, windows }) =>
			windows
				.filter(({ ride }) => countsFor(ride, build.id))
				.map(({ ride, fromM }) => toEvidence(ride, id, fromM, partOfEvidence(told.get(ride.id)!, ride)))
		)
	};
}

/** Where the rides lie on the age axis of this build on this wheel; what counts in no rate is there too. */
function windowsOn(ledger: Ledger, buildId: number, wheelId: number, rides: readonly EvidencePart[]) {
	// a split ride may be there twice: windows are told by their place, not by the ride
	return ageWindows(
		rides.map(({ startMs, totalM }, place) => ({ rideId: place, startMs, totalM })),
		unloggedOnBuild(ledger, wheelId, buildId)
	).map(({ rideId: place, fromM, toM }) => ({ ride: rides[place], fromM, toM }));
}

function toEvidence(ride: EvidencePart, wheelId: number, ageFromM: number, told: RideEvidence): EvidenceRide {
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
