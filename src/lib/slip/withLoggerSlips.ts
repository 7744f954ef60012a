import type { Ride } from '$lib/ride/ride';
import type { SlipToPut } from './putSlip';

/** torque is back so long after the pawls have found each other again, s; estimate, no source */
const TORQUE_BACK_S = 0.3;

/**
 * Puts slips into a logger's table at its own clock: the crank gains its angle in one swing (half a sine), torque
 * falls away meanwhile and comes back within a third of a second. The wheel is left as it is: in so short a time it
 * loses next to nothing.
 *
 * @param ride a table of crank and wheel on one clock; it stays as it is
 * @param slips lags and means of slower sensors do not count here
 */
export function withLoggerSlips(ride: Ride, slips: readonly SlipToPut[]): Ride {
	const { cadenceRpm: crank, crankTorqueNm: torque } = ride.channels;
	if (!crank) return ride;
	const { timeS } = crank;
	const rpm = Float64Array.from(crank.value);
	const torqueNm = torque ? Float64Array.from(torque.value) : null;
	for (const { startS, lastsS, crankDeg, powerLost } of slips) {
		const endS = startS + lastsS;
		const greatestDegPerS = (crankDeg * Math.PI) / 2 / lastsS;
		for (let i = firstAfter(timeS, startS); i < timeS.length && timeS[i] < endS + TORQUE_BACK_S; i++) {
			const share = (timeS[i] - startS) / lastsS;
			if (share < 1) rpm[i] += (greatestDegPerS * Math.sin(Math.PI * share)) / 6;
			const missing = share < 1 ? powerLost : powerLost * (1 - (timeS[i] - endS) / TORQUE_BACK_S);
			if (torqueNm) torqueNm[i] *= 1 - missing;
		}
	}
	const channels = { ...ride.channels, cadenceRpm: { timeS, value: rpm } };
	if (torque && torqueNm) channels.crankTorqueNm = { timeS: torque.timeS, value: torqueNm };
	return { ...ride, channels };
}

/** Index of the first sample at or after an instant. */
function firstAfter(timeS: Float64Array, instantS: number): number {
	let low = 0;
	let high = timeS.length;
	while (low < high) {
		const middle = (low + high) >> 1;
		if (timeS[middle] < instantS) low = middle + 1;
		else high = middle;
	}
	return low;
}
