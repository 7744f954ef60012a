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
	const pressed = valuesWhere(logRatio, (t) => pressing[t] === 1);
	const turned = valuesWhere(logRatio, (t) => logRatio[t] === logRatio[t]);
	const pressed3 = runningMedians(pressed.value, 3);
	const pressed7 = runningMedians(pressed.value, 7);
	const turned3 = runningMedians(turned.value, 3);
	return {
		before3: sideMedians(pressed, pressed3, 3, -1, REACH_S),
		before7: sideMedians(pressed, pressed7, 7, -1, REACH_S),
		after3: sideMedians(pressed, pressed3, 3, 1, REACH_S),
		after7: sideMedians(pressed, pressed7, 7, 1, REACH_S),
		justBefore: sideMedians(pressed, pressed3, 3, -1, JUST_BEFORE_S),
		justAfter: sideMedians(turned, turned3, 3, 1, JUST_AFTER_S)
	};
}

/** Values of some seconds of a ride. */
interface Picked {
	/** length of the ride, s */
	readonly seconds: number;
	/** the seconds, ascending */
	readonly at: Int32Array;
	readonly value: Float64Array;
}

function valuesWhere(values: Float64Array, holds: (second: number) => boolean): Picked {
	const seconds = values.length;
	const at = new Int32Array(seconds);
	const value = new Float64Array(seconds);
	let count = 0;
	for (let t = 0; t < seconds; t++) {
		if (!holds(t)) continue;
		at[count] = t;
		value[count++] = values[t];
	}
	return { seconds, at: at.subarray(0, count), value: value.subarray(0, count) };
}

/** Medians of an odd number of successive values, by the index of the last of them; the first ones stay 0. */
function runningMedians(values: Float64Array, count: number): Float64Array {
	const out = new Float64Array(values.length);
	const window = new Float64Array(count);
	for (let i = 0; i < values.length; i++) {
		if (i >= count) remove(window, count, values[i - count]);
		insert(window, Math.min(i, count - 1), values[i]);
		if (i >= count - 1) out[i] = window[count >> 1];
	}
	return out;
}

/**
 * Median of up to `count` values on one side of every second, none further away than `reachS`. Mostly as many are there,
 * and then it is a running median: the same for the seconds before and after the same values.
 */
function sideMedians(
	{ seconds, at, value }: Picked,
	medians: Float64Array,
	count: number,
	side: -1 | 1,
	reachS: number
): Float64Array {
	const out = new Float64Array(seconds).fill(NaN);
	const window = new Float64Array(count);
	let next = 0; // index of the first value not before t
	for (let t = 0; t < seconds; t++) {
		while (next < at.length && at[next] < t) next++;
		let index = side < 0 ? next - 1 : next;
		if (side > 0 && at[index] === t) index++;
		const furthest = index + side * (count - 1);
		if (furthest >= 0 && furthest < at.length && Math.abs(at[furthest] - t) <= reachS) {
			out[t] = medians[Math.max(index, furthest)];
			continue;
		}
		let filled = 0;
		while (filled < count && index >= 0 && index < at.length && Math.abs(at[index] - t) <= reachS) {
			insert(window, filled++, value[index]);
			index += side;
		}
		if (filled > 0)
			out[t] = filled % 2 ? window[filled >> 1] : (window[filled / 2 - 1] + window[filled / 2]) / 2;
	}
	return out;
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

/** Takes a value out of a small sorted array. */
function remove(sorted: Float64Array, length: number, value: number): void {
	let i = 0;
	while (i + 1 < length && sorted[i] !== value) i++;
	for (; i + 1 < length; i++) sorted[i] = sorted[i + 1];
}
