/** What is done with one spacer. */
export type SpacerMove =
	| 'added on the left'
	| 'added on the right'
	| 'moved from right to left'
	| 'moved from left to right'
	| 'put behind the cassette';

const PART_OF_THICKNESS: Readonly<Record<SpacerMove, number>> = {
	'added on the left': 0.5,
	'added on the right': -0.5,
	'moved from right to left': 1,
	'moved from left to right': -1,
	'put behind the cassette': 0
};

/**
 * How far the rim centre moves from the midplane of the locknut faces when one spacer is added, moved to
 * the other side at equal width, or put behind the cassette.
 *
 * @param thicknessMm of the spacer, >= 0 mm
 * @returns millimetres, positive towards the drive side (the right)
 * @throws RangeError for a thickness that is negative or not a number
 * @example rimShiftOfSpacer(2, 'added on the left') // 1
 * Source: common practice, no source; worked by hand in the tests.
 */
export function rimShiftOfSpacer(thicknessMm: number, move: SpacerMove): number {
	if (!(thicknessMm >= 0 && thicknessMm < Infinity)) throw new RangeError(`thicknessMm: ${thicknessMm}`);
	return thicknessMm * PART_OF_THICKNESS[move];
}
