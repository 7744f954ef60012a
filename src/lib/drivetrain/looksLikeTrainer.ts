import { quantile } from './median';
import type { SecondGrid } from './secondGrid';

/** Speed and power are compared as means over this long: shorter ones show the mass of the bicycle. */
const WINDOW_S = 30;
/** Fewer windows, ten minutes, say nothing (common practice, no source). */
const LEAST_WINDOWS = 20;
/** Slower than this the rider is starting or stopping. */
const ROLLING_MPS = 2;
/** With less power the rider is coasting. */
const PRESSING_W = 40;
/** Without a wide choice of power nothing can be said: the ratio of the upper to the lower quintile. */
const LEAST_RANGE = 1.25;
/** On roads slope and wind scatter the speed at one power by 15 to 40 % (labelled and generated rides); a roller by 1 to 4 %. */
const LARGEST_SCATTER = 0.05;
/** A straight line between the logarithms: speed rises with power. */
const LEAST_EXPONENT = 0.2;

/**
 * Whether speed follows power alone, as on an indoor trainer: no slope, no wind, no corner. A person decides; this
 * only asks.
 *
 * @param grid the ride on whole seconds
 * @returns false also where too little was ridden, or at one power all the time
 */
export function looksLikeTrainer(grid: SecondGrid): boolean {
	const lnSpeed: number[] = [];
	const lnPower: number[] = [];
	for (let from = 0; from + WINDOW_S <= grid.seconds; from += WINDOW_S) {
		let mps = 0;
		let watts = 0;
		for (let t = from; t < from + WINDOW_S; t++) {
			mps += grid.speedMps[t] / WINDOW_S;
			watts += grid.powerW[t] / WINDOW_S;
		}
		if (!(mps >= ROLLING_MPS) || !(watts >= PRESSING_W)) continue;
		lnSpeed.push(Math.log(mps));
		lnPower.push(Math.log(watts));
	}
	if (lnSpeed.length < LEAST_WINDOWS) return false;
	if (quantile(lnPower, 0.8) - quantile(lnPower, 0.2) < Math.log(LEAST_RANGE)) return false;
	const { slope, intercept } = line(lnPower, lnSpeed);
	const off = lnSpeed.map((value, i) => Math.abs(value - intercept - slope * lnPower[i]));
	return slope >= LEAST_EXPONENT && quantile(off, 0.68) <= LARGEST_SCATTER;
}

/** Least squares. */
function line(x: readonly number[], y: readonly number[]): { slope: number; intercept: number } {
	const meanX = x.reduce((sum, value) => sum + value, 0) / x.length;
	const meanY = y.reduce((sum, value) => sum + value, 0) / y.length;
	let xy = 0;
	let xx = 0;
	for (let i = 0; i < x.length; i++) {
		xy += (x[i] - meanX) * (y[i] - meanY);
		xx += (x[i] - meanX) ** 2;
	}
	const slope = xx > 0 ? xy / xx : 0;
	return { slope, intercept: meanY - slope * meanX };
}
