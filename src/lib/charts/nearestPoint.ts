interface Point {
	readonly x: number;
	readonly y: number;
}

/**
 * The second whose point on a drawing lies nearest to a place.
 *
 * @param at pixels
 * @param seconds the seconds to look at, [first, last]
 * @param pointOf null where the second is not drawn
 * @param within pixels; what lies farther away was not meant
 * @returns null when no point is near
 */
export function nearestPoint(
	at: Point,
	[first, last]: readonly [number, number],
	pointOf: (second: number) => Point | null,
	within = 20
): number | null {
	let best: number | null = null;
	let least = within * within;
	for (let second = first; second <= last; second++) {
		const point = pointOf(second);
		if (!point) continue;
		const away = (point.x - at.x) ** 2 + (point.y - at.y) ** 2;
		if (away > least) continue;
		least = away;
		best = second;
	}
	return best;
}
