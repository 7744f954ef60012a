import { chiSquareQuantile } from './chiSquareQuantile';
import { checkConfidence, checkCount, checkExposure } from './checks';

/**
 * The rate that a series with this many events stays below, with one-sided confidence: the answer to
 * "how bad could it still be?". After no event it is about 3 / exposure at 95 %.
 *
 * @param count events, a whole number >= 0
 * @param exposure what was watched, >= 0
 * @param confidence one-sided, 0 < confidence < 1
 * @returns events per unit of exposure; Infinity without exposure
 * @throws RangeError for arguments outside those ranges
 * @example poissonRateUpperBound(0, 300, 0.95) // 0.009986: 300 km without a slip bound it at 10 per 1000 km
 * Source: NIST/SEMATECH e-Handbook 8.4.5.1; the zero-event case is the "rule of three" of Hanley and
 * Lippman-Hand 1983, JAMA 249:1743 (citation from memory).
 */
export function poissonRateUpperBound(count: number, exposure: number, confidence: number): number {
	checkCount('count', count);
	checkExposure('exposure', exposure);
	checkConfidence('confidence', confidence);
	if (exposure === 0) return Infinity;
	return chiSquareQuantile(confidence, 2 * count + 2) / 2 / exposure;
}
