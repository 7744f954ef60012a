import { checkConfidence, checkCount, checkExposure } from './checks';
import { poissonAtLeast, poissonAtMost } from './poissonProbability';
import { poissonRateLimits } from './poissonRateLimits';

/** Events counted, set against a number of events that was expected. */
export interface CountedOverKnown {
	/** counted / expected; NaN when nothing was expected and nothing counted, Infinity when only counted */
	readonly ratio: number;
	readonly lower: number;
	readonly upper: number;
	/** doubled smaller tail of "as many as expected"; agrees with the limits */
	readonly pValue: number;
	/** the same with half the chance of the count itself */
	readonly midPValue: number;
}

/**
 * Events counted over events expected, when the expected number is KNOWN, not estimated (a target, a plan).
 * An expected number that comes from another series carries chance of its own: use `countedAgainstExpected`.
 *
 * @param counted events, a whole number >= 0
 * @param expected events expected, >= 0
 * @param confidence two-sided, 0 < confidence < 1
 * @returns ratio with exact limits and p-values; nothing expected: limits 0 and Infinity
 * @throws RangeError for arguments outside those ranges
 * @example countedOverKnown(4, 3.3, 0.95) // { ratio: 1.2121, lower: 0.3303, upper: 3.1035, ... }
 * Source: Liddell 1984, J. Epidemiol. Community Health 38:85; exact Poisson limits divided by the expected.
 */
export function countedOverKnown(counted: number, expected: number, confidence: number): CountedOverKnown {
	checkCount('counted', counted);
	checkExposure('expected', expected);
	checkConfidence('confidence', confidence);
	if (expected === 0)
		return {
			ratio: counted === 0 ? NaN : Infinity,
			lower: 0,
			upper: Infinity,
			pValue: counted === 0 ? 1 : 0,
			midPValue: counted === 0 ? 1 : 0
		};
	const { rate, lower, upper } = poissonRateLimits(counted, expected, confidence);
	const atMost = poissonAtMost(counted, expected);
	const atLeast = poissonAtLeast(counted, expected);
	const above = poissonAtLeast(counted + 1, expected);
	const below = poissonAtMost(counted - 1, expected);
	return {
		ratio: rate,
		lower,
		upper,
		pValue: Math.min(1, 2 * Math.min(atMost, atLeast)),
		midPValue: Math.min(1, Math.min(atMost + below, atLeast + above))
	};
}
