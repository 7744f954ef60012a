import { checkConfidence, checkExposure } from './checks';
import { chiSquareQuantile } from './chiSquareQuantile';

/** A sum of events that do not all weigh one: bursts of several, or events scaled to another exposure. */
export interface WeightedCount {
	/** the sum, >= 0 */
	readonly total: number;
	/** estimated variance of the sum; for single events of weight 1 it equals the total */
	readonly variance: number;
	/** weight that one further event could have: the largest that occurs, 1 for single events; > 0 */
	readonly heaviest: number;
}

/** A gamma variable: shape and scale. */
export interface GammaShape {
	readonly shape: number;
	readonly scale: number;
}

/** The gamma variable of the same mean and variance as the sum; the sum must be above 0. */
export function gammaOfSum({ total, variance }: WeightedCount): GammaShape {
	return { shape: total ** 2 / variance, scale: variance / total };
}

/** The same sum with one more event of the heaviest weight: what the upper limit must allow for. */
export function withOneMore({ total, variance, heaviest }: WeightedCount): WeightedCount {
	return { total: total + heaviest, variance: variance + heaviest ** 2, heaviest };
}

/**
 * Limits of the expected value of a sum of weighted events. With weights of 1 they are the exact Poisson
 * limits; with bursts or unequal weights they are wider, and stay above nothing after no event.
 *
 * @param count sum, its variance and the heaviest weight
 * @param confidence two-sided, 0 < confidence < 1
 * @returns lower and upper limit in the unit of the sum; lower 0 when the sum is 0
 * @throws RangeError for a negative sum or variance, a heaviest weight of 0, a confidence outside (0, 1)
 * @example weightedCountLimits({ total: 0, variance: 0, heaviest: 1 }, 0.95) // { lower: 0, upper: 3.689 }
 * Source: Fay and Feuer 1997, Statistics in Medicine 16:791 (gamma limits for weighted sums of Poisson
 * counts; from memory). Weights 1 reduce it to Garwood 1936.
 */
export function weightedCountLimits(
	count: WeightedCount,
	confidence: number
): { lower: number; upper: number } {
	checkExposure('total', count.total);
	checkExposure('variance', count.variance);
	if (!(count.heaviest > 0)) throw new RangeError(`heaviest must be above 0; it is ${count.heaviest}`);
	checkConfidence('confidence', confidence);
	const tail = (1 - confidence) / 2;
	const above = gammaOfSum(withOneMore(count));
	const upper = (chiSquareQuantile(1 - tail, 2 * above.shape) / 2) * above.scale;
	if (count.total === 0) return { lower: 0, upper };
	const of = gammaOfSum(count);
	return { lower: (chiSquareQuantile(tail, 2 * of.shape) / 2) * of.scale, upper };
}
