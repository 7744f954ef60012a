import type { Ledger } from '../ledger/openLedger';
import { currentVersion } from '../queue/analysisVersions';
import { IN_THE_RATE } from '../rates/eventTallies';

/** An event that a reviewer has still to decide. */
export interface WaitingEvent {
	readonly eventId: number;
	readonly rideId: number;
	readonly purpose: 'first look' | 'second look';
	readonly inTheRate: 0 | 1;
	/** when this reviewer skipped it last; 0 = never */
	readonly skippedMs: number;
}

/**
 * Events of standing rides that wait for this reviewer: those without a verdict, and those that one other person
 * decided and nobody has looked at a second time. What two people saw differently waits for a decision with both
 * answers in view and is not in the queue.
 */
export function waitingEvents(ledger: Ledger, personId: number): WaitingEvent[] {
	return ledger.database
		.prepare<[object], WaitingEvent>(
			`SELECT e.id AS eventId, e.ride_id AS rideId,
				CASE WHEN e.verdict_id IS NULL THEN 'first look' ELSE 'second look' END AS purpose,
				${IN_THE_RATE} AS inTheRate,
				coalesce((SELECT max(i.answered_ms) FROM review_item i WHERE i.event_id = e.id
					AND i.reviewer_id = @personId AND i.answer = 'skipped'), 0) AS skippedMs
			FROM slip_event e JOIN ride r ON r.id = e.ride_id LEFT JOIN verdict v ON v.id = e.verdict_id
			WHERE e.version = @version AND e.kind = 'slip' AND r.withdrawn_ms IS NULL
				AND coalesce(r.twin_decision, '') <> 'same recording'
				AND (v.id IS NULL OR v.actor_id <> @personId)
				AND NOT EXISTS (SELECT 1 FROM review_item i WHERE i.event_id = e.id AND i.purpose = 'second look'
					AND i.answer IN ('confirmed', 'rejected') AND (v.id IS NULL OR i.verdict_id = v.id))`
		)
		.all({ personId, version: currentVersion(ledger) });
}

/** How many wait for a first and for a second look. */
export function waitingCounts(ledger: Ledger, personId: number): { firstLooks: number; secondLooks: number } {
	const waiting = waitingEvents(ledger, personId);
	const secondLooks = waiting.filter(({ purpose }) => purpose === 'second look').length;
	return { firstLooks: waiting.length - secondLooks, secondLooks };
}
