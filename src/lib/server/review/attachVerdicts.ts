import type { Ledger } from '../ledger/openLedger';
import { matchVerdicts, type Judged } from './matchVerdicts';

/** Gives the events of a result the verdicts that stand for this ride, in place of those that it had. */
export function attachVerdicts(ledger: Ledger, rideId: number, version: number): void {
	const { database } = ledger;
	const verdicts = database
		.prepare<[number], Judged>(
			`SELECT id, start_ms AS startMs, end_ms AS endMs FROM verdict
			WHERE ride_id = ? AND superseded_ms IS NULL`
		)
		.all(rideId);
	if (verdicts.length === 0) return;
	database
		.prepare(
			`UPDATE slip_event SET verdict_id = NULL
			WHERE ride_id = ? AND version = ? AND verdict_id IS NOT NULL`
		)
		.run(rideId, version);
	const events = database
		.prepare<[number, number], Judged>(
			`SELECT e.id, r.started_ms + 1000 * e.start_s AS startMs, r.started_ms + 1000 * e.end_s AS endMs
			FROM slip_event e JOIN ride r ON r.id = e.ride_id WHERE e.ride_id = ? AND e.version = ?`
		)
		.all(rideId, version);
	const attach = database.prepare('UPDATE slip_event SET verdict_id = ? WHERE id = ?');
	for (const [eventId, verdictId] of matchVerdicts(events, verdicts)) attach.run(verdictId, eventId);
}
