import jstat from 'jstat';

/**
 * The value that a chi-square variable stays below with probability `p`.
 *
 * @param p probability, 0 < p < 1
 * @param degreesOfFreedom > 0
 * @returns the quantile; NaN outside those ranges
 * @example chiSquareQuantile(0.95, 2) // 5.9915
 * Source: library; checked against R's qchisq in tests/published. (Another library's quantile, exact for
 * few events, is 1.5e-4 too high in the upper tail at 1000 events: DEVELOPERS.md, decision notes.)
 */
export function chiSquareQuantile(p: number, degreesOfFreedom: number): number {
	if (!(p > 0 && p < 1 && degreesOfFreedom > 0)) return NaN;
	const quantile = jstat.chisquare.inv(p, degreesOfFreedom);
	// far below one degree of freedom the quantile is smaller than any number, and the library gives up
	return Number.isNaN(quantile) && degreesOfFreedom < 0.1 ? 0 : quantile;
}
