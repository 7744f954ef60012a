import { ageWindows } from '$lib/hardware/ageWindows';
import { unloggedOnBuild } from '../hardware/unloggedDistance';
import type { Ledger } from '../ledger/openLedger';
import { countsFor } from '../rates/programmeRows';
import { agesBuild } from './agesBuild';
import { evidenceParts, partsOfRides, type EvidencePart } from './evidenceParts';
import type { RideFacts } from './rideFacts';

/**
 * Metres of the wheel since its build was fitted, at an instant of a ride; in a split ride by the build of
 * the part.
 *
 * @returns a function of seconds and metres from the start of the ride; null while that part counts nowhere
 */
export function ageOnRide(ledger: Ledger, ride: RideFacts): (startS: number, atM: number) => number | null {
	const ages = partsOfRides([ride]).map((part) => ({ part, ageM: ageAtStart(ledger, part) }));
	return (startS, atM) => {
		const here = ages.find(({ part }) => startS >= part.fromS && startS < part.toS);
		return here && here.ageM !== null ? here.ageM + atM - here.part.fromM : null;
	};
}

function ageAtStart(ledger: Ledger, part: EvidencePart): number | null {
	const { buildId, wheelId } = part;
	if (buildId === null || wheelId === null || !countsFor(part, buildId)) return null;
	const sameHardware = evidenceParts(ledger, wheelId).filter((other) => agesBuild(other, buildId));
	const windows = ageWindows(
		sameHardware.map(({ startMs, totalM }, place) => ({ rideId: place, startMs, totalM })),
		unloggedOnBuild(ledger, wheelId, buildId)
	);
	const place = sameHardware.findIndex(({ id, part: number }) => id === part.id && number === part.part);
	return windows.find(({ rideId }) => rideId === place)?.fromM ?? null;
}
