/**
 * Indices of the longest subsequence that never falls (patience sorting with back links; Knuth, The Art
 * of Computer Programming 3, section 5.1.4). Takes n log n steps, one pass where nothing falls.
 * @param values numbers in any order; those that are not finite are left out
 * @returns indices in rising order; empty when no value is finite
 * @example longestRisingRun(Float64Array.of(1, 2, 9, 3)) // 0, 1, 3
 */
export function longestRisingRun(values: Float64Array): Int32Array {
	const before = new Int32Array(values.length);
	// tails[k] = index of the smallest value that ends a run of k + 1 values
	const tails = new Int32Array(values.length);
	let length = 0;
	for (let i = 0; i < values.length; i++) {
		if (!Number.isFinite(values[i])) continue;
		let low = 0;
		let high = length;
		// most files are in order: look at the end first
		if (length > 0 && values[tails[length - 1]] <= values[i]) low = length;
		while (low < high) {
			const middle = (low + high) >>> 1;
			if (values[tails[middle]] <= values[i]) low = middle + 1;
			else high = middle;
		}
		before[i] = low > 0 ? tails[low - 1] : -1;
		tails[low] = i;
		if (low === length) length++;
	}
	const run = new Int32Array(length);
	for (let k = length - 1, i = length > 0 ? tails[length - 1] : -1; k >= 0; k--, i = before[i]) run[k] = i;
	return run;
}
