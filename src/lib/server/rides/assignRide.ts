import type { Actor } from '../actor';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import {
	ANSWER_COLUMNS,
	ANSWER_NAMES,
	storedAnswer,
	type AnswerName,
	type RideAnswers,
	type StoredAnswer
} from './rideAnswers';
import { removeCuts } from './splitRide';
import { whoChanged } from './whoSaid';

export interface AnswerChange {
	readonly name: AnswerName;
	readonly before: StoredAnswer;
	readonly after: StoredAnswer;
}

/**
 * Answers what a ride needs, or corrects it. A ride given another wheel finds its build anew; another wheel
 * or a build for the whole ride takes back a split.
 *
 * @param seen what the page showed of the answers that are given: where somebody has changed one of them
 *   since, nothing is replaced unseen
 * @throws LedgerRefusal not-found; wrong-value; conflict when an answer changed since it was seen
 */
export function assignRide(
	ledger: Ledger,
	actor: Actor,
	rideId: number,
	answers: RideAnswers,
	seen: RideAnswers = {}
): void {
	ledger.database
		.transaction(() => {
			refuseUnseen(ledger, rideId, answers, seen);
			applyAnswers(ledger, actor, rideId, answers);
		})
		.immediate();
}

/**
 * Writes answers into the row of a ride. Belongs in the caller's transaction.
 *
 * @param batchId of the answers to many rides that this is one of
 * @returns what changed
 */
export function applyAnswers(
	ledger: Ledger,
	actor: Actor,
	rideId: number,
	answers: RideAnswers,
	batchId?: number
): AnswerChange[] {
	const before = readAnswersOf(ledger, rideId);
	const wanted: RideAnswers = { ...answers };
	const otherWheel = answers.wheelId !== undefined && answers.wheelId !== before.wheelId;
	if (otherWheel && answers.buildId === undefined) wanted.buildId = null;
	const changes: AnswerChange[] = [];
	for (const name of ANSWER_NAMES) {
		if (wanted[name] === undefined) continue;
		const after = storedAnswer(ledger, name, wanted[name]);
		if (after === before[name]) continue;
		ledger.database.prepare(`UPDATE ride SET ${ANSWER_COLUMNS[name]} = ? WHERE id = ?`).run(after, rideId);
		changes.push({ name, before: before[name], after });
	}
	if (changes.length === 0) return changes;
	const detail = Object.fromEntries(changes.map(({ name, ...values }) => [name, values]));
	leaveTrail(ledger, actor, 'assigned', 'ride', rideId, batchId ? { ...detail, batch: batchId } : detail);
	if (otherWheel || wanted.buildId) removeCuts(ledger, actor, rideId);
	return changes;
}

/** @throws LedgerRefusal not-found */
export function readAnswersOf(ledger: Ledger, rideId: number): Record<AnswerName, StoredAnswer> {
	const columns = ANSWER_NAMES.map((name) => `${ANSWER_COLUMNS[name]} AS ${name}`).join(', ');
	const row = ledger.database
		.prepare<[number], Record<AnswerName, StoredAnswer>>(`SELECT ${columns} FROM ride WHERE id = ?`)
		.get(rideId);
	if (!row) throw new LedgerRefusal('not-found', 'There is no such ride.');
	return row;
}

function refuseUnseen(ledger: Ledger, rideId: number, answers: RideAnswers, seen: RideAnswers): void {
	const now = readAnswersOf(ledger, rideId);
	for (const name of ANSWER_NAMES) {
		if (answers[name] === undefined || seen[name] === undefined) continue;
		const shown = typeof seen[name] === 'boolean' ? Number(seen[name]) : seen[name];
		const wanted = typeof answers[name] === 'boolean' ? Number(answers[name]) : answers[name];
		if (now[name] === shown || now[name] === wanted) continue;
		const who = whoChanged(ledger, rideId, name);
		throw new LedgerRefusal(
			'conflict',
			`${who ? `${who} has` : 'Somebody has'} changed this ride meanwhile; look at it again, then correct it.`
		);
	}
}
