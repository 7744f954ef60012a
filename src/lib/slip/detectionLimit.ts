import { REFERENCE_SLIP_CRANK_DEG } from './analysis';
import observedModel from './model/observed.json';
import { FULL_SIZE_DEG, type ObservedModel } from './model/observedModel';
import { treeLogOddsOfSeconds } from './model/treeLogOddsOfSeconds';
import { observationFeatures } from './observationFeatures';
import { LEAST_REPORTED_DEG } from './reportLimits';
import type { RideContext } from './rideContext';
import { isTooSlow } from './rideResponse';

/**
 * Smallest overrun that counts as visible at each second: the bar lies where nine in ten slips of that size and more are
 * found on all seconds that reach it together; on one that just does they are about two in three. Learned from slips put into
 * rides and found, or not, by detectors that had not seen the ride (tests/bench/training); it looks at noise, state
 * and gears around the second, never at what happens in it.
 *
 * @param context what was learned of the ride
 * @returns crank degrees a second, at most FULL_SIZE_DEG; NaN = none would surely be found, as where nobody presses (no
 *   drive, no slip) or where power or cadence follow too slowly to show one
 */
export function detectionLimit(context: RideContext): Float64Array {
	const out = new Float64Array(context.signals.grid.seconds).fill(NaN);
	if (isTooSlow(context.response)) return out;
	const model = observedModel as ObservedModel;
	const seconds = secondsOf(observable(context));
	const logOdds = treeLogOddsOfSeconds(model, observationFeatures(context), seconds);
	for (let i = 0; i < seconds.length; i++) {
		const short = model.leastLogOdds - logOdds[i];
		const limitDeg = REFERENCE_SLIP_CRANK_DEG * Math.exp(short / model.sizeSlope);
		if (limitDeg <= FULL_SIZE_DEG) out[seconds[i]] = Math.max(LEAST_REPORTED_DEG, limitDeg);
	}
	return out;
}

/** The seconds that are marked, ascending. */
function secondsOf(marked: Uint8Array): Int32Array {
	const seconds = new Int32Array(marked.length);
	let count = 0;
	for (let t = 0; t < marked.length; t++) if (marked[t] === 1) seconds[count++] = t;
	return seconds.subarray(0, count);
}

/** So long after a large excess the rider may not press because of it. */
const STARTLED_S = 3;

/**
 * Seconds in which the rider presses and power is recorded, so that a slip could happen and show. Around a large
 * excess what was before it counts, because a slip must not decide whether its own second is observed.
 *
 * @param context what was learned of the ride
 * @returns 1 where a slip could show, one a second
 */
export function observable(context: RideContext): Uint8Array {
	const { pressing, grid } = context.signals;
	const out = new Uint8Array(grid.seconds);
	for (let t = 0; t < out.length; t++) out[t] = pressing[t] && !Number.isNaN(grid.powerW[t]) ? 1 : 0;
	for (const { from, to, carefulDeg } of context.candidates) {
		if (carefulDeg < LEAST_REPORTED_DEG || from < 1 || !out[from - 1]) continue;
		const end = Math.min(grid.seconds - 1, to + STARTLED_S);
		for (let t = from; t <= end; t++) if (!Number.isNaN(grid.powerW[t] + grid.cadenceRpm[t])) out[t] = 1;
	}
	return out;
}
