import { studentQuantile } from './studentQuantile';
import { unitTotals, type UnitCount } from './unitCounts';
import type { WeightedCount } from './weightedCountLimits';

/** from so many events, in so many units, their own scatter is trusted (measured: tests/bench/coverage-figures.md) */
export const ENOUGH_EVENTS = 20;
export const ENOUGH_UNITS = 8;

export interface ClusteredCount extends WeightedCount {
	/** variance / mean of the sum, 1 or more, as the units themselves show it; 1 without events */
	readonly ownDispersion: number;
	/** what `variance` was made with: the larger of own and borrowed dispersion */
	readonly usedDispersion: number;
	/** the same with the own one raised for being estimated from few outings: for limits of this count alone */
	readonly raisedDispersion: number;
	/** true: too few events or units to see bursts, and no dispersion was borrowed */
	readonly assumesSingleEvents: boolean;
}

/**
 * A count with the variance that whole units (outings) show, so that a burst in one of them does not pass for
 * as many separate events. A dispersion known from a longer, earlier series can be borrowed, and then holds as
 * the least.
 *
 * @param units counts and exposures of outings
 * @param borrowedDispersion variance / mean from a predecessor with many events; 1 or more
 * @returns count for `weightedCountLimits` and `weightedCountRatio`
 * @throws RangeError for broken counts or exposures
 * @example clusteredCount([{ count: 0, exposure: 40 }, { count: 0, exposure: 55 }]).assumesSingleEvents // true
 * Source: variance of a ratio estimate over whole clusters, Cochran 1977, Sampling Techniques, 3rd ed.,
 * section 9A (from memory). The raised one takes Student's quantile of the units with events, at most fourfold;
 * that is ours, chosen by the coverage simulation, as is leaving it out of ratios, which cover without it.
 */
export function clusteredCount(units: readonly UnitCount[], borrowedDispersion?: number): ClusteredCount {
	const { count, unitCount, rate } = unitTotals(units);
	let [squares, heaviest, withEvents] = [0, 1, 0];
	for (const unit of units) {
		const excess = unit.exposure > 0 ? unit.count - rate * unit.exposure : 0;
		squares += excess * excess;
		heaviest = Math.max(heaviest, excess);
		if (unit.count > 0) withEvents++;
	}
	const known = count > 0 && unitCount > 1;
	const ownDispersion = known ? Math.max(1, (unitCount / (unitCount - 1)) * (squares / count)) : 1;
	const rise = (studentQuantile(0.975, Math.max(1, withEvents - 1)) / 1.959964) ** 2;
	const raised = 1 + (ownDispersion - 1) * Math.min(4, rise);
	const usedDispersion = Math.max(ownDispersion, borrowedDispersion ?? 1);
	return {
		total: count,
		variance: usedDispersion * count,
		heaviest: Math.max(heaviest, borrowedDispersion ?? 1),
		ownDispersion,
		usedDispersion,
		raisedDispersion: Math.max(raised, borrowedDispersion ?? 1),
		assumesSingleEvents:
			borrowedDispersion === undefined && (count < ENOUGH_EVENTS || unitCount < ENOUGH_UNITS)
	};
}
