import { twoListEstimate } from '$lib/reliability/twoListEstimate';
import { riderMarkCounts, type RiderMarkCounts } from '$lib/slip/riderMarkCounts';
import type { MarkedRide } from '../marks/markedRides';
import { CONFIDENCE } from '../rates/countView';
import type { EvidenceRide } from './buildEvidence';

/** Slips that the rider felt against slips that the tool found, on observed stretches of rides whose laps mean slips. */
export interface FeltAndFound extends RiderMarkCounts {
	readonly rides: number;
	readonly observedM: number;
	/** on at least one of the two lists */
	readonly seen: number;
	/** estimate of all slips there, a lower bound; null without a slip on both lists */
	readonly total: number | null;
	readonly lower: number | null;
	/** null = no upper limit can be given */
	readonly upper: number | null;
	readonly confidence: number;
	/** so few are on both lists that the estimate leans on chance */
	readonly fewOnBoth: boolean;
}

/** with fewer events on both lists the estimate is noticeably biased */
const LEAST_ON_BOTH = 7;

/**
 * How many slips there were, from what riders marked and what was found and confirmed. What is felt is also easier to
 * find, so the estimate is too low: a lower bound. Rides whose rider did not say that laps mean slips are not in it.
 *
 * @param rides of one build that count
 * @param marked rides whose laps mean slips
 * @returns null when no such ride was observed
 * Source: twoListEstimate; fewer than 7 on both lists: Robson and Regier 1964, Trans. Amer. Fisheries Soc. 93:215.
 */
export function feltAndFound(
	rides: readonly EvidenceRide[],
	marked: ReadonlyMap<number, MarkedRide>
): FeltAndFound | null {
	const said = rides.filter(({ rideId, observedM }) => observedM > 0 && marked.has(rideId));
	if (said.length === 0) return null;
	const counts = { both: 0, markOnly: 0, detectionOnly: 0, waiting: 0 };
	for (const ride of said) {
		const of = countsOfPart(marked.get(ride.rideId)!, ride);
		counts.both += of.both;
		counts.markOnly += of.markOnly;
		counts.detectionOnly += of.detectionOnly;
		counts.waiting += of.waiting;
	}
	const { both, markOnly, detectionOnly } = counts;
	const estimate = twoListEstimate(both + detectionOnly, both + markOnly, both, CONFIDENCE);
	return {
		...counts,
		rides: said.length,
		observedM: said.reduce((sum, { observedM }) => sum + observedM, 0),
		seen: estimate.seen,
		total: estimate.emptyOverlap ? null : estimate.total,
		lower: estimate.emptyOverlap ? null : estimate.lower,
		upper: Number.isFinite(estimate.upper) ? estimate.upper : null,
		confidence: CONFIDENCE,
		fewOnBoth: both < LEAST_ON_BOTH
	};
}

/** Laps and events of the part of the ride that belongs to this build. */
function countsOfPart({ marks, events }: MarkedRide, { fromS, toS }: EvidenceRide): RiderMarkCounts {
	const within = (second: number) => second >= fromS && second < toS;
	const judged = events.filter(({ startS }) => within(startS));
	return riderMarkCounts(
		marks
			.filter(({ timeS, event }) => (event ? judged.some(({ id }) => id === event.id) : within(timeS)))
			.map(({ observed, answer, event }) => ({
				observed,
				answer: answer?.answer ?? null,
				event: event ? judged.findIndex(({ id }) => id === event.id) : null
			})),
		judged
	);
}
