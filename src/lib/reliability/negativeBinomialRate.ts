import { checkConfidence } from './checks';
import { normalQuantile } from './normalQuantile';
import { poissonRateLimits, type RateLimits } from './poissonRateLimits';
import { rootBetween } from './rootBetween';
import { unitTotals, type UnitCount } from './unitCounts';

export interface NegativeBinomialRate extends RateLimits {
	/** variance = mean + extraVariance x mean^2; 0 when the counts scatter no more than single events */
	readonly extraVariance: number;
	/** false: exact Poisson limits, because there is no extra scatter to fit (or no event, or one unit) */
	readonly fitted: boolean;
}

/**
 * The rate of events when every unit has a rate of its own, spread like a gamma variable (negative binomial,
 * maximum likelihood, limits on the logarithm). Long and short units then weigh more alike, so this is NOT the
 * sum of events over the sum of exposures.
 *
 * @param units counts and exposures of outings; units without exposure are left out
 * @param confidence two-sided, 0 < confidence < 1
 * @returns rate with limits; counts that scatter no more than single events give the exact Poisson limits,
 *   never narrower ones
 * @throws RangeError for broken counts, exposures or confidences
 * @example negativeBinomialRate(rides, 0.95) // { rate: 0.0382, lower: 0.0165, upper: 0.0881, ... }
 * Source: Lawless 1987, Canadian J. Statistics 15:209; checked against R's MASS::glm.nb in tests/published.
 */
export function negativeBinomialRate(units: readonly UnitCount[], confidence: number): NegativeBinomialRate {
	checkConfidence('confidence', confidence);
	const { count, exposure } = unitTotals(units);
	const watched = units.filter((unit) => unit.exposure > 0);
	const poisson = { ...poissonRateLimits(count, exposure, confidence), extraVariance: 0, fitted: false };
	if (count === 0 || watched.length < 2) return poisson;
	// the slope of the likelihood along the log of the spread, with the best rate for each
	const slope = (logSize: number) =>
		sizeScore(watched, bestRate(watched, Math.exp(logSize)), Math.exp(logSize));
	// positive for a large size: the likelihood still rises towards single events
	const logSize = slope(15) > 0 ? NaN : rootBetween(slope, -15, 15);
	if (Number.isNaN(logSize)) return poisson;
	const size = Math.exp(logSize);
	const rate = bestRate(watched, size);
	let information = 0;
	for (const unit of watched) information += (rate * unit.exposure) / (1 + (rate * unit.exposure) / size);
	const reach = normalQuantile(1 - (1 - confidence) / 2) / Math.sqrt(information);
	return {
		rate,
		lower: rate * Math.exp(-reach),
		upper: rate * Math.exp(reach),
		extraVariance: 1 / size,
		fitted: true
	};
}

/** the rate of highest likelihood for a given size (1 / extra variance) */
function bestRate(units: readonly UnitCount[], size: number): number {
	const score = (logRate: number) => {
		let sum = 0;
		for (const { count, exposure } of units) {
			const mean = Math.exp(logRate) * exposure;
			sum += (count - mean) / (1 + mean / size);
		}
		return sum;
	};
	// the best rate lies between the lowest and the highest of the units, which may be 0
	const highest = Math.log(units.reduce((most, unit) => Math.max(most, unit.count / unit.exposure), 0));
	return Math.exp(rootBetween(score, highest - 40, highest + 1e-9));
}

/** derivative of the log likelihood by the size, the digamma differences written out as sums over the count */
function sizeScore(units: readonly UnitCount[], rate: number, size: number): number {
	let sum = 0;
	for (const { count, exposure } of units) {
		const mean = rate * exposure;
		for (let i = 0; i < count; i++) sum += 1 / (size + i);
		sum += -Math.log1p(mean / size) - (count - mean) / (mean + size);
	}
	return sum;
}
