import { ageWindows } from '$lib/hardware/ageWindows';
import { unloggedOnBuild } from '../hardware/unloggedDistance';
import { listWheelRecords } from '../hardware/wheels';
import type { Ledger } from '../ledger/openLedger';
import { remember } from '../ledger/remember';
import { rememberRides } from '../ledger/rememberRides';
import { countsFor } from '../rates/programmeRows';
import { agesBuild } from '../rides/agesBuild';
import { evidenceParts, type EvidencePart } from '../rides/evidenceParts';
import { withRidesAnew } from '../rides/withRidesAnew';
import { ageClock, type AgeClock } from './ageClocks';
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
	/** metres on the chosen clock of age when the ride began; of the wheel since the build was fitted, unless asked otherwise */
	readonly ageFromM: number;
	/** stretches of a wheel whose clock began anew are lives of their own; 0 unless asked otherwise */
	readonly life: number;
	/** the part of the ride that is meant, seconds from its start; until Infinity when it is its end */
	readonly fromS: number;
	readonly toS: number;
	readonly totalM: number;
	readonly observedM: number;
}

/** Everything that rides tell about one build. */
export interface BuildEvidence {
	readonly buildId: number;
	readonly build: string;
	/** that carried it, by number; `endM` = the greatest age that was reached on this wheel, counted rides or not */
	readonly wheels: readonly { readonly id: number; readonly name: string; readonly endM: number }[];
	/** rides that count, wheel by wheel in order of age */
	readonly rides: readonly EvidenceRide[];
}

/**
 * Gathers the evidence about builds. Age and standing follow the rules of the rides' pages: what counts in
 * no rate still adds to the age.
 *
 * @param builds each once
 * @param clock from when ages are counted
 */
export function evidenceOfBuilds(
	ledger: Ledger,
	builds: readonly { readonly id: number; readonly name: string }[],
	clock: AgeClock = 'build'
): BuildEvidence[] {
	return builds.map((build) => ({
		...remember(ledger, evidenceName(build.id, clock), () => gather(ledger, build, clock)),
		// whoever asked first may have asked without the name
		build: build.name
	}));
}

function evidenceName(buildId: number, clock: AgeClock): string {
	return `evidence of build ${buildId} by ${clock}`;
}

function gather(
	ledger: Ledger,
	build: { readonly id: number; readonly name: string },
	clock: AgeClock
): BuildEvidence {
	const parts = evidenceParts(ledger).filter(
		(ride) => agesBuild(ride, build.id) || countsFor(ride, build.id)
	);
	const told = toldByRides(ledger, build.id, [
		...new Set(parts.filter((ride) => countsFor(ride, build.id)).map(({ id }) => id))
	]);
	const wheels = listWheelRecords(ledger)
		.filter(({ id }) => parts.some(({ wheelId }) => wheelId === id))
		.map((wheel) => {
			const onWheel = parts.filter(({ wheelId }) => wheelId === wheel.id);
			const read = ageClock(ledger, clock, build.id, wheel.id);
			const windows = windowsOn(ledger, build.id, wheel.id, onWheel).map(({ ride, fromM, toM }) => {
				const { shiftM, life } = read(ride.startMs);
				return { ride, life, fromM: Math.max(0, fromM + shiftM), toM: Math.max(0, toM + shiftM) };
			});
			return { ...wheel, windows };
		});
	return {
		buildId: build.id,
		build: build.name,
		wheels: wheels.map(({ id, name, windows }) => ({
			id,
			name,
			endM: Math.max(0, ...windows.map(({ toM }) => toM))
		})),
		rides: wheels.flatMap(({ id, windows }) =>
			windows
				.filter(({ ride }) => countsFor(ride, build.id))
				.map(({ ride, life, fromM }) =>
					toEvidence(ride, id, fromM, life, partOfEvidence(told.get(ride.id)!, ride))
				)
		)
	};
}

/** What the rides of a build tell; of those that did not change nothing is read again, whatever the clock. */
function toldByRides(
	ledger: Ledger,
	buildId: number,
	rideIds: readonly number[]
): ReadonlyMap<number, RideEvidence> {
	return rememberRides(ledger, `told by rides of build ${buildId}`, {
		all: () => evidenceOfRides(ledger, rideIds),
		anew: (before, touched) => {
			const changed = new Set(touched);
			const asked = rideIds.filter((id) => changed.has(id) || !before.has(id));
			return withRidesAnew(before, touched, evidenceOfRides(ledger, asked));
		}
	});
}

/** Where the rides lie on the age axis of this build on this wheel; what counts in no rate is there too. */
function windowsOn(ledger: Ledger, buildId: number, wheelId: number, rides: readonly EvidencePart[]) {
	// a split ride may be there twice: windows are told by their place, not by the ride
	return ageWindows(
		rides.map(({ startMs, totalM }, place) => ({ rideId: place, startMs, totalM })),
		unloggedOnBuild(ledger, wheelId, buildId)
	).map(({ rideId: place, fromM, toM }) => ({ ride: rides[place], fromM, toM }));
}

function toEvidence(
	ride: EvidencePart,
	wheelId: number,
	ageFromM: number,
	life: number,
	told: RideEvidence
): EvidenceRide {
	return {
		cells: told.cells,
		hours: told.hours,
		// not copied: they are made when they are looked at
		get observed() {
			return told.observed;
		},
		events: told.events,
		failedPickUps: told.failedPickUps,
		temperatureC: told.temperatureC,
		life,
		rideId: ride.id,
		wheelId,
		riderId: ride.riderId,
		riderCode: ride.riderCode,
		wet: ride.wet === null ? null : ride.wet === 1,
		startMs: ride.startMs,
		ageFromM,
		fromS: ride.fromS,
		toS: ride.toS,
		totalM: ride.totalM,
		observedM: ride.observedM
	};
}
