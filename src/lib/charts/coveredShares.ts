/**
 * How much of each cell of an axis the given stretches cover: for an axis on which thousands of stretches
 * are too short to be drawn one by one.
 *
 * @param spans [from, to] in any order, not overlapping
 * @param range the axis, [from, to] in the same unit
 * @param cells how many equal cells it is cut into, at least 1
 * @returns a share of 0 to 1 a cell; their mean is the covered share of the whole
 * @example coveredShares([[0, 4], [5, 7]], [0, 8], 2) // [1, 0.5]
 */
export function coveredShares(
	spans: readonly (readonly [number, number])[],
	range: readonly [number, number],
	cells: number
): number[] {
	const covered = new Array<number>(cells).fill(0);
	const size = (range[1] - range[0]) / cells;
	for (const [from, to] of spans) {
		// rounding may put the end of the axis a hair behind the last cell
		const end = Math.min(cells, (Math.min(to, range[1]) - range[0]) / size);
		let at = (Math.max(from, range[0]) - range[0]) / size;
		while (at < end) {
			const cell = Math.floor(at);
			const next = Math.min(end, cell + 1);
			covered[cell] += next - at;
			at = next;
		}
	}
	return covered.map((share) => Math.min(1, share));
}
