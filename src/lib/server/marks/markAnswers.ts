import type { Actor } from '../actor';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { currentVersion } from '../queue/analysisVersions';
import { LedgerRefusal } from '../refusal';
import { MARK_ANSWERS, type MarkAnswer } from '../views';

export interface StoredAnswer {
	readonly markMs: number;
	readonly answer: MarkAnswer;
	readonly byCode: string;
	readonly atMs: number;
}

/** The answers that stand for the laps of a ride, the latest first. */
export function readAnswers(ledger: Ledger, rideId: number): StoredAnswer[] {
	return ledger.database
		.prepare<[number], StoredAnswer>(
			`SELECT a.mark_ms AS markMs, a.answer, p.code AS byCode, a.at_ms AS atMs
			FROM rider_mark_answer a JOIN person p ON p.id = a.actor_id
			WHERE a.ride_id = ? AND a.superseded_ms IS NULL ORDER BY a.id DESC`
		)
		.all(rideId);
}

/**
 * Writes down what a lap without an event meant; null takes an answer back. An earlier answer is
 * superseded, not removed.
 *
 * @param timeS the lap, seconds from the first record
 * @throws LedgerRefusal not-found when the ride has no such lap; wrong-value for another answer
 */
export function answerRiderMark(
	ledger: Ledger,
	actor: Actor,
	rideId: number,
	timeS: number,
	answer: MarkAnswer | null
): void {
	if (answer !== null && !(MARK_ANSWERS as readonly unknown[]).includes(answer))
		throw new LedgerRefusal('wrong-value', 'Say "a slip was felt" or "something else".');
	const { database } = ledger;
	database
		.transaction(() => {
			const mark = database
				.prepare<[number, number, number], { markMs: number }>(
					`SELECT r.started_ms + 1000 * m.time_s AS markMs FROM rider_mark m JOIN ride r ON r.id = m.ride_id
					WHERE m.ride_id = ? AND m.version = ? AND abs(m.time_s - ?) < 0.001`
				)
				.get(rideId, currentVersion(ledger), timeS);
			if (!mark) throw new LedgerRefusal('not-found', 'This ride has no such lap.');
			const markMs = Math.round(mark.markMs);
			const before = database
				.prepare<[number, number, number], { id: number; answer: string }>(
					`UPDATE rider_mark_answer SET superseded_ms = ?
					WHERE ride_id = ? AND abs(mark_ms - ?) <= 1000 AND superseded_ms IS NULL RETURNING id, answer`
				)
				.all(ledger.now(), rideId, markMs);
			if (answer !== null)
				database
					.prepare(
						'INSERT INTO rider_mark_answer (ride_id, mark_ms, answer, actor_id, at_ms) VALUES (?, ?, ?, ?, ?)'
					)
					.run(rideId, markMs, answer, actor.personId, ledger.now());
			leaveTrail(ledger, actor, answer === null ? 'took the answer back' : 'answered', 'lap', rideId, {
				markMs,
				before: before[0]?.answer ?? null,
				after: answer
			});
		})
		.immediate();
}
