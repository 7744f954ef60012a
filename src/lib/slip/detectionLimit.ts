import type { RideContext } from './rideContext';

/** Standard errors of the excess that a slip must stand out by (first version, rule of thumb). */
const CLEAR = 5;

/**
 * Smallest overrun that would be found at each second with 90 % probability, from the noise around it and the
 * state of the drive; never from what happens in that second itself.
 *
 * @param context what was learned of the ride
 * @returns crank degrees a second; NaN = none would be found
 */
export function detectionLimit(context: RideContext): Float64Array {
	const { signals, noise, sinceRest, untilRest } = context;
	const { cadenceRpm, powerW, seconds, irregular } = signals.grid;
	const out = new Float64Array(seconds).fill(NaN);
	for (let t = 0; t < seconds; t++) {
		if (!signals.pressing[t] || irregular || Number.isNaN(powerW[t])) continue;
		if (sinceRest[t] < 3 || untilRest[t] < 3) continue;
		out[t] = 25 + CLEAR * 6 * cadenceRpm[t] * Math.max(0.006, noise[t]);
	}
	return out;
}
