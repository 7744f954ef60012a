import { checkConfidence, checkCount, checkPositive } from './checks';
import { chiSquareQuantile } from './chiSquareQuantile';

/**
 * How much must be watched, with at most so many events, to show with one-sided confidence that the rate is at
 * most the target. The number allowed is fixed BEFORE the test; one event more fails it.
 *
 * @param targetRate events per unit of exposure that must not be exceeded, > 0
 * @param confidence one-sided, 0 < confidence < 1
 * @param allowedEvents events allowed, a whole number >= 0
 * @returns exposure; more for more events allowed
 * @throws RangeError for arguments outside those ranges
 * @example demonstrationExposure(0.01, 0.95, 0) // 299.57: 300 km without an event for 10 in 1000 km
 * Source: NIST/SEMATECH e-Handbook 8.3.1.1 (chi-square with 2 x allowed + 2 degrees of freedom); IEC 61124.
 */
export function demonstrationExposure(targetRate: number, confidence: number, allowedEvents: number): number {
	checkPositive('targetRate', targetRate);
	checkConfidence('confidence', confidence);
	checkCount('allowedEvents', allowedEvents);
	return chiSquareQuantile(confidence, 2 * allowedEvents + 2) / (2 * targetRate);
}
