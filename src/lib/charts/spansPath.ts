/**
 * Stretches as one SVG path of rectangles: a ride has hundreds, and one element is moved faster than
 * hundreds.
 *
 * @param spans [from, to] in pixels
 * @param top upper edge, pixels
 * @param height pixels
 * @param leastWidth pixels that even the shortest takes; 0 keeps the drawn length true
 * @example spansPath([[2, 5]], 10, 20) // "M2,10H5V30H2Z"
 */
export function spansPath(
	spans: readonly (readonly [number, number])[],
	top: number,
	height: number,
	leastWidth = 0
): string {
	// hundreds of widths add up: a tenth of a pixel would be too coarse
	const round = (value: number) => Math.round(value * 100) / 100;
	return spans
		.map(
			([from, to]) =>
				`M${round(from)},${top}H${round(Math.max(to, from + leastWidth))}V${top + height}H${round(from)}Z`
		)
		.join('');
}
