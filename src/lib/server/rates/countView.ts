import { poissonRateLimits } from '$lib/reliability/poissonRateLimits';
import type { CountView, RateView } from '../views';
import type { EventTally } from './eventTallies';

export const CONFIDENCE = 0.95;
/** rates are given per 100 observed km */
export const RATE_UNIT_M = 100_000;

/**
 * How a set of rides stands: tallies added up, and the rate if every unreviewed event is none (best case)
 * or a slip (worst case).
 *
 * @param tallies of the rides that count
 * @param observedM metres on which these rides would have shown a reference slip
 */
export function countView(tallies: readonly EventTally[], observedM: number): CountView {
	const sum = (pick: (tally: EventTally) => number) =>
		tallies.reduce((total, tally) => total + pick(tally), 0);
	const confirmed = sum((tally) => tally.confirmed);
	const unreviewed = sum((tally) => tally.unreviewed);
	return {
		confirmed,
		unreviewed,
		rejected: sum((tally) => tally.rejected),
		apart: sum((tally) => tally.apart),
		bestCase: rateView(confirmed, observedM),
		worstCase: rateView(confirmed + unreviewed, observedM)
	};
}

/** A count over observed metres with its exact limits, per 100 km. */
export function rateView(count: number, observedM: number): RateView {
	const { rate, lower, upper } = poissonRateLimits(count, observedM / RATE_UNIT_M, CONFIDENCE);
	return {
		count,
		observedM,
		ratePerHundredKm: Number.isFinite(rate) ? rate : null,
		lowerPerHundredKm: lower,
		upperPerHundredKm: Number.isFinite(upper) ? upper : null,
		confidence: CONFIDENCE
	};
}
