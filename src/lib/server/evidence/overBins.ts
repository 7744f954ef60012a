/**
 * How a stretch divides over bins of equal width. Bins are counted, not added up: a sum that rounds back to
 * where it was would never end.
 *
 * @param fromM and toM of the stretch, 0 or more; @param widthM of a bin, above 0
 * @param visit is called with each bin that holds a part of it, and the metres there
 * @example overBins(80, 230, 100, visit) // bin 0: 20, bin 1: 100, bin 2: 30
 */
export function overBins(
	fromM: number,
	toM: number,
	widthM: number,
	visit: (bin: number, metres: number) => void
): void {
	const last = Math.floor(toM / widthM);
	for (let bin = Math.floor(fromM / widthM); bin <= last; bin++) {
		const metres = Math.min(toM, (bin + 1) * widthM) - Math.max(fromM, bin * widthM);
		if (metres > 0) visit(bin, metres);
	}
}
