import type { EvidenceEvent } from './evidenceRides';

/** What stands for one count: single slips, or slips of one ride less than 10 s apart taken as one. */
export type CountedUnit = 'slips' | 'episodes';

/** slips of one ride that follow each other within this many seconds are one episode (DEVELOPERS.md) */
export const EPISODE_GAP_S = 10;

/**
 * The slips of one ride that count, in order. An episode counts once, at the first of its slips that
 * counts: rejected ones neither begin nor prolong one.
 *
 * @param events of one ride in order of their start
 * @param unit slips or episodes
 * @param unreviewed what an event without a verdict is taken for
 * @example countedSlips(events, 'episodes', 'slip') // of slips at 100, 104 and 300 s: those at 100 and 300 s
 * Source: common practice, no source (10 s).
 */
export function countedSlips<Event extends Pick<EvidenceEvent, 'startS' | 'endS' | 'standing'>>(
	events: readonly Event[],
	unit: CountedUnit,
	unreviewed: 'slip' | 'none'
): Event[] {
	const slips = events.filter(
		({ standing }) => standing === 'confirmed' || (standing === 'unreviewed' && unreviewed === 'slip')
	);
	if (unit === 'slips') return slips;
	let quietFromS = -Infinity;
	return slips.filter(({ startS, endS }) => {
		const begins = startS - quietFromS >= EPISODE_GAP_S;
		quietFromS = Math.max(quietFromS, endS);
		return begins;
	});
}
