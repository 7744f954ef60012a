import type { UnitCount } from '$lib/reliability/unitCounts';
import { widestRateInterval } from '$lib/reliability/widestRateInterval';
import type { WidestRateView } from '../views';
import { CONFIDENCE, RATE_UNIT_M } from './countView';

/**
 * A rate with THE interval: at each end the wider one of the exact limits and those that allow for bursts.
 *
 * @param units counts and exposures of rides, in units of 100 observed km
 * @param borrowed dispersion of the build that this one is set against; undefined = nothing to borrow
 */
export function widestRate(units: readonly UnitCount[], borrowed?: number): WidestRateView {
	const widest = widestRateInterval(units, CONFIDENCE, borrowed);
	return {
		count: widest.count,
		observedM: widest.exposure * RATE_UNIT_M,
		ratePerHundredKm: Number.isFinite(widest.rate) ? widest.rate : null,
		lowerPerHundredKm: widest.lower,
		upperPerHundredKm: Number.isFinite(widest.upper) ? widest.upper : null,
		confidence: CONFIDENCE,
		rides: widest.unitCount,
		decidedBy: widest.decidedBy,
		dispersion: widest.usedDispersion,
		assumesSingleEvents: widest.assumesSingleEvents,
		borrowed: borrowed !== undefined && widest.usedDispersion === borrowed && borrowed > 1
	};
}
