import { checkConfidence, checkCount, checkExposure } from './checks';
import { poissonAtLeast, poissonAtMost } from './poissonProbability';
import { poissonRateLimits, type RateLimits } from './poissonRateLimits';
import { rootBetween } from './rootBetween';

/**
 * The rate of events with two-sided mid-p limits: the observed count itself is given to each tail by half.
 * They are shorter than the exact limits and cover `confidence` on average, not always: for looking, not for
 * a decision.
 *
 * @param count events, a whole number >= 0
 * @param exposure what was watched, >= 0
 * @param confidence two-sided, 0 < confidence < 1
 * @returns rate and limits in events per unit of exposure; { NaN, 0, Infinity } without exposure
 * @throws RangeError for arguments outside those ranges
 * @example poissonRateMidPLimits(0, 300, 0.95).upper // 0.009986: the "rule of three"
 * Source: Lancaster 1961, J. Am. Statist. Assoc. 56:223 (mid-p; from memory); checked against R in
 * tests/published.
 */
export function poissonRateMidPLimits(count: number, exposure: number, confidence: number): RateLimits {
	checkCount('count', count);
	checkExposure('exposure', exposure);
	checkConfidence('confidence', confidence);
	if (exposure === 0) return { rate: NaN, lower: 0, upper: Infinity };
	const tail = (1 - confidence) / 2;
	const rate = count / exposure;
	if (count === 0) return { rate, lower: 0, upper: -Math.log(1 - confidence) / exposure };
	const exact = poissonRateLimits(count, 1, confidence);
	const lower = rootBetween(
		(mean) => (poissonAtLeast(count, mean) + poissonAtLeast(count + 1, mean)) / 2 - tail,
		exact.lower,
		count
	);
	const upper = rootBetween(
		(mean) => (poissonAtMost(count, mean) + poissonAtMost(count - 1, mean)) / 2 - tail,
		count,
		exact.upper
	);
	return { rate, lower: lower / exposure, upper: upper / exposure };
}
