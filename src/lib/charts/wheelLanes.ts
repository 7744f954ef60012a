import { toTenth } from './toTenth';

/** Something drawn on a wheel's distance axis, metres. */
export interface LaneSpan {
	readonly fromM: number;
	readonly toM: number;
}

/**
 * Pixels of a stretch on the axis, never narrower than can be seen: a short ride among thousands of
 * kilometres keeps a mark.
 *
 * @param x metres -> pixels
 * @param least smallest width in pixels
 * @returns left edge and width, rounded to tenths
 * @example spanPixels({ fromM: 0, toM: 10 }, (m) => m / 100, 2) // { left: 0, width: 2 }
 */
export function spanPixels(
	{ fromM, toM }: LaneSpan,
	x: (metres: number) => number,
	least: number
): { left: number; width: number } {
	return { left: toTenth(x(fromM)), width: toTenth(Math.max(least, x(toM) - x(fromM))) };
}

/**
 * A name cut to the room that its band has, so that it never runs into the next one.
 *
 * @param width pixels of the band
 * @param perLetter pixels that a letter takes on average
 * @returns the name, its beginning with an ellipsis, or '' where not even three letters fit
 * @example fittingName('Prototype 1', 50, 7) // "Proto…"
 */
export function fittingName(name: string, width: number, perLetter = 7): string {
	const letters = Math.floor((width - 8) / perLetter);
	if (name.length <= letters) return name;
	return letters < 3 ? '' : `${name.slice(0, letters - 1).trimEnd()}…`;
}
