import { checkConfidence } from './checks';
import { dispersion } from './dispersion';
import { poissonRateLimits, type RateLimits } from './poissonRateLimits';
import { studentQuantile } from './studentQuantile';
import { unitTotals, type UnitCount } from './unitCounts';

/** A rate with limits that allow for scatter beyond single events. */
export interface DispersedRate extends RateLimits {
	/** as estimated; NaN when it could not be */
	readonly dispersion: number;
	/** false: the limits are the exact Poisson ones, because there was nothing to estimate scatter from */
	readonly estimated: boolean;
}

/**
 * The rate over all units with limits widened by the dispersion that the units show (quasi-Poisson, on the
 * logarithm, Student's quantile because the dispersion is estimated). A dispersion below 1 counts as 1.
 *
 * @param units counts and exposures of outings
 * @param confidence two-sided, 0 < confidence < 1
 * @returns rate and limits; the exact Poisson limits when there was no event or only one unit
 * @throws RangeError for broken counts, exposures or confidences
 * @example quasiPoissonRate(rides, 0.95) // { rate: 0.0472, lower: 0.0237, upper: 0.0941, dispersion: 3.25, ... }
 * Source: McCullagh and Nelder 1989, Generalized Linear Models, 2nd ed., section 6.2.4.
 */
export function quasiPoissonRate(units: readonly UnitCount[], confidence: number): DispersedRate {
	checkConfidence('confidence', confidence);
	const { count, exposure, unitCount, rate } = unitTotals(units);
	const scatter = dispersion(units);
	if (Number.isNaN(scatter))
		return { ...poissonRateLimits(count, exposure, confidence), dispersion: NaN, estimated: false };
	const reach =
		studentQuantile(1 - (1 - confidence) / 2, unitCount - 1) * Math.sqrt(Math.max(1, scatter) / count);
	return {
		rate,
		lower: rate * Math.exp(-reach),
		upper: rate * Math.exp(reach),
		dispersion: scatter,
		estimated: true
	};
}
