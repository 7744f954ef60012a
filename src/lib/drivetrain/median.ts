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
	return values.length > FEW ? quantileOfMany(values, share) : quantileOfFew(values, 0, values.length, share);
}

/**
 * Median of a part of a list, for which no copy is made: medians of a handful are taken thousands of times a ride.
 *
 * @param values any numbers; NaN is left out
 * @param from first index; below 0 the list begins
 * @param end index behind the last; beyond the list it ends
 * @returns NaN when nothing is left
 * @example medianBetween([9, 3, 1, NaN, 2], 1, 5) // 2
 */
export function medianBetween(values: Float64Array | Float32Array, from: number, end: number): number {
	const first = Math.max(0, from);
	const last = Math.min(values.length, end);
	return last - first > FEW ? median(values.subarray(first, last)) : quantileOfFew(values, first, last, 0.5);
}

/** Up to here insertion is quicker than selection. */
const FEW = 32;
const sorted = new Float64Array(FEW);

function quantileOfFew(values: ArrayLike<number>, from: number, end: number, share: number): number {
	let length = 0;
	for (let i = from; i < end; i++) {
		const value = values[i];
		if (value !== value) continue;
		let k = length++;
		for (; k > 0 && sorted[k - 1] > value; k--) sorted[k] = sorted[k - 1];
		sorted[k] = value;
	}
	if (length === 0) return NaN;
	const at = share * (length - 1);
	const below = Math.floor(at);
	const above = Math.min(length - 1, below + 1);
	return sorted[below] + (sorted[above] - sorted[below]) * (at - below);
}

/** The same without sorting them all: only the two order statistics are put in their place. */
function quantileOfMany(values: ArrayLike<number>, share: number): number {
	const kept = new Float64Array(values.length);
	let length = 0;
	for (let i = 0; i < values.length; i++) {
		const value = values[i];
		if (value === value) kept[length++] = value;
	}
	if (length === 0) return NaN;
	const at = share * (length - 1);
	const below = Math.floor(at);
	select(kept, length, below);
	const low = kept[below];
	if (below + 1 >= length) return low;
	// all that lies behind is at least as large: the least of it is the next order statistic
	let next = kept[below + 1];
	for (let i = below + 2; i < length; i++) if (kept[i] < next) next = kept[i];
	return low + (next - low) * (at - below);
}

/** Quickselect (Hoare 1961): afterwards the k-th least value stands at k, none before it is greater, none behind it less. */
function select(values: Float64Array, length: number, k: number): void {
	let from = 0;
	let to = length - 1;
	while (from < to) {
		const pivot = middleOf(values[from], values[(from + to) >> 1], values[to]);
		let i = from;
		let j = to;
		while (i <= j) {
			while (values[i] < pivot) i++;
			while (values[j] > pivot) j--;
			if (i > j) break;
			const swapped = values[i];
			values[i++] = values[j];
			values[j--] = swapped;
		}
		if (k <= j) to = j;
		else if (k >= i) from = i;
		else return;
	}
}

function middleOf(a: number, b: number, c: number): number {
	return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
}
