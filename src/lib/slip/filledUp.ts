/**
 * A value with narrow dips filled up to the lower of their two sides: a morphological closing (Serra 1982, Image
 * Analysis and Mathematical Morphology). Where a rider eases off for good nothing is filled.
 *
 * @param values one a second
 * @param widthS dips narrower than this are filled, s
 * @param t the second asked about
 * @returns NaN where no `widthS` known seconds hold it
 * @example filledUp(Float64Array.of(200, 210, 90, 190), 3, 2) // 200: of 210 and 190 with what lies beside
 */
export function filledUp(values: Float64Array, widthS: number, t: number): number {
	let lowest = NaN;
	for (let start = t - widthS + 1; start <= t; start++) {
		let most = -Infinity;
		for (let k = start; k < start + widthS; k++) {
			const value = values[k];
			if (!(value <= most)) most = value;
			if (most !== most) break;
		}
		if (most === most && !(lowest <= most)) lowest = most;
	}
	return lowest;
}
