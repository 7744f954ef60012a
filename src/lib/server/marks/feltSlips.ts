import type { Actor } from '../actor';
import { checkText } from '../ledger/checkText';
import { toInstant } from '../ledger/instants';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import type { Instant } from '../views';
import { feltAt } from './feltAt';
import { photosOfFelt, type FeltPhoto } from './feltPhotos';

/** How far from the time that a rider names an event may lie and still be meant (an estimate, no source). */
export const FELT_WITHIN_S = 180;

export interface FeltSlipView {
	id: number;
	at: Instant;
	/** seconds from the first record */
	timeS: number;
	note: string;
	/** code of whoever said so */
	by: string;
	byId: number;
	/** what was photographed of it, the oldest first */
	photos: FeltPhoto[];
	/** events of the ride that may be meant, the nearest first; rejected ones are not among them */
	events: number[];
}

/** What of an event decides which felt slip may mean it. */
interface NearEvent {
	readonly id: number;
	readonly startS: number;
	readonly verdict: { readonly verdict: 'confirmed' | 'rejected' } | null;
}

/** The slips that were felt on a ride without a lap, in order of time. */
export function feltSlips(
	ledger: Ledger,
	ride: { id: number; startMs: number },
	events: readonly NearEvent[]
): FeltSlipView[] {
	return ledger.database
		.prepare<[number], Omit<FeltSlipView, 'at' | 'timeS' | 'events' | 'photos'> & { atMs: number }>(
			`SELECT f.id, f.at_ms AS atMs, f.note, p.code AS by, p.id AS byId FROM felt_slip f
			JOIN person p ON p.id = f.actor_id
			WHERE f.ride_id = ? AND f.taken_back_ms IS NULL ORDER BY f.at_ms, f.id`
		)
		.all(ride.id)
		.map(({ atMs, ...row }) => {
			const timeS = (atMs - ride.startMs) / 1000;
			return {
				...row,
				at: toInstant(atMs),
				timeS,
				photos: photosOfFelt(ledger, row.id),
				events: near(timeS, events)
			};
		});
}

/** How many slips were felt on each ride without a lap; rides without one are not in the map. */
export function feltCounts(ledger: Ledger): ReadonlyMap<number, number> {
	const rows = ledger.database
		.prepare<[], { rideId: number; count: number }>(
			`SELECT ride_id AS rideId, count(*) AS count FROM felt_slip WHERE taken_back_ms IS NULL GROUP BY ride_id`
		)
		.all();
	return new Map(rows.map(({ rideId, count }) => [rideId, count]));
}

function near(timeS: number, events: readonly NearEvent[]): number[] {
	return events
		.filter(
			({ startS, verdict }) => verdict?.verdict !== 'rejected' && Math.abs(startS - timeS) <= FELT_WITHIN_S
		)
		.sort((a, b) => Math.abs(a.startS - timeS) - Math.abs(b.startS - timeS) || a.id - b.id)
		.map(({ id }) => id);
}

/**
 * Writes down that a slip was felt on a ride, about when.
 *
 * @param clock time of day as the rider's watch showed it, "14:20"
 * @returns id of what was written
 * @throws LedgerRefusal not-found; wrong-value for a time outside the ride; conflict when the same minute is
 *   marked already
 */
export function recordFeltSlip(
	ledger: Ledger,
	actor: Actor,
	rideId: number,
	input: { clock: string; note?: string }
): number {
	const note = checkText('What was felt', input.note, { min: 0, max: 200 });
	const { database } = ledger;
	return database
		.transaction((): number => {
			const atMs = feltAt(ledger, rideId, input.clock);
			const twice = database
				.prepare('SELECT 1 FROM felt_slip WHERE ride_id = ? AND at_ms = ? AND taken_back_ms IS NULL')
				.get(rideId, atMs);
			if (twice) throw new LedgerRefusal('conflict', 'A slip at this minute is written down already.');
			const { lastInsertRowid } = database
				.prepare('INSERT INTO felt_slip (ride_id, at_ms, note, actor_id, created_ms) VALUES (?, ?, ?, ?, ?)')
				.run(rideId, atMs, note, actor.personId, ledger.now());
			leaveTrail(ledger, actor, 'felt a slip on', 'ride', rideId, { at: toInstant(atMs) });
			return Number(lastInsertRowid);
		})
		.immediate();
}

/**
 * Takes it back, for a wrong time or a wrong ride. Riders take back what they said themselves.
 *
 * @throws LedgerRefusal not-found; not-allowed
 */
export function takeBackFeltSlip(ledger: Ledger, actor: Actor, rideId: number, feltId: number): void {
	const { database } = ledger;
	database
		.transaction(() => {
			const row = database
				.prepare<[number, number], { atMs: number; actorId: number }>(
					`SELECT at_ms AS atMs, actor_id AS actorId FROM felt_slip
					WHERE id = ? AND ride_id = ? AND taken_back_ms IS NULL`
				)
				.get(feltId, rideId);
			if (!row) throw new LedgerRefusal('not-found', 'This is not written down (any more).');
			if (actor.role === 'rider' && row.actorId !== actor.personId)
				throw new LedgerRefusal('not-allowed', 'Riders take back what they said themselves.');
			database.prepare('UPDATE felt_slip SET taken_back_ms = ? WHERE id = ?').run(ledger.now(), feltId);
			leaveTrail(ledger, actor, 'took back a felt slip on', 'ride', rideId, { at: toInstant(row.atMs) });
		})
		.immediate();
}
