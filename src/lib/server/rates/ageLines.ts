import { ageWindows } from '$lib/hardware/ageWindows';
import { unloggedOnBuild } from '../hardware/unloggedDistance';
import { listWheelRecords } from '../hardware/wheels';
import type { Ledger } from '../ledger/openLedger';
import { evidenceOfBuilds, type BuildEvidence } from '../evidence/buildEvidence';
import { observedAges } from '../evidence/wheelHistories';
import { agesBuild } from '../rides/agesBuild';
import type { EvidencePart } from '../rides/evidenceParts';
import type { AgeLine } from '../views';
import { countsFor } from './programmeRows';

/** drawn stretches of all lines together: more of them are narrower than what a screen can show */
const MOST_STRETCHES = 3000;
const FEWEST_OF_A_LINE = 60;
const MOST_OF_A_LINE = 500;

/** one line for each wheel that carried one of the builds; rejected events are not on it */
export function ageLines(
	ledger: Ledger,
	builds: readonly { id: number; name: string }[],
	facts: readonly EvidencePart[]
): AgeLine[] {
	const wheels = listWheelRecords(ledger);
	const evidence = evidenceOfBuilds(ledger, builds);
	const drawn = builds.flatMap((build, place) =>
		wheels.flatMap((wheel) => {
			const rides = facts.filter((ride) => agesBuild(ride, build.id) && ride.wheelId === wheel.id);
			const counted = rides.some((ride) => countsFor(ride, build.id));
			return counted ? [{ build, wheel, rides, told: evidence[place] }] : [];
		})
	);
	const stretches = Math.round(MOST_STRETCHES / Math.max(1, drawn.length));
	const most = Math.max(FEWEST_OF_A_LINE, Math.min(MOST_OF_A_LINE, stretches));
	return drawn.map(({ build, wheel, rides, told }) => ageLine(ledger, build, wheel, rides, told, most));
}

function ageLine(
	ledger: Ledger,
	build: { id: number; name: string },
	wheel: { id: number; name: string },
	rides: readonly EvidencePart[],
	told: BuildEvidence,
	mostStretches: number
): AgeLine {
	// a split ride may be there twice: windows are told by their place, not by the ride
	const windows = ageWindows(
		rides.map(({ startMs, totalM }, place) => ({ rideId: place, startMs, totalM })),
		unloggedOnBuild(ledger, wheel.id, build.id)
	);
	// the others only add to the distance
	const counted = told.rides.filter(({ wheelId }) => wheelId === wheel.id);
	const observed = observedAges(counted, mostStretches).map(({ from, to }) => ({
		fromM: whole(from, mostStretches),
		toM: whole(to, mostStretches)
	}));
	return {
		buildId: build.id,
		build: build.name,
		wheel: wheel.name,
		wheelId: wheel.id,
		rides: windows.map(({ rideId: place, fromM, toM }) => ({ rideId: rides[place].id, fromM, toM })),
		observed,
		observedM: observed.reduce((sum, { fromM, toM }) => sum + (toM - fromM), 0),
		slips: counted
			.flatMap(({ rideId, ageFromM, events }) =>
				events
					.filter(({ standing }) => standing !== 'rejected')
					.map(({ eventId, atM, standing }) => ({
						atM: ageFromM + atM,
						eventId,
						rideId,
						confirmed: standing === 'confirmed'
					}))
			)
			.map((slip, before) => ({ ...slip, count: before + 1 })),
		endM: windows[windows.length - 1]?.toM ?? 0
	};
}

/** where stretches were gathered anyway, a metre more or less is not drawn */
function whole(metres: number, mostStretches: number): number {
	return mostStretches < MOST_OF_A_LINE ? Math.round(metres) : metres;
}
