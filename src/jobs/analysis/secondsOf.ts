import type { Channel } from '$lib/ride/ride';

/** a value is not carried further than this beside its own instant, seconds */
const REACH_S = 2.5;

/**
 * A channel at one value a second: the nearest recorded one, NaN where none is near. For drawing tracks
 * and heights; the analysis has its own way of laying channels on one clock.
 *
 * @param channel on its own clock
 * @param length values wanted, from second 0 on
 */
export function secondsOf(channel: Channel, length: number): Float64Array {
	const { timeS, value } = channel;
	const result = new Float64Array(length).fill(NaN);
	let at = 0;
	for (let second = 0; second < length; second++) {
		while (at + 1 < timeS.length && Math.abs(timeS[at + 1] - second) <= Math.abs(timeS[at] - second)) at++;
		if (at < timeS.length && Math.abs(timeS[at] - second) <= REACH_S) result[second] = value[at];
	}
	return result;
}
