import type { GivenReview } from '$lib/server';
import { REJECT_REASONS, type RejectReason } from '$lib/server/views';
import { text } from '../forms';

/** Reads "confirmed", "skipped" or "rejected:shift" from the button that was pressed; the ledger checks it. */
export function givenReview(form: FormData): GivenReview {
	const [answer, reason] = text(form, 'answer').split(':');
	return {
		answer: answer as GivenReview['answer'],
		reason: REJECT_REASONS.includes(reason as RejectReason) ? (reason as RejectReason) : null,
		note: text(form, 'note')
	};
}
