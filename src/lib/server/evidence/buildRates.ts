import type { UnitCount } from '$lib/reliability/unitCounts';
import { RATE_UNIT_M } from '../rates/countView';
import { widestRate } from '../rates/widestRate';
import type { Lender } from '../rates/lender';
import type { WidestRateView } from '../views';
import type { BuildEvidence, EvidenceRide } from './buildEvidence';
import type { Counting } from './binnedRates';
import { countedSlips } from './countedSlips';

export interface BuildRates {
	readonly pooled: WidestRateView;
	/** "for these wheels": each by itself */
	readonly wheels: readonly { readonly id: number; readonly name: string; readonly rate: WidestRateView }[];
}

/** Counts and observed distance of each ride, in the unit of rates: what the intervals are made of. */
export function unitsOf(rides: readonly EvidenceRide[], { unit, unreviewed }: Counting): UnitCount[] {
	return rides
		.filter(({ observedM }) => observedM > 0)
		.map((ride) => ({
			count: countedSlips(ride.events, unit, unreviewed).length,
			exposure: ride.observedM / RATE_UNIT_M
		}));
}

/**
 * The rate of a build, pooled and wheel by wheel.
 *
 * @param lender another build that shows how slips cluster; undefined = nothing to borrow
 */
export function buildRates(evidence: BuildEvidence, counting: Counting, lender?: Lender): BuildRates {
	return {
		pooled: widestRate(unitsOf(evidence.rides, counting), lender),
		wheels: evidence.wheels
			.filter(({ id }) => evidence.rides.some(({ wheelId }) => wheelId === id))
			.map(({ id, name }) => ({
				id,
				name,
				rate: widestRate(
					unitsOf(
						evidence.rides.filter(({ wheelId }) => wheelId === id),
						counting
					),
					lender
				)
			}))
	};
}
