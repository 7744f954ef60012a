import { checkConfidence, checkRisk } from './checks';
import { fiellerLimits, type RatioLimits } from './fiellerLimits';
import type { LogisticFit } from './logisticRegression';
import { normalQuantile } from './normalQuantile';

/** The x at which the fitted chance of an event reaches a level. */
export interface LogisticLevel extends RatioLimits {
	readonly at: number;
}

/**
 * The x at which the S-curve reaches a chance, say the load at which one pull in a hundred fails, with Fieller's
 * limits: when the slope is not established they are unbounded, and `kind` says so.
 *
 * @param fit from `logisticRegression`
 * @param chance 0 < chance < 1
 * @param confidence two-sided, 0 < confidence < 1
 * @returns x and limits; outside the range of the data it is the curve's word alone
 * @throws RangeError for a chance or confidence outside (0, 1)
 * @example logisticReachesChance(fit, 0.5, 0.95) // { at: 96.3, lower: 87.8, upper: 110.6, kind: 'between' }
 * Source: Finney 1971, Probit Analysis, 3rd ed., section 4.6 (from memory); checked against R in tests/published.
 */
export function logisticReachesChance(fit: LogisticFit, chance: number, confidence: number): LogisticLevel {
	checkRisk('chance', chance);
	checkConfidence('confidence', confidence);
	const logOdds = Math.log(chance / (1 - chance));
	const limits = fiellerLimits(
		{
			numerator: logOdds - fit.intercept,
			denominator: fit.slope,
			numeratorVariance: fit.interceptVariance,
			denominatorVariance: fit.slopeVariance,
			covariance: -fit.covariance
		},
		normalQuantile(1 - (1 - confidence) / 2)
	);
	return { at: (logOdds - fit.intercept) / fit.slope, ...limits };
}
