import type { Ride } from '$lib/ride/ride';
import { valuesAt } from '$lib/ride/valuesAt';

/**
 * A logger's ride whose wheel and torque stand on the crank's clock, where each was recorded on one of its own: how
 * far the crank ran ahead is told at the crank's instants. The wheel turns smoothly from value to value of its own
 * clock; the crank is never interpolated.
 *
 * @param ride any ride; one whose channels share a clock comes back as it is
 */
export function onCrankClock(ride: Ride): Ride {
	const { cadenceRpm: crank, wheelRpm, crankTorqueNm } = ride.channels;
	if (!crank) return ride;
	const channels = { ...ride.channels };
	if (wheelRpm && wheelRpm.timeS !== crank.timeS)
		channels.wheelRpm = { timeS: crank.timeS, value: valuesAt(wheelRpm, crank.timeS) };
	if (crankTorqueNm && crankTorqueNm.timeS !== crank.timeS)
		channels.crankTorqueNm = { timeS: crank.timeS, value: valuesAt(crankTorqueNm, crank.timeS) };
	return { ...ride, channels };
}
