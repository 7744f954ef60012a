import { checkConfidence, checkFinite } from './checks';
import type { LogisticFit } from './logisticRegression';
import { normalQuantile } from './normalQuantile';

/**
 * The fitted chance of an event at `x`, with limits that stay between 0 and 1 (from the log odds).
 *
 * @param fit from `logisticRegression`
 * @param x finite
 * @param confidence two-sided, 0 < confidence < 1
 * @returns chance and limits at this x
 * @throws RangeError for an x that is not finite or a confidence outside (0, 1)
 * @example logisticCurve(fit, 60, 0.95) // { chance: 0.034, lower: 0.022, upper: 0.052 }
 * Source: McCullagh and Nelder 1989, Generalized Linear Models, 2nd ed., section 4.4 (standard error of the log
 * odds from the covariance of the coefficients).
 */
export function logisticCurve(
	fit: LogisticFit,
	x: number,
	confidence: number
): { chance: number; lower: number; upper: number } {
	checkFinite('x', x);
	checkConfidence('confidence', confidence);
	const logOdds = fit.intercept + fit.slope * x;
	const variance = fit.interceptVariance + 2 * x * fit.covariance + x * x * fit.slopeVariance;
	const reach = normalQuantile(1 - (1 - confidence) / 2) * Math.sqrt(Math.max(0, variance));
	const chance = (odds: number) => 1 / (1 + Math.exp(-odds));
	return { chance: chance(logOdds), lower: chance(logOdds - reach), upper: chance(logOdds + reach) };
}
