/**
 * Stretches as one SVG path of rectangles: a ride has hundreds, and one element is moved faster than
 * hundreds.
 *
 * @param spans [from, to] in pixels
 * @param top upper edge, pixels
 * @param height pixels
 * @example spansPath([[2, 5]], 10, 20) // "M2,10H5V30H2Z"
 */
export function spansPath(
	spans: readonly (readonly [number, number])[],
	top: number,
	height: number
): string {
	const round = (value: number) => Math.round(value * 10) / 10;
	return spans
		.map(
			([from, to]) =>
				`M${round(from)},${top}H${round(Math.max(to, from + 0.5))}V${top + height}H${round(from)}Z`
		)
		.join('');
}
