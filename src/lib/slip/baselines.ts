import type { DriveSignals } from '$lib/drivetrain/driveSignals';

/** Engaged ratio just before and just after each second, from pressing seconds only. */
export interface Baselines {
	/** median of the last three (seven) pressing seconds before this one; NaN when the last is too long ago */
	readonly before3: Float64Array;
	readonly before7: Float64Array;
	/** median of the next three (seven) pressing seconds after this one */
	readonly after3: Float64Array;
	readonly after7: Float64Array;
	/** median of the last three pressing seconds, none longer ago than six seconds */
	readonly justBefore: Float64Array;
	/** median of the next three seconds in which the crank turns at all, within four seconds */
	readonly justAfter: Float64Array;
}

/** A ratio from longer ago than this says little: the rider will have shifted. */
const REACH_S = 14;
const JUST_BEFORE_S = 6;
const JUST_AFTER_S = 4;

/**
 * Running medians of the ratio on both sides of every second.
 *
 * @param signals the ride's signals
 * @returns four arrays of the ride's length, ln(crank turns per metre)
 */
export function baselines(signals: DriveSignals): Baselines {
	const { logRatio, pressing } = signals;
	const at = secondsWhere(logRatio.length, (t) => pressing[t] === 1);
	const turning = secondsWhere(logRatio.length, (t) => !Number.isNaN(logRatio[t]));
	return {
		before3: sideMedians(logRatio, at, 3, -1, REACH_S),
		before7: sideMedians(logRatio, at, 7, -1, REACH_S),
		after3: sideMedians(logRatio, at, 3, 1, REACH_S),
		after7: sideMedians(logRatio, at, 7, 1, REACH_S),
		justBefore: sideMedians(logRatio, at, 3, -1, JUST_BEFORE_S),
		justAfter: sideMedians(logRatio, turning, 3, 1, JUST_AFTER_S)
	};
}

function sideMedians(
	logRatio: Float64Array,
	at: Int32Array,
	count: number,
	side: -1 | 1,
	reachS: number
): Float64Array {
	const seconds = logRatio.length;
	const out = new Float64Array(seconds).fill(NaN);
	const window = new Float64Array(count);
	let next = 0; // index in `at` of the first pressing second not before t
	for (let t = 0; t < seconds; t++) {
		while (next < at.length && at[next] < t) next++;
		let index = side < 0 ? next - 1 : next;
		if (side > 0 && at[index] === t) index++;
		let filled = 0;
		while (filled < count && index >= 0 && index < at.length && Math.abs(at[index] - t) <= reachS) {
			insert(window, filled++, logRatio[at[index]]);
			index += side;
		}
		if (filled > 0)
			out[t] = filled % 2 ? window[filled >> 1] : (window[filled / 2 - 1] + window[filled / 2]) / 2;
	}
	return out;
}

function secondsWhere(seconds: number, holds: (second: number) => boolean): Int32Array {
	const found = new Int32Array(seconds);
	let count = 0;
	for (let t = 0; t < seconds; t++) if (holds(t)) found[count++] = t;
	return found.subarray(0, count);
}

/** Insertion into the sorted beginning of a small array. */
function insert(sorted: Float64Array, length: number, value: number): void {
	let i = length;
	while (i > 0 && sorted[i - 1] > value) {
		sorted[i] = sorted[i - 1];
		i--;
	}
	sorted[i] = value;
}
