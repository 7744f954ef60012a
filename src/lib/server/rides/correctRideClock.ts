import type { Actor } from '../actor';
import { fromInstant, toInstant } from '../ledger/instants';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';

const DAY_MS = 24 * 3600 * 1000;

/**
 * Says when a ride began whose recording's clock was wrong, or that its clock is right. Verdicts and answers
 * about laps hold absolute time and move along; what the recording said is kept.
 *
 * @param start ISO 8601 with its zone; null = the recording's clock is right
 * @throws LedgerRefusal not-found; wrong-value for an instant ahead of the ledger's clock or outside 1990 to
 *   2099; conflict for a split ride, whose cuts are instants
 */
export function correctRideClock(ledger: Ledger, actor: Actor, rideId: number, start: string | null): void {
	const { database } = ledger;
	database
		.transaction(() => {
			const ride = database
				.prepare<[number], { startMs: number; recordedMs: number | null }>(
					'SELECT started_ms AS startMs, recorded_start_ms AS recordedMs FROM ride WHERE id = ?'
				)
				.get(rideId);
			if (!ride) throw new LedgerRefusal('not-found', 'There is no such ride.');
			const recordedMs = ride.recordedMs ?? ride.startMs;
			const startMs = start === null ? recordedMs : fromInstant(start);
			if (start !== null && startMs > ledger.now() + DAY_MS)
				throw new LedgerRefusal('wrong-value', 'The ride cannot have begun after today.');
			if (
				startMs !== ride.startMs &&
				database.prepare('SELECT 1 FROM ride_cut WHERE ride_id = ?').get(rideId)
			)
				throw new LedgerRefusal('conflict', 'This ride is split: join it first, then correct its clock.');
			database
				.prepare('UPDATE ride SET started_ms = ?, recorded_start_ms = ? WHERE id = ?')
				.run(startMs, recordedMs, rideId);
			const by = { by: startMs - ride.startMs, rideId };
			database
				.prepare(
					'UPDATE verdict SET start_ms = start_ms + @by, end_ms = end_ms + @by WHERE ride_id = @rideId'
				)
				.run(by);
			database
				.prepare('UPDATE rider_mark_answer SET mark_ms = mark_ms + @by WHERE ride_id = @rideId')
				.run(by);
			database.prepare('UPDATE felt_slip SET at_ms = at_ms + @by WHERE ride_id = @rideId').run(by);
			leaveTrail(ledger, actor, 'corrected', 'ride', rideId, {
				startedAt: { before: toInstant(ride.startMs), after: toInstant(startMs) }
			});
		})
		.immediate();
}
