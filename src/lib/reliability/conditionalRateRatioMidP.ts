import betaDistribution from '@stdlib/stats-base-dists-beta-cdf';
import { conditionalRateRatio, type RateRatio, type TwoSeries } from './conditionalRateRatio';
import { rootBetween } from './rootBetween';

/** log odds beyond which a binomial share is 0 or 1 for every count that occurs */
const EDGE = 60;

/**
 * How many times the rate of B the rate of A is, with mid-p limits: shorter than the exact ones, covering
 * `confidence` on average but not always. Beside the exact limits, never instead of them.
 *
 * @param series A stands in the numerator, B is what it is set against
 * @param confidence two-sided, 0 < confidence < 1
 * @returns ratio, limits and two-sided mid-p value; { NaN, 0, Infinity, 1 } when there is no event at all or
 *   a series has no exposure
 * @throws RangeError for counts, exposures or confidences outside their ranges
 * @example conditionalRateRatioMidP({ countA: 11, exposureA: 800, countB: 21, exposureB: 3011 }, 0.95)
 *   // { ratio: 1.9715, lower: 0.9166, upper: 4.0584, pValue: 0.0801 }
 * Source: conditional binomial with mid-p, Rothman and Boice 1979, Epidemiologic Analysis with a Programmable
 * Calculator (from memory); checked against R in tests/published.
 */
export function conditionalRateRatioMidP(series: TwoSeries, confidence: number): RateRatio {
	const exact = conditionalRateRatio(series, confidence);
	if (Number.isNaN(exact.ratio)) return exact;
	const { countA: a, exposureA, countB: b, exposureB } = series;
	const tail = (1 - confidence) / 2;
	const exposureRatio = exposureB / exposureA;
	// log odds of the share of A at which the tail that the limit leaves has the wanted size
	const lower = rootBetween((z) => atLeast(a, b, z) - tail, -EDGE, EDGE);
	const upper = rootBetween((z) => atLeast(b, a, -z) - tail, -EDGE, EDGE);
	const equal = Math.log(exposureA / exposureB);
	return {
		ratio: exact.ratio,
		lower: a === 0 ? 0 : Math.exp(lower) * exposureRatio,
		upper: b === 0 ? Infinity : Math.exp(upper) * exposureRatio,
		pValue: Math.min(1, 2 * Math.min(atLeast(a, b, equal), atLeast(b, a, -equal)))
	};
}

/** chance of more than `a` of `a + b` events, and half the chance of exactly `a`, at these log odds */
function atLeast(a: number, b: number, logOdds: number): number {
	const share = 1 / (1 + Math.exp(-logOdds));
	const reaching = a === 0 ? 1 : betaDistribution(share, a, b + 1);
	const passing = b === 0 ? 0 : betaDistribution(share, a + 1, b);
	return (reaching + passing) / 2;
}
