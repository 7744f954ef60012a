import type { RideFacts } from './rideFacts';

/**
 * Whether the kilometres of a ride belong to the age of a build, on its wheel. The hardware was ridden
 * whether or not a recording can show a slip, so rides that count in no rate add their distance too. Not
 * added are rides that were withdrawn, second copies of a recording (also while nobody has decided), rides
 * whose distance or build is not known, and trainer rides: a trainer may hold the wheel or replace it.
 */
export function agesBuild(ride: RideFacts, buildId: number): boolean {
	return ride.buildId === buildId && agesHardware(ride);
}

/** The same of the wheel, whichever build was on it. */
export function agesHardware(ride: RideFacts): boolean {
	if (ride.withdrawnReason !== null || ride.analysed !== 1) return false;
	const onTrainer = (ride.trainer ?? ride.fileTrainer) === 1;
	const isCopy = ride.twinId !== null && ride.twinDecision !== 'different ride';
	return !onTrainer && !isCopy;
}
