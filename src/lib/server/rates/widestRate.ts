import type { UnitCount } from '$lib/reliability/unitCounts';
import { widestRateInterval } from '$lib/reliability/widestRateInterval';
import type { WidestRateView } from '../views';
import { CONFIDENCE, RATE_UNIT_M } from './countView';
import type { Lender } from './lender';

/**
 * A rate with THE interval: at each end the wider one of the exact limits and those that allow for bursts.
 *
 * @param units counts and exposures of rides, in units of 100 observed km
 * @param lender the build before this one that shows how slips cluster; undefined = nothing to borrow
 */
export function widestRate(units: readonly UnitCount[], lender?: Lender): WidestRateView {
	const widest = widestRateInterval(units, CONFIDENCE, lender?.dispersion);
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
		borrowedFrom:
			lender && lender.dispersion > 1 && widest.usedDispersion === lender.dispersion ? lender.name : null
	};
}
