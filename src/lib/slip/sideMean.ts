/**
 * Mean of the values on both sides of every second, leaving out the second itself and `gapS` on each side.
 *
 * @param values one a second; NaN is left out
 * @param reachS how far to look, s
 * @param gapS how much to leave out on each side, s; 0 takes the second itself in
 * @returns means of the same length; NaN where nothing is known
 * @example sideMean(Float64Array.of(1, 9, 3), 1, 0)[1] // (1 + 9 + 3) / 3
 */
export function sideMean(values: Float64Array, reachS: number, gapS: number): Float64Array {
	const length = values.length;
	const { sum, count } = scratch(length + 1);
	for (let t = 0; t < length; t++) {
		const known = !Number.isNaN(values[t]);
		sum[t + 1] = sum[t] + (known ? values[t] : 0);
		count[t + 1] = count[t] + (known ? 1 : 0);
	}
	const out = new Float64Array(length);
	for (let t = 0; t < length; t++) {
		const from = Math.max(0, t - reachS);
		const to = Math.min(length, t + reachS + 1);
		let total = sum[to] - sum[from];
		let known = count[to] - count[from];
		if (gapS > 0) {
			const gapFrom = Math.max(0, t - gapS);
			const gapTo = Math.min(length, t + gapS + 1);
			total -= sum[gapTo] - sum[gapFrom];
			known -= count[gapTo] - count[gapFrom];
		}
		out[t] = total / known;
	}
	return out;
}

let buffers = { sum: new Float64Array(1), count: new Int32Array(1) };

/** The same memory for every call: a dozen means are taken a ride. Their first entries stay 0, the others are written. */
function scratch(length: number) {
	if (buffers.sum.length < length)
		buffers = { sum: new Float64Array(2 * length), count: new Int32Array(2 * length) };
	return buffers;
}
