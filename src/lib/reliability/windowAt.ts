import type { Window } from './watchedHistory';

/**
 * The last window that begins at or before an age, by halving: windows may be many.
 *
 * @param sorted windows in rising order that do not overlap
 * @param age >= 0
 * @returns its place in the list; -1 when all begin later
 * @example windowAt([{ from: 0, to: 10 }, { from: 20, to: 30 }], 15) // 0: begun, and over
 * Source: binary search.
 */
export function windowAt(sorted: readonly Window[], age: number): number {
	let [low, high] = [0, sorted.length];
	while (low < high) {
		const middle = (low + high) >> 1;
		if (sorted[middle].from <= age) low = middle + 1;
		else high = middle;
	}
	return low - 1;
}
