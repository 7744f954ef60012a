import type { Actor } from '../actor';
import { toInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import { rideRows } from '../rides/rideRow';
import { rideFacts } from '../rides/rideFacts';
import type { Instant } from '../views';
import { findReviewItem, type ReviewAnswer, type ReviewPurpose } from './reviewItems';

/** What a reviewer decided last, now with what was hidden. */
export interface ReviewLast {
	readonly token: string;
	readonly answer: ReviewAnswer;
	readonly reason: string | null;
	readonly purpose: ReviewPurpose;
	/** crank degrees that were put in */
	readonly putCrankDeg: number | null;
	/** a second look that came to another answer than the first */
	readonly disagrees: boolean;
	readonly rideId: number;
	readonly eventId: number | null;
	readonly startedAt: Instant;
	readonly localOffsetMin: number | null;
	readonly wheel: string | null;
	readonly build: string | null;
	readonly rider: string | null;
}

/** @returns null for a token that names no answered item of this reviewer, and for what was skipped: that stays hidden */
export function reviewLast(ledger: Ledger, actor: Actor, token: string): ReviewLast | null {
	const item = findReviewItem(ledger, actor, token);
	if (!item || item.answer === null) return null;
	const facts = rideFacts(ledger, item.rideId);
	if (!facts) return null;
	const [row] = rideRows(ledger, [facts]);
	const hidden = item.answer === 'skipped';
	return {
		token,
		answer: item.answer,
		reason: item.reason,
		purpose: hidden ? 'first look' : item.purpose,
		putCrankDeg: hidden ? null : item.putCrankDeg,
		disagrees: item.disagrees === 1,
		rideId: hidden ? 0 : item.rideId,
		eventId: hidden ? null : item.eventId,
		startedAt: hidden ? toInstant(0) : row.startedAt,
		localOffsetMin: hidden ? null : row.localOffsetMin,
		wheel: hidden ? null : (row.wheel?.name ?? null),
		build: hidden ? null : (row.build?.name ?? null),
		rider: hidden ? null : (row.rider?.code ?? null)
	};
}
