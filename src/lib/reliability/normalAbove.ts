import distribution from '@stdlib/stats-base-dists-normal-cdf';

/**
 * The probability that a standard normal variable lies above `z`. Taken from the lower tail of -z, because
 * 1 - p would lose its digits when it is small.
 *
 * @param z any number, infinities included
 * @returns probability; NaN for NaN
 * @example normalAbove(1.644854) // 0.05
 * Source: library; checked against published tail areas in tests/published.
 */
export function normalAbove(z: number): number {
	if (z === Infinity) return 0;
	if (z === -Infinity) return 1;
	return distribution(-z, 0, 1);
}
