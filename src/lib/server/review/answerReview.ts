import type { Actor } from '../actor';
import { checkText } from '../ledger/checkText';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import { REJECT_REASONS, type RejectReason } from '../views';
import { findReviewItem, type ReviewAnswer, type ReviewItem } from './reviewItems';
import { recordVerdict, undoVerdict } from './verdicts';

export interface GivenReview {
	readonly answer: ReviewAnswer;
	/** needed when rejected */
	readonly reason?: RejectReason | null;
	readonly note?: string;
}

/**
 * Keeps what a reviewer decided. A first look becomes the verdict of the event. A second look that agrees leaves
 * the verdict; one that does not sets it aside, so that the event counts as not reviewed until a person decides with
 * both answers in view. What is there to measure the review changes no verdict and no figure.
 *
 * @throws LedgerRefusal not-found for another's item; conflict when it was answered already or the event was decided
 *   meanwhile; wrong-value for a rejection without a reason
 */
export function answerReview(ledger: Ledger, actor: Actor, token: string, given: GivenReview): void {
	const reason = checkReason(given);
	const note = checkText('The note', given.note ?? '', { min: 0, max: 1000 });
	ledger.database
		.transaction(() => {
			const item = neededItem(ledger, actor, token);
			if (item.answer !== null) throw new LedgerRefusal('conflict', 'This one is answered already.');
			const kept =
				given.answer === 'skipped' ? null : keepVerdict(ledger, actor, item, given.answer, reason, note);
			ledger.database
				.prepare(
					`UPDATE review_item SET answer = ?, reason = ?, note = ?, answered_ms = ?, verdict_id = ?, disagrees = ?
					WHERE id = ?`
				)
				.run(
					given.answer,
					reason,
					note,
					ledger.now(),
					kept?.verdictId ?? null,
					kept?.disagrees ? 1 : 0,
					item.id
				);
			if (given.answer !== 'skipped' && item.purpose !== 'first look')
				leaveTrail(ledger, actor, given.answer, 'review', item.id, {
					rideId: item.rideId,
					purpose: item.purpose,
					disagrees: kept?.disagrees ?? false,
					reason
				});
		})
		.immediate();
}

/**
 * Takes a reviewer's answer back and lays the same thing before him again; a verdict that a second look set aside
 * stands again.
 *
 * @throws LedgerRefusal not-found; conflict when somebody decided about the event since
 */
export function undoReview(ledger: Ledger, actor: Actor, token: string): void {
	ledger.database
		.transaction(() => {
			const item = neededItem(ledger, actor, token);
			if (item.answer === null) return;
			if (item.purpose === 'first look' && item.eventId !== null && item.verdictId !== null)
				undoVerdict(ledger, actor, item.eventId, { verdictId: item.verdictId });
			if (item.purpose === 'second look' && item.disagrees) standAgain(ledger, item);
			ledger.database
				.prepare('DELETE FROM review_item WHERE reviewer_id = ? AND answer IS NULL')
				.run(actor.personId);
			ledger.database
				.prepare(
					`UPDATE review_item SET answer = NULL, reason = NULL, note = '', answered_ms = NULL, verdict_id = NULL,
						disagrees = 0, opened_ms = ? WHERE id = ?`
				)
				.run(ledger.now(), item.id);
			leaveTrail(ledger, actor, 'took the answer back', 'review', item.id, {
				rideId: item.rideId,
				before: item.answer
			});
		})
		.immediate();
}

function checkReason({ answer, reason }: GivenReview): RejectReason | null {
	if (!['confirmed', 'rejected', 'skipped'].includes(answer))
		throw new LedgerRefusal('wrong-value', 'An answer is "confirmed", "rejected" or "skipped".');
	if (answer !== 'rejected') return null;
	if (!reason || !REJECT_REASONS.includes(reason))
		throw new LedgerRefusal('wrong-value', 'Say what it was instead of a slip.');
	return reason;
}

function neededItem(ledger: Ledger, actor: Actor, token: string): ReviewItem {
	const item = findReviewItem(ledger, actor, token);
	if (!item) throw new LedgerRefusal('not-found', 'This is not among what you were shown.');
	return item;
}

function keepVerdict(
	ledger: Ledger,
	actor: Actor,
	item: ReviewItem,
	answer: 'confirmed' | 'rejected',
	reason: RejectReason | null,
	note: string
): { verdictId: number | null; disagrees: boolean } | null {
	if (item.eventId === null || item.purpose === 'known good') return null;
	if (item.purpose === 'first look') {
		recordVerdict(ledger, actor, item.eventId, { verdict: answer, reason, note }, { verdictId: null });
		return { verdictId: standingVerdict(ledger, item.eventId)!.id, disagrees: false };
	}
	const standing = standingVerdict(ledger, item.eventId);
	if (!standing) throw new LedgerRefusal('conflict', 'The verdict on this event was taken back meanwhile.');
	const disagrees = standing.verdict !== answer;
	if (disagrees) undoVerdict(ledger, actor, item.eventId, { verdictId: standing.id });
	return { verdictId: standing.id, disagrees };
}

function standingVerdict(ledger: Ledger, eventId: number): { id: number; verdict: string } | undefined {
	return ledger.database
		.prepare<[number], { id: number; verdict: string }>(
			'SELECT v.id, v.verdict FROM slip_event e JOIN verdict v ON v.id = e.verdict_id WHERE e.id = ?'
		)
		.get(eventId);
}

function standAgain(ledger: Ledger, { eventId, verdictId }: ReviewItem): void {
	const { changes } = ledger.database
		.prepare('UPDATE slip_event SET verdict_id = ? WHERE id = ? AND verdict_id IS NULL')
		.run(verdictId, eventId);
	if (changes === 0)
		throw new LedgerRefusal('conflict', 'Somebody has decided about this event since; it stays as it is.');
	ledger.database.prepare('UPDATE verdict SET superseded_ms = NULL WHERE id = ?').run(verdictId);
}
