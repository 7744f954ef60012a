import { chiSquareQuantile } from './chiSquareQuantile';
import { checkConfidence, checkCount, checkExposure } from './checks';

/** A rate of events per unit of exposure with two-sided limits. */
export interface RateLimits {
	/** events / exposure; NaN without exposure */
	readonly rate: number;
	/** 0 exactly when there was no event */
	readonly lower: number;
	/** Infinity without exposure: nothing was learned */
	readonly upper: number;
}

/**
 * The rate of events with exact two-sided Poisson limits. Each tail gets half of what confidence leaves,
 * so the limits cover at least `confidence`; at few events they cover more. They assume that events come
 * singly: bursts make the true limits wider.
 *
 * @param count events, a whole number >= 0
 * @param exposure what was watched, in any unit, >= 0
 * @param confidence two-sided, 0 < confidence < 1
 * @returns rate and limits in events per unit of exposure
 * @throws RangeError for a negative or broken count, a negative exposure, a confidence outside (0, 1)
 * @example poissonRateLimits(0, 100, 0.95) // { rate: 0, lower: 0, upper: 0.03689 }
 * Source: Garwood 1936, Biometrika 28:437; NIST/SEMATECH e-Handbook 8.4.5.1 (the chi-square form).
 */
export function poissonRateLimits(count: number, exposure: number, confidence: number): RateLimits {
	checkCount('count', count);
	checkExposure('exposure', exposure);
	checkConfidence('confidence', confidence);
	if (exposure === 0) return { rate: NaN, lower: 0, upper: Infinity };
	const tail = (1 - confidence) / 2;
	return {
		rate: count / exposure,
		lower: count === 0 ? 0 : chiSquareQuantile(tail, 2 * count) / 2 / exposure,
		upper: chiSquareQuantile(1 - tail, 2 * count + 2) / 2 / exposure
	};
}
