import betaQuantile from '@stdlib/stats-base-dists-beta-quantile';
import { checkConfidence, checkExposure } from './checks';
import { gammaOfSum, withOneMore, type WeightedCount } from './weightedCountLimits';

/**
 * Limits of the ratio of two expected sums of weighted events, each with its own chance. With weights of 1 on
 * both sides they are the exact conditional limits of a rate ratio; with bursts or unequal weights wider.
 *
 * @param a numerator
 * @param b denominator
 * @param confidence two-sided, 0 < confidence < 1
 * @returns ratio and limits; ratio NaN when both sums are 0, Infinity when only b's is; an upper limit of
 *   Infinity when b's sum is 0
 * @throws RangeError for negative sums or a confidence outside (0, 1)
 * @example weightedCountRatio({ total: 11, variance: 11, heaviest: 1 }, { total: 21, variance: 21, heaviest: 1 },
 *   0.95) // 0.5238 (0.2281 to 1.1364)
 * Source: Fay 1999, Communications in Statistics 28:2141 (F limits for ratios of weighted sums; from memory);
 * checked against R's conditional limits in tests/published.
 */
export function weightedCountRatio(
	a: WeightedCount,
	b: WeightedCount,
	confidence: number
): { ratio: number; lower: number; upper: number } {
	checkExposure('total of a', a.total);
	checkExposure('total of b', b.total);
	checkConfidence('confidence', confidence);
	if (a.total === 0 && b.total === 0) return { ratio: NaN, lower: 0, upper: Infinity };
	const lowerOf = (numerator: WeightedCount, denominator: WeightedCount) => {
		if (numerator.total === 0) return 0;
		const above = gammaOfSum(numerator);
		const below = gammaOfSum(withOneMore(denominator));
		const share = betaQuantile((1 - confidence) / 2, above.shape, below.shape);
		return ((share / (1 - share)) * above.scale) / below.scale;
	};
	// the upper limit is the lower one of the ratio turned over
	return { ratio: a.total / b.total, lower: lowerOf(a, b), upper: 1 / lowerOf(b, a) };
}
