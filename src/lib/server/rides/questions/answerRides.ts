import type { Actor } from '../../actor';
import { leaveTrail } from '../../ledger/leaveTrail';
import type { Ledger } from '../../ledger/openLedger';
import { answerRiderMark } from '../../marks/markAnswers';
import { LedgerRefusal } from '../../refusal';
import type { MarkAnswer } from '../../views';
import { applyAnswers } from '../assignRide';
import { decideTwin } from '../changeRide';
import type { RideAnswers } from '../rideAnswers';
import { rideFacts } from '../rideFacts';
import { splitRide } from '../splitRide';
import type { Surface } from '../surfaces';
import { openQuestions, type QuestionName } from './questionList';
import { rideSnapshot, snapshotChanges } from './rideSnapshot';

export interface GivenAnswer {
	readonly rideId: number;
	/** the lap that is meant, seconds from the first record; only for the question about laps */
	readonly lapS?: number;
	/** as the form sends it: an id, "yes", "no", a surface, "split" ... */
	readonly value: string;
}

/**
 * Answers one question for many rides, all or none. What changed is kept together, so that it can be taken
 * back together.
 *
 * @returns id of the batch
 * @throws LedgerRefusal wrong-value when nothing was chosen or an answer is none; conflict when somebody
 *   answered one of them meanwhile; and all that a single answer may be refused for
 */
export function answerRides(
	ledger: Ledger,
	actor: Actor,
	question: QuestionName,
	given: readonly GivenAnswer[]
): number {
	if (given.length === 0)
		throw new LedgerRefusal('wrong-value', 'Tick at least one ride and choose its answer.');
	const { database } = ledger;
	return database
		.transaction((): number => {
			const { lastInsertRowid } = database
				.prepare('INSERT INTO answer_batch (actor_id, at_ms, question) VALUES (?, ?, ?)')
				.run(actor.personId, ledger.now(), question);
			const batchId = Number(lastInsertRowid);
			const isOpen = openQuestions(ledger)[question];
			const rideIds = [...new Set(given.map(({ rideId }) => rideId))];
			const before = new Map(
				rideIds.map((rideId) => {
					const ride = rideFacts(ledger, rideId);
					if (!ride) throw new LedgerRefusal('not-found', 'There is no such ride.');
					if (!isOpen(ride)) throw answeredMeanwhile();
					return [rideId, rideSnapshot(ledger, rideId)];
				})
			);
			for (const answer of given) giveOne(ledger, actor, question, answer, batchId);
			const keep = database.prepare('INSERT INTO answer_batch_change VALUES (?, ?, ?, ?, ?)');
			for (const rideId of rideIds) {
				for (const change of snapshotChanges(before.get(rideId)!, rideSnapshot(ledger, rideId)))
					keep.run(
						batchId,
						rideId,
						change.answer,
						JSON.stringify(change.before),
						JSON.stringify(change.after)
					);
			}
			leaveTrail(ledger, actor, 'answered', 'answers', batchId, { question, rides: rideIds });
			return batchId;
		})
		.immediate();
}

function answeredMeanwhile(): LedgerRefusal {
	return new LedgerRefusal(
		'conflict',
		'Somebody has answered this for one of the rides meanwhile; nothing was changed. Look at the list again.'
	);
}

function giveOne(
	ledger: Ledger,
	actor: Actor,
	question: QuestionName,
	{ rideId, lapS, value }: GivenAnswer,
	batchId: number
): void {
	if (question === 'laps') return answerRiderMark(ledger, actor, rideId, lapS ?? NaN, value as MarkAnswer);
	if (question === 'twin') return decideTwin(ledger, actor, rideId, value as 'same recording');
	if (question === 'change' && value === 'split') return splitRide(ledger, actor, rideId);
	applyAnswers(ledger, actor, rideId, answerOf(question, value), batchId);
}

function answerOf(question: Exclude<QuestionName, 'laps' | 'twin'>, value: string): RideAnswers {
	const id = () => (/^\d{1,15}$/.test(value) ? Number(value) : NaN);
	switch (question) {
		case 'wheel':
			return { wheelId: id() };
		case 'build':
		case 'change':
			return { buildId: id() };
		case 'bike':
			return { bikeId: id() };
		case 'rider':
			return { riderId: id() };
		case 'surface':
			return { surface: value as Surface };
		case 'lapsMeanSlips':
			return { lapsMeanSlips: truthOf(value) };
		case 'wet':
			return { wet: truthOf(value) };
		case 'outdoors':
			return { trainer: truthOf(value) };
		case 'motor':
			return { motor: truthOf(value) };
	}
}

function truthOf(value: string): boolean {
	if (value === 'yes' || value === 'no') return value === 'yes';
	throw new LedgerRefusal('wrong-value', 'Say yes or no.');
}
