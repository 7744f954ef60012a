/**
 * What lies between the given stretches: from the observed ones of a ride the unobserved ones.
 *
 * @param spans [from, to], in order, not overlapping
 * @param range the whole, [from, to]
 * @example spansBetween([[2, 5]], [0, 10]) // [[0, 2], [5, 10]]
 */
export function spansBetween(
	spans: readonly (readonly [number, number])[],
	range: readonly [number, number]
): [number, number][] {
	const between: [number, number][] = [];
	let from = range[0];
	for (const [start, end] of spans) {
		if (start > from) between.push([from, Math.min(start, range[1])]);
		from = Math.max(from, end);
	}
	if (from < range[1]) between.push([from, range[1]]);
	return between;
}
