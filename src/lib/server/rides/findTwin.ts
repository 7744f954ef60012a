import type { AnalysedFile } from '../../../jobs/analysis/messages';
import type { Ledger } from '../ledger/openLedger';
import { sameRecording } from './sameRecording';

/** exports of one ride begin within this of each other, milliseconds */
const START_TOLERANCE_MS = 120_000;

/**
 * The ride in the ledger that looks like the same recording in other bytes; null when there is none. Rides
 * that are themselves a second copy come last and withdrawn ones after them: the question is best asked
 * about the ride that counts.
 *
 * @param itself the ride of this file where it has one already
 */
export function findTwin(ledger: Ledger, file: AnalysedFile, itself: number | null = null): number | null {
	const near = ledger.database
		.prepare<[number, number], { id: number; startedMs: number; signature: Buffer }>(
			`SELECT r.id, r.started_ms AS startedMs, s.signature
			FROM ride r JOIN ride_signature s ON s.ride_id = r.id
			WHERE r.started_ms BETWEEN ? AND ?
			ORDER BY r.withdrawn_ms IS NOT NULL,
				r.twin_of IS NOT NULL AND r.twin_decision IS NOT 'different ride', r.id`
		)
		.all(file.startedAtMs - START_TOLERANCE_MS, file.startedAtMs + START_TOLERANCE_MS);
	const recording = { startedMs: file.startedAtMs, signature: file.signature };
	return near.find((ride) => ride.id !== itself && sameRecording(ride, recording))?.id ?? null;
}
