import { checkConfidence, checkCount, checkPositive } from './checks';
import { chiSquareQuantile } from './chiSquareQuantile';
import { gammaOfSum, withOneMore } from './weightedCountLimits';

/**
 * How much must be watched, with at most so many events, to show with one-sided confidence that the rate is at
 * most the target. The number allowed is fixed BEFORE the test; one event more fails it.
 *
 * @param targetRate events per unit of exposure that must not be exceeded, > 0
 * @param confidence one-sided, 0 < confidence < 1
 * @param allowedEvents events allowed, a whole number >= 0
 * @param dispersion variance / mean of the counts where events come in bursts, 1 or more: bursts leave long empty
 *   stretches, so that a plan made for single events is passed too easily. Below 1 counts as 1
 * @returns exposure; more for more events allowed, and for a larger dispersion
 * @throws RangeError for arguments outside those ranges
 * @example demonstrationExposure(0.01, 0.95, 0) // 299.57: 300 km without an event for 10 in 1000 km
 * Source: NIST/SEMATECH e-Handbook 8.3.1.1 (chi-square with 2 x allowed + 2 degrees of freedom); IEC 61124. With a
 * dispersion: the limits of `weightedCountLimits`; risks measured in tests/bench/coverage-figures.md.
 */
export function demonstrationExposure(
	targetRate: number,
	confidence: number,
	allowedEvents: number,
	dispersion = 1
): number {
	checkPositive('targetRate', targetRate);
	checkConfidence('confidence', confidence);
	checkCount('allowedEvents', allowedEvents);
	checkPositive('dispersion', dispersion);
	const weight = Math.max(1, dispersion);
	const { shape, scale } = gammaOfSum(
		withOneMore({ total: allowedEvents, variance: weight * allowedEvents, heaviest: weight })
	);
	return (scale * chiSquareQuantile(confidence, 2 * shape)) / (2 * targetRate);
}
