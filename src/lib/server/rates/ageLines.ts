import { ageWindows, type AgeWindow } from '$lib/hardware/ageWindows';
import { unloggedOnBuild } from '../hardware/unloggedDistance';
import { listWheelRecords } from '../hardware/wheels';
import type { Ledger } from '../ledger/openLedger';
import { gatherWindows } from '../evidence/gatherWindows';
import { currentVersion } from '../queue/analysisVersions';
import { agesBuild } from '../rides/agesBuild';
import type { EvidencePart } from '../rides/evidenceParts';
import type { AgeLine } from '../views';
import { IN_THE_RATE } from './eventTallies';
import { countsFor } from './programmeRows';

interface CountedSlip {
	eventId: number;
	atM: number;
	confirmed: number;
}
/** where a ride, or a part of one, lies on the age axis */
type RiddenWindow = AgeWindow & { readonly ride: EvidencePart };
interface Stretch {
	fromM: number;
	toM: number;
}

/** one line for each wheel that carried one of the builds; rejected events are not on it */
export function ageLines(
	ledger: Ledger,
	builds: readonly { id: number; name: string }[],
	facts: readonly EvidencePart[]
): AgeLine[] {
	const wheels = listWheelRecords(ledger);
	return builds.flatMap((build) =>
		wheels.flatMap((wheel) => {
			const rides = facts.filter((ride) => agesBuild(ride, build.id) && ride.wheelId === wheel.id);
			const counted = rides.some((ride) => countsFor(ride, build.id));
			return counted ? [ageLine(ledger, build, wheel, rides)] : [];
		})
	);
}

function ageLine(
	ledger: Ledger,
	build: { id: number; name: string },
	wheel: { id: number; name: string },
	rides: readonly EvidencePart[]
): AgeLine {
	// a split ride may be there twice: windows are told by their place, not by the ride
	const windows = ageWindows(
		rides.map(({ startMs, totalM }, place) => ({ rideId: place, startMs, totalM })),
		unloggedOnBuild(ledger, wheel.id, build.id)
	).map((window): RiddenWindow => ({ ...window, ride: rides[window.rideId] }));
	// the others only add to the distance
	const evidence = windows.filter(({ ride }) => countsFor(ride, build.id));
	return {
		buildId: build.id,
		build: build.name,
		wheel: wheel.name,
		wheelId: wheel.id,
		rides: windows.map(({ ride, fromM, toM }) => ({ rideId: ride.id, fromM, toM })),
		observed: gatherWindows(
			observedAges(ledger, evidence).map(({ fromM, toM }) => ({ from: fromM, to: toM }))
		).map(({ from, to }) => ({ fromM: from, toM: to })),
		slips: slipAges(ledger, evidence),
		endM: windows[windows.length - 1]?.toM ?? 0
	};
}

function slipAges(ledger: Ledger, windows: readonly RiddenWindow[]): AgeLine['slips'] {
	const ofRide = ledger.database.prepare<[number, number, number, number], CountedSlip>(
		`SELECT e.id AS eventId, e.at_m AS atM, v.verdict IS 'confirmed' AS confirmed
		FROM slip_event e LEFT JOIN verdict v ON v.id = e.verdict_id
		WHERE e.ride_id = ? AND e.version = ? AND e.start_s >= ? AND e.start_s < ?
			AND ${IN_THE_RATE} AND v.verdict IS NOT 'rejected'
		ORDER BY e.start_s, e.id`
	);
	const version = currentVersion(ledger);
	const slips: AgeLine['slips'] = [];
	for (const { ride, fromM } of windows) {
		for (const { eventId, atM, confirmed } of ofRide.all(ride.id, version, ride.fromS, ride.toS))
			slips.push({
				atM: fromM + atM - ride.fromM,
				count: slips.length + 1,
				eventId,
				rideId: ride.id,
				confirmed: confirmed === 1
			});
	}
	return slips;
}

/** Observed stretches of all rides on the age axis; those that touch become one. */
function observedAges(ledger: Ledger, windows: readonly RiddenWindow[]): Stretch[] {
	const ofRide = ledger.database.prepare<[number, number], { startM: number; endM: number }>(
		`SELECT start_m AS startM, end_m AS endM FROM observed_stretch
		WHERE ride_id = ? AND version = ? ORDER BY start_s`
	);
	const version = currentVersion(ledger);
	const ages: Stretch[] = [];
	for (const { ride, fromM, toM } of windows) {
		for (const { startM, endM } of ofRide.all(ride.id, version)) {
			const last = ages[ages.length - 1];
			const from = Math.max(fromM, fromM + startM - ride.fromM);
			const to = Math.min(toM, fromM + endM - ride.fromM);
			if (to <= from) continue;
			if (last && from <= last.toM + 1) last.toM = Math.max(last.toM, to);
			else ages.push({ fromM: from, toM: to });
		}
	}
	return ages;
}
