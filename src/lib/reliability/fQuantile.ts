import quantile from '@stdlib/stats-base-dists-f-quantile';

/**
 * The value that a variable of the F distribution stays below with probability `p`.
 *
 * @param p probability, 0 < p < 1
 * @param numeratorDegrees > 0
 * @param denominatorDegrees > 0
 * @returns the quantile; NaN outside those ranges
 * @example fQuantile(0.95, 2, 74) // 3.12035
 * Source: library; checked against R's beta quantile (R's own F quantile loses digits for small p) in
 * tests/published.
 */
export function fQuantile(p: number, numeratorDegrees: number, denominatorDegrees: number): number {
	if (!(p > 0 && p < 1 && numeratorDegrees > 0 && denominatorDegrees > 0)) return NaN;
	return quantile(p, numeratorDegrees, denominatorDegrees);
}
