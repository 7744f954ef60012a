import type { Ledger } from '../ledger/openLedger';
import { currentVersion } from '../queue/analysisVersions';

/** A verdict that stands, or would stand, without an event. */
export interface LostVerdict {
	verdictId: number;
	rideId: number;
	fileName: string;
	startS: number;
	kind: string;
	crankDeg: number;
	verdict: 'confirmed' | 'rejected';
}

/**
 * Verdicts that stand but judge nothing which the current version reports: of another version, or of a result
 * before its bike was described otherwise. They find their event again when one is reported there.
 */
export function unmatchedVerdicts(ledger: Ledger): LostVerdict[] {
	return readVerdicts(
		ledger,
		`v.superseded_ms IS NULL AND r.withdrawn_ms IS NULL AND NOT EXISTS
			(SELECT 1 FROM slip_event e WHERE e.verdict_id = v.id AND e.version = @version)`,
		{ version: currentVersion(ledger) }
	);
}

/** Verdicts by their ids. */
export function verdictsOf(ledger: Ledger, ids: readonly number[]): LostVerdict[] {
	return readVerdicts(ledger, 'v.id IN (SELECT value FROM json_each(@ids))', { ids: JSON.stringify(ids) });
}

function readVerdicts(ledger: Ledger, where: string, values: object): LostVerdict[] {
	return ledger.database
		.prepare<[object], LostVerdict>(
			`SELECT v.id AS verdictId, v.ride_id AS rideId, r.file_name AS fileName,
				(v.start_ms - r.started_ms) / 1000.0 AS startS, v.kind, v.overrun_crank_deg AS crankDeg, v.verdict
			FROM verdict v JOIN ride r ON r.id = v.ride_id WHERE ${where} ORDER BY v.ride_id, v.start_ms`
		)
		.all(values);
}
