import { checkConfidence } from './checks';
import { countedAgainstExpected, type ExpectedStratum } from './countedAgainstExpected';
import { normalQuantile } from './normalQuantile';

/**
 * Limits of counted over expected from the variance of the logarithm: quick, known from textbooks, fair with
 * many events, and unable to speak when either number is 0. Beside `countedAgainstExpected`, as a check.
 *
 * @param strata as for `countedAgainstExpected`
 * @param confidence two-sided, 0 < confidence < 1
 * @returns ratio and limits; null when nothing was counted or nothing expected
 * @throws RangeError for counts, exposures or a confidence outside their ranges
 * @example countedAgainstExpectedDeltaLog(strata, 0.95) // { ratio: 1.006, lower: 0.447, upper: 2.266 }
 * Source: delta method, var(log O/E) = 1/O + Var(E)/E^2 with Var(E) = sum of count x weight^2; Breslow and Day
 * 1987, IARC Sci. Publ. 82, section 2.3 (section from memory).
 */
export function countedAgainstExpectedDeltaLog(
	strata: readonly ExpectedStratum[],
	confidence: number
): { ratio: number; lower: number; upper: number } | null {
	checkConfidence('confidence', confidence);
	const { counted, expected, expectedSd, ratio } = countedAgainstExpected(strata, confidence);
	if (counted === 0 || !(expected > 0)) return null;
	const reach =
		normalQuantile(1 - (1 - confidence) / 2) * Math.sqrt(1 / counted + (expectedSd / expected) ** 2);
	return { ratio, lower: ratio * Math.exp(-reach), upper: ratio * Math.exp(reach) };
}
