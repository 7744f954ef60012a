import quantile from '@stdlib/stats-base-dists-normal-quantile';

/**
 * The value that a standard normal variable stays below with probability `p`.
 *
 * @param p probability, 0 < p < 1
 * @returns the quantile; NaN outside that range
 * @example normalQuantile(0.975) // 1.95996
 * Source: library; checked against R's qnorm to 1e-9 for p from 1e-9 in tests/published (below 1e-15 the
 * library loses digits).
 */
export function normalQuantile(p: number): number {
	return p > 0 && p < 1 ? quantile(p, 0, 1) : NaN;
}
