import { checkConfidence, checkRisk } from './checks';
import { normalQuantile } from './normalQuantile';
import type { WeibullFit } from './weibullLife';

/**
 * The age by which a share of parts has failed, with limits on the logarithm.
 *
 * @param fit from `weibullLife`
 * @param share 0 < share < 1, say 0.1 for one part in ten
 * @param confidence two-sided, 0 < confidence < 1
 * @returns age and limits, in the unit of the ages
 * @throws RangeError for a share or confidence outside (0, 1)
 * @example weibullAgeByShare(fit, 0.1, 0.95) // { age: 3137, lower: 1686, upper: 5837 } for the generator fans
 * Source: Meeker and Escobar 1998, Statistical Methods for Reliability Data, section 8.4 (section from memory).
 */
export function weibullAgeByShare(
	fit: WeibullFit,
	share: number,
	confidence: number
): { age: number; lower: number; upper: number } {
	checkRisk('share', share);
	checkConfidence('confidence', confidence);
	const level = Math.log(-Math.log1p(-share)) / fit.shape;
	const variance = fit.logScaleVariance + 2 * level * fit.covariance + level * level * fit.logSpreadVariance;
	const age = fit.scale * Math.exp(level);
	const spread = Math.exp(normalQuantile(1 - (1 - confidence) / 2) * Math.sqrt(Math.max(0, variance)));
	return { age, lower: age / spread, upper: age * spread };
}
