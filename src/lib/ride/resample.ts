import type { Channel, Span } from './ride';

/**
 * A channel as one value a second from the first record on. A second with its own sample shows that
 * sample (of several, the one nearest to the full second, the earlier of two as near); a second without
 * holds the last one, but never for longer than `holdS` and never across a gap or a pause.
 * @param channel the channel
 * @param durationS last record's time: the grid has floor(durationS) + 1 values
 * @param breaks gaps and pauses of the ride, in any order
 * @param holdS longest time that a value is held, seconds; 2 suits a recording of one record a second,
 * 15 one that leaves out samples
 * @returns one value a second (index = whole seconds), NaN = not known
 */
export function resample(
	channel: Channel,
	durationS: number,
	breaks: readonly Span[] = [],
	holdS = 2
): Float64Array {
	const grid = new Float64Array(Math.floor(durationS) + 1).fill(NaN);
	const distance = new Float64Array(grid.length).fill(Infinity);
	const { timeS, value } = channel;
	for (let i = 0; i < timeS.length; i++) {
		if (Number.isNaN(value[i])) continue;
		const second = Math.round(timeS[i]);
		const off = Math.abs(timeS[i] - second);
		if (second < 0 || second >= grid.length || off >= distance[second]) continue;
		grid[second] = value[i];
		distance[second] = off;
	}
	const broken = new Uint8Array(grid.length);
	for (const [startS, endS] of breaks) {
		broken.fill(1, Math.max(0, Math.floor(startS) + 1), Math.max(0, Math.ceil(endS)));
	}
	let heldFor = Infinity;
	for (let second = 0; second < grid.length; second++) {
		if (distance[second] < Infinity) heldFor = 0;
		else if (broken[second]) heldFor = Infinity;
		else if (++heldFor <= holdS) grid[second] = grid[second - 1];
	}
	return grid;
}
