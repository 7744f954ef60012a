import { borrowableDispersion } from './borrowableDispersion';
import { checkConfidence, checkExposure } from './checks';
import { clusteredCount } from './clusteredCount';
import { conditionalRateRatio, type RateRatio } from './conditionalRateRatio';
import { unitTotals, type UnitCount } from './unitCounts';
import { weightedCountRatio } from './weightedCountRatio';

export interface WidestRateRatio extends RateRatio {
	/** which interval set the upper limit: `single` events (exact) or `bursts` (weights of whole units) */
	readonly decidedBy: 'single' | 'bursts';
	readonly usedDispersionA: number;
	readonly usedDispersionB: number;
	/** true: say beside the figure that it assumes that events do not cluster */
	readonly assumesSingleEvents: boolean;
}

/**
 * THE interval of a ratio of two rates: at each end the wider one of the exact conditional limits and those
 * that allow for bursts and for good and bad outings on both sides. The p-value is the exact one and, like it,
 * takes events for single: read the limits when `usedDispersion` is above 1.
 *
 * @param unitsA outings of the series in the numerator (say, the new build)
 * @param unitsB outings of the series it is set against
 * @param confidence two-sided, 0 < confidence < 1
 * @param borrowedDispersion for A when it has too few events to show its own; left out: B's own, when B has
 *   enough events to show it
 * @returns ratio, limits and what set them; { NaN, 0, Infinity } without any event or without exposure
 * @throws RangeError for broken counts, exposures, confidences or a borrowed dispersion below 0
 * @example widestRateRatio(ridesAfter, ridesBefore, 0.95).upper // at most so many times the old rate
 * Source: Clopper and Pearson 1934; Fay 1999 (see the functions used); coverage measured in
 * tests/bench/coverage-figures.md.
 */
export function widestRateRatio(
	unitsA: readonly UnitCount[],
	unitsB: readonly UnitCount[],
	confidence: number,
	borrowedDispersion?: number
): WidestRateRatio {
	checkConfidence('confidence', confidence);
	if (borrowedDispersion !== undefined) checkExposure('borrowedDispersion', borrowedDispersion);
	const totalsA = unitTotals(unitsA);
	const totalsB = unitTotals(unitsB);
	const b = clusteredCount(unitsB);
	const borrowed = borrowedDispersion ?? borrowableDispersion(unitsB);
	const a = clusteredCount(unitsA, borrowed);
	const exact = conditionalRateRatio(
		{
			countA: totalsA.count,
			exposureA: totalsA.exposure,
			countB: totalsB.count,
			exposureB: totalsB.exposure
		},
		confidence
	);
	const told = {
		usedDispersionA: a.usedDispersion,
		usedDispersionB: b.usedDispersion,
		assumesSingleEvents: a.assumesSingleEvents || b.assumesSingleEvents
	};
	if (Number.isNaN(exact.ratio)) return { ...exact, ...told, decidedBy: 'single' };
	const scale = totalsB.exposure / totalsA.exposure;
	const bursts = weightedCountRatio(a, b, confidence);
	return {
		...exact,
		lower: Math.min(exact.lower, bursts.lower * scale),
		upper: Math.max(exact.upper, bursts.upper * scale),
		...told,
		decidedBy: bursts.upper * scale > exact.upper * (1 + 1e-9) ? 'bursts' : 'single'
	};
}
