import type { DriveSignals } from '$lib/drivetrain/driveSignals';

const REACH_S = 30;
const LEAST_STEPS = 12;
/** mean |difference of two normal values| to standard deviation of one: sqrt(pi) / 2 */
const MEAN_STEP_TO_SD = 0.886;
/** a change is cut here, so that shifts, dips and slips do not count as noise */
const CUT = 0.06;

/**
 * Scatter of the ratio around every second: mean change between pressing seconds within 30 s, cut, so that a
 * slip in the middle of it moves it by little.
 *
 * @param signals the ride's signals
 * @returns standard deviation of ln ratio; the ride's own noise where little was pedalled
 */
export function localNoise(signals: DriveSignals): Float64Array {
	const { seconds } = signals.grid;
	const sum = new Float64Array(seconds + 1);
	const count = new Float64Array(seconds + 1);
	for (let t = 0; t < seconds; t++) {
		sum[t + 1] = sum[t];
		count[t + 1] = count[t];
		if (t > 0 && signals.pressing[t] && signals.pressing[t - 1]) {
			sum[t + 1] += Math.min(CUT, Math.abs(signals.logRatio[t] - signals.logRatio[t - 1]));
			count[t + 1]++;
		}
	}
	const out = new Float64Array(seconds);
	for (let t = 0; t < seconds; t++) {
		const from = Math.max(0, t - REACH_S);
		const to = Math.min(seconds, t + REACH_S + 1);
		const steps = count[to] - count[from];
		out[t] = steps < LEAST_STEPS ? signals.noise : (MEAN_STEP_TO_SD * (sum[to] - sum[from])) / steps;
	}
	return out;
}
