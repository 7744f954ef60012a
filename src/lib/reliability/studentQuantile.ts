import quantile from '@stdlib/stats-base-dists-t-quantile';

/**
 * The value that a variable of Student's t distribution stays below with probability `p`.
 *
 * @param p probability, 0 < p < 1
 * @param degreesOfFreedom > 0
 * @returns the quantile; NaN outside those ranges
 * @example studentQuantile(0.975, 15) // 2.13145
 * Source: library; checked against R's qt in tests/published.
 */
export function studentQuantile(p: number, degreesOfFreedom: number): number {
	return p > 0 && p < 1 && degreesOfFreedom > 0 ? quantile(p, degreesOfFreedom) : NaN;
}
