import type { DriveSignals } from '$lib/drivetrain/driveSignals';

const REACH_S = 30;
const LEAST_STEPS = 12;
const CUT = 0.8;
const USUAL = 0.15;
const LEAST = 0.03;

/**
 * How much power changes from one pressing second to the next, as a share of itself: mean of the changes within
 * 30 s, each cut at 80 %.
 *
 * @returns share a second; 0.15 where little was pressed, never below 0.03
 */
export function localPowerNoise(signals: DriveSignals): Float64Array {
	const { seconds, powerW } = signals.grid;
	const sum = new Float64Array(seconds + 1);
	const count = new Float64Array(seconds + 1);
	for (let t = 0; t < seconds; t++) {
		sum[t + 1] = sum[t];
		count[t + 1] = count[t];
		if (t === 0 || !signals.pressing[t] || !signals.pressing[t - 1]) continue;
		const change = Math.abs(powerW[t] - powerW[t - 1]) / Math.max(40, powerW[t], powerW[t - 1]);
		if (!(change >= 0)) continue;
		sum[t + 1] += Math.min(CUT, change);
		count[t + 1]++;
	}
	const out = new Float64Array(seconds);
	for (let t = 0; t < seconds; t++) {
		const from = Math.max(0, t - REACH_S);
		const to = Math.min(seconds, t + REACH_S + 1);
		const steps = count[to] - count[from];
		out[t] = steps < LEAST_STEPS ? USUAL : Math.max(LEAST, (sum[to] - sum[from]) / steps);
	}
	return out;
}
