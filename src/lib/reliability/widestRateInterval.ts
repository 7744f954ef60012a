import { checkConfidence, checkExposure } from './checks';
import { clusteredCount } from './clusteredCount';
import { poissonRateLimits, type RateLimits } from './poissonRateLimits';
import { quasiPoissonRate } from './quasiPoissonRate';
import { unitTotals, type UnitCount } from './unitCounts';
import { weightedCountLimits } from './weightedCountLimits';

/** below so many events limits on the logarithm are too coarse to be asked */
const EVENTS_FOR_LOGARITHM = 10;

export interface WidestRate extends RateLimits {
	readonly count: number;
	readonly exposure: number;
	readonly unitCount: number;
	/**
	 * which interval set the upper limit: `single` events (exact Poisson), `bursts` (weights of whole units) or
	 * `scatter` (quasi-Poisson)
	 */
	readonly decidedBy: 'single' | 'bursts' | 'scatter';
	/** variance / mean as the units show it, 1 or more */
	readonly ownDispersion: number;
	readonly usedDispersion: number;
	/** true: say beside the figure that it assumes that events do not cluster */
	readonly assumesSingleEvents: boolean;
}

/**
 * THE interval of a rate: at each end the wider one of the exact Poisson limits and those that allow for bursts
 * and for good and bad outings. With few events their scatter cannot be seen: borrow the predecessor's, or say
 * `assumesSingleEvents` beside the figure.
 *
 * @param units counts and exposures of outings; rates are "for these units' makers", not for all that could be
 * @param confidence two-sided, 0 < confidence < 1
 * @param borrowedDispersion variance / mean of a predecessor with many events, 1 or more; left out: none
 * @returns rate, limits and what set them; { NaN, 0, Infinity } without exposure
 * @throws RangeError for broken counts, exposures, confidences or a borrowed dispersion below 0
 * @example widestRateInterval(rides, 0.95) // one ride with 23 of 25 events: 0.030 (0.000 to 0.225), not 0.044
 * Source: Garwood 1936; Fay and Feuer 1997; McCullagh and Nelder 1989 (see the functions used); coverage measured
 * in tests/bench/coverage-figures.md.
 */
export function widestRateInterval(
	units: readonly UnitCount[],
	confidence: number,
	borrowedDispersion?: number
): WidestRate {
	checkConfidence('confidence', confidence);
	if (borrowedDispersion !== undefined) checkExposure('borrowedDispersion', borrowedDispersion);
	const { count, exposure, unitCount } = unitTotals(units);
	const clustered = clusteredCount(units, borrowedDispersion);
	const single = poissonRateLimits(count, exposure, confidence);
	const told = { count, exposure, unitCount, ...only(clustered) };
	if (exposure === 0) return { ...single, ...told, decidedBy: 'single' };
	const sum = weightedCountLimits({ ...clustered, variance: clustered.raisedDispersion * count }, confidence);
	const bursts = { lower: sum.lower / exposure, upper: sum.upper / exposure };
	const candidates: ['single' | 'bursts' | 'scatter', { lower: number; upper: number }][] = [
		['single', single],
		['bursts', bursts]
	];
	if (count >= EVENTS_FOR_LOGARITHM && unitCount > 1)
		candidates.push(['scatter', quasiPoissonRate(units, confidence)]);
	// the first of equals wins: rounding alone must not name another method
	const [decidedBy, widest] = candidates.reduce((a, b) => (b[1].upper > a[1].upper * (1 + 1e-9) ? b : a));
	const lower = Math.min(...candidates.map(([, limits]) => limits.lower));
	return { rate: single.rate, lower, upper: widest.upper, ...told, decidedBy };
}

function only(clustered: ReturnType<typeof clusteredCount>) {
	const { ownDispersion, raisedDispersion, assumesSingleEvents } = clustered;
	return { ownDispersion, usedDispersion: raisedDispersion, assumesSingleEvents };
}
