/**
 * Median of the values that are there.
 *
 * @param values any numbers; NaN is left out
 * @returns NaN when nothing is left
 * @example median([3, 1, NaN, 2]) // 2
 */
export function median(values: ArrayLike<number>): number {
	return quantile(values, 0.5);
}

/**
 * Sample quantile by linear interpolation between order statistics (Hyndman and Fan 1996, type 7).
 *
 * @param values any numbers; NaN is left out
 * @param share 0 to 1
 * @returns NaN when nothing is left
 */
export function quantile(values: ArrayLike<number>, share: number): number {
	const sorted = values.length <= FEW ? sortedFew(values) : sortedMany(values);
	if (sorted.length === 0) return NaN;
	const at = share * (sorted.length - 1);
	const below = Math.floor(at);
	const above = Math.min(sorted.length - 1, below + 1);
	return sorted[below] + (sorted[above] - sorted[below]) * (at - below);
}

/** Up to here insertion is quicker than a typed sort; medians of a handful are taken thousands of times a ride. */
const FEW = 32;

function sortedFew(values: ArrayLike<number>): number[] {
	const sorted: number[] = [];
	for (let i = 0; i < values.length; i++) {
		const value = values[i];
		if (Number.isNaN(value)) continue;
		let k = sorted.length;
		sorted.push(value);
		while (k > 0 && sorted[k - 1] > value) {
			sorted[k] = sorted[k - 1];
			k--;
		}
		sorted[k] = value;
	}
	return sorted;
}

function sortedMany(values: ArrayLike<number>): Float64Array {
	return Float64Array.from(values)
		.filter((value) => !Number.isNaN(value))
		.sort();
}
