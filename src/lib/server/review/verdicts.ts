import type { Actor } from '../actor';
import { checkText } from '../ledger/checkText';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import { REJECT_REASONS, type RejectReason } from '../views';

export interface VerdictInput {
	verdict: 'confirmed' | 'rejected';
	/** needed when rejected */
	reason?: RejectReason | null;
	note?: string;
}

interface JudgedEvent {
	id: number;
	rideId: number;
	startMs: number;
	endMs: number;
	kind: string;
	overrunCrankDeg: number;
	verdictId: number | null;
}

/**
 * Writes down what a person decided about an event. An earlier verdict is superseded, not removed.
 *
 * @throws LedgerRefusal not-found; wrong-value when a rejection has no reason
 */
export function recordVerdict(ledger: Ledger, actor: Actor, eventId: number, input: VerdictInput): void {
	const { verdict } = input;
	if (verdict !== 'confirmed' && verdict !== 'rejected')
		throw new LedgerRefusal('wrong-value', 'A verdict is "confirmed" or "rejected".');
	const reason = verdict === 'rejected' ? (input.reason ?? null) : null;
	if (verdict === 'rejected' && !(REJECT_REASONS as readonly unknown[]).includes(reason))
		throw new LedgerRefusal('wrong-value', 'Say what it was instead of a slip.');
	const note = checkText('The note', input.note ?? '', { min: 0, max: 1000 });
	const { database } = ledger;
	database
		.transaction(() => {
			const event = findEvent(ledger, eventId);
			supersede(ledger, event);
			const { lastInsertRowid } = database
				.prepare(
					`INSERT INTO verdict (ride_id, start_ms, end_ms, kind, overrun_crank_deg, verdict, reason, note,
						actor_id, at_ms) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)`
				)
				.run(
					event.rideId,
					Math.round(event.startMs),
					Math.round(event.endMs),
					event.kind,
					event.overrunCrankDeg,
					verdict,
					reason,
					note,
					actor.personId,
					ledger.now()
				);
			database.prepare('UPDATE slip_event SET verdict_id = ? WHERE id = ?').run(lastInsertRowid, eventId);
			leaveTrail(ledger, actor, verdict, 'event', eventId, {
				rideId: event.rideId,
				verdictId: Number(lastInsertRowid),
				before: event.verdictId,
				reason,
				note
			});
		})
		.immediate();
}

/** Takes the verdict back: the event is unreviewed again, the old verdict stays in the ledger. */
export function undoVerdict(ledger: Ledger, actor: Actor, eventId: number): void {
	ledger.database
		.transaction(() => {
			const event = findEvent(ledger, eventId);
			if (event.verdictId === null) return;
			supersede(ledger, event);
			leaveTrail(ledger, actor, 'took the verdict back', 'event', eventId, {
				rideId: event.rideId,
				before: event.verdictId
			});
		})
		.immediate();
}

/** The same verdict may stand for events of several analysis versions: it leaves all of them. */
function supersede(ledger: Ledger, event: JudgedEvent): void {
	if (event.verdictId === null) return;
	ledger.database
		.prepare('UPDATE verdict SET superseded_ms = ? WHERE id = ?')
		.run(ledger.now(), event.verdictId);
	ledger.database
		.prepare('UPDATE slip_event SET verdict_id = NULL WHERE verdict_id = ?')
		.run(event.verdictId);
}

function findEvent(ledger: Ledger, eventId: number): JudgedEvent {
	const event = ledger.database
		.prepare<[number], JudgedEvent>(
			`SELECT e.id, e.ride_id AS rideId, r.started_ms + 1000 * e.start_s AS startMs,
				r.started_ms + 1000 * e.end_s AS endMs, e.kind, e.overrun_crank_deg AS overrunCrankDeg,
				e.verdict_id AS verdictId
			FROM slip_event e JOIN ride r ON r.id = e.ride_id WHERE e.id = ?`
		)
		.get(eventId);
	if (!event) throw new LedgerRefusal('not-found', 'There is no such event; it may have been analysed anew.');
	return event;
}
