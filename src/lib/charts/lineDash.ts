const DASHES = ['', '9 4', '2 4', '12 4 2 4', '5 2'];

/**
 * The dash by which a line is told from its neighbours, without colour.
 *
 * @param place 0, 1, 2...; after five they begin anew
 * @example lineDash(1) // "9 4"
 */
export function lineDash(place: number): string {
	return DASHES[place % DASHES.length];
}
