import type { CumulativeStep, MeanCumulativeFunction } from './meanCumulativeFunction';

/**
 * The last step of a mean cumulative function at or before an age.
 *
 * @param curve from `meanCumulativeFunction`
 * @param age >= 0
 * @returns the step; null before the first event
 * @example meanCumulativeAt(curve, 500)?.mean // mean events per system up to age 500
 * Source: definition of a step function.
 */
export function meanCumulativeAt(curve: MeanCumulativeFunction, age: number): CumulativeStep | null {
	let found: CumulativeStep | null = null;
	for (const step of curve.steps) {
		if (step.age > age) break;
		found = step;
	}
	return found;
}
