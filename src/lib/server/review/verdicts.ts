import type { Actor } from '../actor';
import { checkText } from '../ledger/checkText';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { inWorkshopZone } from '../settings/inWorkshopZone';
import { LedgerRefusal } from '../refusal';
import { REJECT_REASONS, type RejectReason } from '../views';

export interface VerdictInput {
	verdict: 'confirmed' | 'rejected';
	/** needed when rejected */
	reason?: RejectReason | null;
	note?: string;
}

/** What the page showed when the person decided; what is not named is not checked. */
export interface SeenEvent {
	/** the ride on whose page it was */
	rideId?: number;
	/** the verdict that stood there; null = none */
	verdictId?: number | null;
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
 * @throws LedgerRefusal not-found; wrong-value when a rejection has no reason; conflict when another
 *   verdict stands than the one that was seen
 */
export function recordVerdict(
	ledger: Ledger,
	actor: Actor,
	eventId: number,
	input: VerdictInput,
	seen: SeenEvent = {}
): void {
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
			const event = findEvent(ledger, eventId, seen);
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

/**
 * Takes the verdict back: the event is unreviewed again, the old verdict stays in the ledger.
 *
 * @throws LedgerRefusal not-found; conflict when another verdict stands than the one that was seen
 */
export function undoVerdict(ledger: Ledger, actor: Actor, eventId: number, seen: SeenEvent = {}): void {
	ledger.database
		.transaction(() => {
			const event = findEvent(ledger, eventId, seen);
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

function findEvent(ledger: Ledger, eventId: number, seen: SeenEvent): JudgedEvent {
	const event = ledger.database
		.prepare<[number], JudgedEvent>(
			`SELECT e.id, e.ride_id AS rideId, r.started_ms + 1000 * e.start_s AS startMs,
				r.started_ms + 1000 * e.end_s AS endMs, e.kind, e.overrun_crank_deg AS overrunCrankDeg,
				e.verdict_id AS verdictId
			FROM slip_event e JOIN ride r ON r.id = e.ride_id WHERE e.id = ?`
		)
		.get(eventId);
	if (!event || (seen.rideId !== undefined && seen.rideId !== event.rideId))
		throw new LedgerRefusal('not-found', 'There is no such event; it may have been analysed anew.');
	if (seen.verdictId !== undefined && seen.verdictId !== event.verdictId)
		throw new LedgerRefusal('conflict', standsNow(ledger, event.verdictId));
	return event;
}

/** Who decided what while somebody else looked at the event. */
function standsNow(ledger: Ledger, verdictId: number | null): string {
	const standing = ledger.database
		.prepare<[number | null], { verdict: string; reason: string | null; atMs: number; by: string }>(
			`SELECT v.verdict, v.reason, v.at_ms AS atMs, p.code AS by
			FROM verdict v JOIN person p ON p.id = v.actor_id WHERE v.id = ?`
		)
		.get(verdictId);
	if (!standing) return 'The verdict that you saw was taken back meanwhile; decide on what stands now.';
	const { verdict, reason, atMs, by } = standing;
	return `${by} has ${verdict} this event meanwhile${reason ? ` (${reason})` : ''}, on ${inWorkshopZone(ledger, atMs)}; decide on what stands now.`;
}
