import { toTenth } from './toTenth';

/**
 * The path of a count over distance: flat, then up by one at each event.
 *
 * @param events distances of the counted events in order, with the count after each
 * @param endM how far the line runs
 * @param x distance in metres -> pixel
 * @param y count -> pixel
 * @returns the `d` of an SVG path, rounded to a tenth of a pixel
 */
export function stepLine(
	events: readonly { readonly atM: number; readonly count: number }[],
	endM: number,
	x: (metres: number) => number,
	y: (count: number) => number
): string {
	const steps = events.map(({ atM, count }) => `H${toTenth(x(atM))}V${toTenth(y(count))}`).join('');
	return `M${toTenth(x(0))},${toTenth(y(0))}${steps}H${toTenth(x(endM))}`;
}
