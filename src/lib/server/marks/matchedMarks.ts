import { matchRiderMarks } from '$lib/slip/matchRiderMarks';
import { toInstant } from '../ledger/instants';
import type { RiderMarkView } from '../views';
import type { StoredAnswer } from './markAnswers';

export interface StoredMark {
	readonly timeS: number;
	readonly observed: number;
}

/** What of an event decides about laps. */
export interface MarkedEvent {
	readonly id: number;
	readonly startS: number;
	readonly verdict: 'confirmed' | 'rejected' | null;
}

/** the clock of another analysis version may differ by less than this, ms */
const SAME_MARK_MS = 1000;

/**
 * The laps of a ride that mean slips, each with the event it is taken to mean or with a person's answer. An
 * event that a person rejected takes no lap, so that its lap asks again what it was.
 *
 * @param startMs start of the ride, milliseconds since 1970 UTC
 */
export function matchedMarks(
	startMs: number,
	stored: readonly StoredMark[],
	events: readonly MarkedEvent[],
	answers: readonly StoredAnswer[]
): RiderMarkView[] {
	const standing = events.filter(({ verdict }) => verdict !== 'rejected');
	const times = stored.map(({ timeS }) => timeS);
	const pairs = new Map(matchRiderMarks(times, standing).map((pair) => [pair.mark, pair]));
	return stored.map(({ timeS, observed }, index) => {
		const pair = pairs.get(index);
		const markMs = startMs + 1000 * timeS;
		const answer = answers.find((one) => Math.abs(one.markMs - markMs) <= SAME_MARK_MS);
		return {
			timeS,
			observed: observed === 1,
			event: pair ? { id: standing[pair.event].id, delayS: pair.delayS } : null,
			answer: answer ? { answer: answer.answer, by: answer.byCode, at: toInstant(answer.atMs) } : null
		};
	});
}
