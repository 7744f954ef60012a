/**
 * The value below which a share of sorted numbers lies, with straight lines between neighbours.
 *
 * @param sorted in rising order; infinities may stand at the end
 * @param share 0 to 1
 * @returns the quantile; NaN for no numbers
 * @example sampleQuantile([1, 2, 3, 4], 0.5) // 2.5
 * Source: Hyndman and Fan 1996, The American Statistician 50:361, definition 7.
 */
export function sampleQuantile(sorted: ArrayLike<number>, share: number): number {
	if (sorted.length === 0) return NaN;
	const place = (sorted.length - 1) * Math.min(1, Math.max(0, share));
	const before = Math.floor(place);
	const low = sorted[before];
	const high = sorted[Math.min(before + 1, sorted.length - 1)];
	return low === high ? low : low + (place - before) * (high - low);
}
