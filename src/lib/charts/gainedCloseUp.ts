import type { Levels } from './minMaxLevels';
import { REST_STATES, type StripData } from './rideStripData';

/** Up to this length every second is drawn as it is. */
export const CLOSE_UP_S = 120;

/**
 * The gained angle of a short window, counted from its first engaged second on: what was gained before has
 * nothing to do with the event that is looked at, and would push it out of the strip.
 *
 * @param window shown seconds [from, to], at most CLOSE_UP_S apart
 */
export function gainedCloseUp(data: StripData, window: readonly [number, number]): Levels {
	const values = new Float32Array(data.length).fill(NaN);
	const from = Math.max(0, Math.floor(window[0]) - 1);
	const to = Math.min(data.length, Math.ceil(window[1]) + 2);
	const rests = (i: number) => REST_STATES.has(data.state[i]);
	let first = from;
	while (first < to && (rests(first) || Number.isNaN(data.raw.gained[first]))) first++;
	// at a pick-up the count begins at zero already, and a failed one has gained within its first second
	const pickedUp = first > 0 && (rests(first - 1) || Number.isNaN(data.raw.gained[first - 1]));
	const offset = first < to && !pickedUp ? data.raw.gained[first] : 0;
	// the next pick-up begins its own count
	let end = first;
	while (end < to && !(end > first && rests(end - 1) && !rests(end))) end++;
	for (let i = from; i < to; i++) {
		values[i] = data.raw.gained[i] - (i >= first && i < end ? offset : 0);
	}
	return { stepS: 1, levels: [{ size: 1, low: values, high: values }] };
}
