import type { Actor } from '../../actor';
import { leaveTrail } from '../../ledger/leaveTrail';
import type { Ledger } from '../../ledger/openLedger';
import { LedgerRefusal } from '../../refusal';
import { ANSWER_COLUMNS, type AnswerName } from '../rideAnswers';
import { saveParts } from '../rideParts';
import { LAP, rideSnapshot } from './rideSnapshot';

interface StoredChange {
	rideId: number;
	answer: string;
	before: string;
	after: string;
}

/**
 * Takes answers to many rides back at once. What somebody changed since stays as it is.
 *
 * @returns how many answers went back, and how many stay because they were changed since
 * @throws LedgerRefusal not-found; conflict when they were taken back already
 */
export function undoAnswers(
	ledger: Ledger,
	actor: Actor,
	batchId: number
): { takenBack: number; stay: number } {
	const { database } = ledger;
	return database
		.transaction(() => {
			const batch = database
				.prepare<[number], { undoneMs: number | null }>(
					'SELECT undone_ms AS undoneMs FROM answer_batch WHERE id = ?'
				)
				.get(batchId);
			if (!batch) throw new LedgerRefusal('not-found', 'There are no such answers.');
			if (batch.undoneMs !== null)
				throw new LedgerRefusal('conflict', 'These answers were taken back already.');
			const changes = database
				.prepare<[number], StoredChange>(
					`SELECT ride_id AS rideId, answer, before, after FROM answer_batch_change
					WHERE batch_id = ? ORDER BY ride_id, answer`
				)
				.all(batchId);
			const standing = changes.filter(({ rideId, answer, after }) => {
				const now = rideSnapshot(ledger, rideId)[answer] ?? null;
				return JSON.stringify(now) === JSON.stringify(JSON.parse(after));
			});
			for (const change of standing) putBack(ledger, actor, change);
			for (const rideId of new Set(standing.map((change) => change.rideId)))
				leaveTrail(
					ledger,
					actor,
					'took the answers back',
					'ride',
					rideId,
					detailOf(standing, rideId, batchId)
				);
			database
				.prepare('UPDATE answer_batch SET undone_by = ?, undone_ms = ? WHERE id = ?')
				.run(actor.personId, ledger.now(), batchId);
			return { takenBack: standing.length, stay: changes.length - standing.length };
		})
		.immediate();
}

function detailOf(changes: readonly StoredChange[], rideId: number, batch: number) {
	const ofRide = changes.filter((change) => change.rideId === rideId);
	return {
		...Object.fromEntries(
			ofRide.map(({ answer, before, after }) => [
				answer,
				{ before: JSON.parse(after) as unknown, after: JSON.parse(before) as unknown }
			])
		),
		batch
	};
}

function putBack(ledger: Ledger, actor: Actor, { rideId, answer, before }: StoredChange): void {
	const { database } = ledger;
	const value = JSON.parse(before) as unknown;
	if (answer.startsWith(LAP))
		return putLapBack(ledger, actor, rideId, Number(answer.slice(LAP.length)), value);
	if (answer === 'cuts') return putCutsBack(ledger, actor, rideId, value as number[]);
	const column = answer === 'twinDecision' ? 'twin_decision' : ANSWER_COLUMNS[answer as AnswerName];
	database.prepare(`UPDATE ride SET ${column} = ? WHERE id = ?`).run(value, rideId);
}

function putCutsBack(ledger: Ledger, actor: Actor, rideId: number, cutsMs: readonly number[]): void {
	const { database } = ledger;
	database.prepare('DELETE FROM ride_cut WHERE ride_id = ?').run(rideId);
	const add = database.prepare('INSERT INTO ride_cut VALUES (?, ?, ?, ?)');
	for (const atMs of cutsMs) add.run(rideId, atMs, actor.personId, ledger.now());
	const versions = database
		.prepare<[number], { version: number }>('SELECT version FROM result WHERE ride_id = ?')
		.all(rideId);
	for (const { version } of versions) saveParts(ledger, rideId, version);
}

function putLapBack(ledger: Ledger, actor: Actor, rideId: number, markMs: number, answer: unknown): void {
	const { database } = ledger;
	const now = ledger.now();
	database
		.prepare(
			`UPDATE rider_mark_answer SET superseded_ms = ?
			WHERE ride_id = ? AND mark_ms = ? AND superseded_ms IS NULL`
		)
		.run(now, rideId, markMs);
	if (answer === null) return;
	database
		.prepare(
			'INSERT INTO rider_mark_answer (ride_id, mark_ms, answer, actor_id, at_ms) VALUES (?, ?, ?, ?, ?)'
		)
		.run(rideId, markMs, answer, actor.personId, now);
}
