import betaDistribution from '@stdlib/stats-base-dists-beta-cdf';
import betaQuantile from '@stdlib/stats-base-dists-beta-quantile';
import { checkConfidence, checkCount, checkExposure } from './checks';

/** Events of two series, A and B, and what was watched while they came. */
export interface TwoSeries {
	readonly countA: number;
	readonly exposureA: number;
	readonly countB: number;
	readonly exposureB: number;
}

export interface RateRatio {
	/** rate of A / rate of B; NaN when neither had an event, Infinity when only B had none */
	readonly ratio: number;
	readonly lower: number;
	readonly upper: number;
	/** two-sided p-value of "both rates are equal", the doubled smaller tail: it agrees with the limits */
	readonly pValue: number;
}

/**
 * How many times the rate of B the rate of A is, with exact limits given the total number of
 * events: of `a + b` events, those of A are binomial with the share of exposure that the ratio implies.
 * Like the exact rate limits they assume that events come singly.
 *
 * @param series A stands in the numerator (say, the new build), B is what it is set against
 * @param confidence two-sided, 0 < confidence < 1
 * @returns ratio, limits and p-value; { NaN, 0, Infinity, 1 } when there is no event at all or a series
 *   has no exposure
 * @throws RangeError for counts, exposures or confidences outside their ranges
 * @example conditionalRateRatio({ countA: 11, exposureA: 800, countB: 21, exposureB: 3011 }, 0.95)
 *   // { ratio: 1.9715, lower: 0.8584, upper: 4.2773, pValue: 0.112 }
 * Source: conditional binomial test with the limits of Clopper and Pearson 1934, Biometrika 26:404.
 */
export function conditionalRateRatio(series: TwoSeries, confidence: number): RateRatio {
	const { countA: a, exposureA, countB: b, exposureB } = series;
	checkCount('countA', a);
	checkExposure('exposureA', exposureA);
	checkCount('countB', b);
	checkExposure('exposureB', exposureB);
	checkConfidence('confidence', confidence);
	if (a + b === 0 || exposureA === 0 || exposureB === 0)
		return { ratio: NaN, lower: 0, upper: Infinity, pValue: 1 };
	const tail = (1 - confidence) / 2;
	const exposureRatio = exposureB / exposureA;
	return {
		ratio: (a / b) * exposureRatio,
		lower: a === 0 ? 0 : odds(betaQuantile(tail, a, b + 1)) * exposureRatio,
		// the upper limit from the other side's lower one: 1 - p would lose its digits when it is small
		upper: b === 0 ? Infinity : exposureRatio / odds(betaQuantile(tail, b, a + 1)),
		pValue: equalRatesPValue(a, b, exposureA / (exposureA + exposureB))
	};
}

function odds(probability: number): number {
	return probability / (1 - probability);
}

/** doubled smaller tail of a binomial count `a` out of `a + b` with success probability `share` */
function equalRatesPValue(a: number, b: number, share: number): number {
	const atLeast = a === 0 ? 1 : betaDistribution(share, a, b + 1);
	const atMost = b === 0 ? 1 : betaDistribution(1 - share, b, a + 1);
	return Math.min(1, 2 * Math.min(atLeast, atMost));
}
