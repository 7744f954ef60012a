/**
 * Joins stretches that lie closer together than can be drawn, so that a ride with hundreds of short
 * stretches costs no more marks than the width has room for.
 *
 * @param spans [from, to] in order of from
 * @param smallestGap stretches nearer than this become one; stretches shorter than this are kept
 * @example mergedSpans([[0, 5], [5.5, 9], [20, 30]], 1) // [[0, 9], [20, 30]]
 */
export function mergedSpans(
	spans: readonly (readonly [number, number])[],
	smallestGap: number
): [number, number][] {
	const merged: [number, number][] = [];
	for (const [from, to] of spans) {
		const last = merged[merged.length - 1];
		if (last && from - last[1] < smallestGap) last[1] = Math.max(last[1], to);
		else merged.push([from, to]);
	}
	return merged;
}
