import type { StackElement, StackSide } from './stackElement';

/**
 * How far the rim centre moves from the midplane of the locknut faces when one stack takes the place of
 * another under the same laced wheel. Half of what the left side gains over the right side: a spacer of t
 * added on the left moves the rim by t/2 towards the drive side, the same spacer moved from right to left
 * by t, and a spacer behind the cassette moves nothing, since it does not stand between the faces.
 *
 * @param before the elements on which the wheel was dished
 * @param after the elements that are on it now
 * @returns millimetres, positive towards the drive side; null when the hub between the sides is another
 *   one, because the rim is laced to it
 * @example rimShift([], [{ label: 'spacer', side: 'left', nominalMm: 1, minusMm: 0, plusMm: 0,
 *   measuredMm: null, inEngagement: 0, inEndFloat: 0 }]) // 0.5
 * Source: common practice, no source; worked by hand in the tests.
 */
export function rimShift(before: readonly StackElement[], after: readonly StackElement[]): number | null {
	if (Math.abs(sideMm(after, 'hub') - sideMm(before, 'hub')) > 0.005) return null;
	const left = sideMm(after, 'left') - sideMm(before, 'left');
	const right = sideMm(after, 'right') - sideMm(before, 'right');
	return (left - right) / 2;
}

/** Length of one side, measured where it was measured. */
function sideMm(elements: readonly StackElement[], side: StackSide): number {
	return elements
		.filter((element) => element.side === side)
		.reduce((sum, { measuredMm, nominalMm }) => sum + (measuredMm ?? nominalMm), 0);
}
