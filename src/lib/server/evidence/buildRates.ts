import type { UnitCount } from '$lib/reliability/unitCounts';
import { widestRateInterval } from '$lib/reliability/widestRateInterval';
import { CONFIDENCE, RATE_UNIT_M } from '../rates/countView';
import type { RateView } from '../views';
import type { BuildEvidence, EvidenceRide } from './buildEvidence';
import type { Counting } from './binnedRates';
import { countedSlips } from './countedSlips';

/** A rate with THE interval: the wider one of exact limits and those that allow for bursts in a ride. */
export interface WidestRateView extends RateView {
	readonly rides: number;
	/** slips come singly, in bursts within rides, or scatter between rides: what set the upper limit */
	readonly decidedBy: 'single' | 'bursts' | 'scatter';
	/** variance of the rides' counts / their mean, as used */
	readonly dispersion: number;
	/** too few slips to see whether they cluster, and nothing was borrowed */
	readonly assumesSingleEvents: boolean;
	/** the dispersion of the reference build was taken for this one */
	readonly borrowed: boolean;
}

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
 * @param borrowed dispersion of the build it is set against; undefined = nothing to borrow
 */
export function buildRates(evidence: BuildEvidence, counting: Counting, borrowed?: number): BuildRates {
	return {
		pooled: widestRate(unitsOf(evidence.rides, counting), borrowed),
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
					borrowed
				)
			}))
	};
}

function widestRate(units: readonly UnitCount[], borrowed?: number): WidestRateView {
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
