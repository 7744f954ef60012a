/**
 * Stretches as they can be drawn: what is shorter than a cell is pushed together within its cell, so that
 * a ride with hundreds of short stretches costs no more marks than the width has room for and the drawn
 * length still is the true one. (Joining neighbours across what lies between them would draw more.)
 *
 * @param spans [from, to] in order, not overlapping, in any unit
 * @param cell length of a cell in that unit, above 0; cells begin at multiples of it, so that they stand
 *   still when the shown window moves
 * @returns at most one stretch a cell, those that touch joined; a stretch alone in its cell stays where it is
 * @example gatheredSpans([[0, 5], [5.5, 6], [20, 30]], 3) // [[0, 5.5], [20, 30]]
 */
export function gatheredSpans(
	spans: readonly (readonly [number, number])[],
	cell: number
): [number, number][] {
	const gathered: [number, number][] = [];
	let lastCell = -1;
	for (const [from, to] of spans) {
		const last = Math.max(Math.floor(from / cell), Math.ceil(to / cell) - 1);
		for (let index = Math.floor(from / cell); index <= last; index++) {
			const start = Math.max(from, index * cell);
			const length = Math.min(to, (index + 1) * cell) - start;
			const before = gathered[gathered.length - 1];
			if (before && (index === lastCell || start - before[1] < 1e-6 * cell)) before[1] += length;
			else gathered.push([start, start + length]);
			lastCell = index;
		}
	}
	return gathered;
}
