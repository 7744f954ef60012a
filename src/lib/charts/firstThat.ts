/**
 * The place of the first in a list of which this holds; it has to hold of all behind it. The list's length when it
 * holds of none.
 *
 * @example firstThat([1, 3, 5], (value) => value > 2) // 1
 */
export function firstThat<T>(list: readonly T[], holds: (item: T) => boolean): number {
	let [low, high] = [0, list.length];
	while (low < high) {
		const middle = (low + high) >> 1;
		if (holds(list[middle])) high = middle;
		else low = middle + 1;
	}
	return low;
}
