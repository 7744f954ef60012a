import { poissonRateLimits } from '$lib/reliability/poissonRateLimits';
import type { UnitCount } from '$lib/reliability/unitCounts';
import type { CountView, RateView } from '../views';
import type { EventTally } from './eventTallies';
import type { Lender } from './lender';
import { widestRate } from './widestRate';

export const CONFIDENCE = 0.95;
/** rates are given per 100 observed km */
export const RATE_UNIT_M = 100_000;

/** A ride, or a part of one, as a rate takes it. */
export interface CountedRide {
	readonly tally: EventTally;
	/** metres on which it would have shown a reference slip */
	readonly observedM: number;
}

/**
 * How a set of rides stands: tallies added up, and the rate if every unreviewed event is none (best case)
 * or a slip (worst case), each with the interval that allows for bursts within rides.
 *
 * @param rides those that count
 * @param lender the build before this one that shows how slips cluster
 */
export function countView(rides: readonly CountedRide[], lender?: Lender): CountView {
	const sum = (pick: (tally: EventTally) => number) =>
		rides.reduce((total, { tally }) => total + pick(tally), 0);
	const rate = (count: (tally: EventTally) => number) => widestRate(unitsOfTallies(rides, count), lender);
	return {
		confirmed: sum((tally) => tally.confirmed),
		unreviewed: sum((tally) => tally.unreviewed),
		rejected: sum((tally) => tally.rejected),
		apart: sum((tally) => tally.apart),
		bestCase: rate((tally) => tally.confirmed),
		worstCase: rate((tally) => tally.confirmed + tally.unreviewed)
	};
}

/** Counts and observed distance of each ride, in the unit of rates. */
export function unitsOfTallies(
	rides: readonly CountedRide[],
	count: (tally: EventTally) => number
): UnitCount[] {
	return rides
		.filter(({ observedM }) => observedM > 0)
		.map(({ tally, observedM }) => ({ count: count(tally), exposure: observedM / RATE_UNIT_M }));
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
