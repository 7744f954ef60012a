import { ANALYSIS_VERSION } from '$lib/slip/analysisVersion';
import type { AnalysedFile } from '../../../jobs/analysis/messages';
import type { Ledger } from '../ledger/openLedger';
import { MOST_ATTEMPTS } from './importQueue';
import { holdsLease, type LeaseHolder } from './lease';
import { hasChannels, removeStrayChannels, saveChannels } from './saveChannels';
import { saveResult } from './saveResult';

/** A ride whose result or traces this program has to make (again). */
export interface Derivation {
	readonly rideId: number;
	readonly sha256: string;
	readonly fileName: string;
}

/** Rides without a result of this program's version, or whose traces are gone; oldest first. */
export function listDerivations(ledger: Ledger): Derivation[] {
	const rides = ledger.database
		.prepare<[number, number, number], Derivation & { hasResult: number }>(
			`SELECT r.id AS rideId, r.sha256, r.file_name AS fileName,
				EXISTS (SELECT 1 FROM result WHERE ride_id = r.id AND version = ?) AS hasResult
			FROM ride r LEFT JOIN derivation d ON d.ride_id = r.id AND d.version = ?
			WHERE d.failure IS NULL AND coalesce(d.attempts, 0) < ? ORDER BY r.id`
		)
		.all(ANALYSIS_VERSION, ANALYSIS_VERSION, MOST_ATTEMPTS);
	return rides.filter(
		({ hasResult, sha256 }) => !hasResult || !hasChannels(ledger, sha256, ANALYSIS_VERSION)
	);
}

/** Counts the attempt before it is made, so that a file which ends the program is given up in the end. */
export function beginDerivation(ledger: Ledger, { rideId }: Derivation): void {
	ledger.database
		.prepare(
			`INSERT INTO derivation (ride_id, version, attempts) VALUES (?, ?, 1)
			ON CONFLICT (ride_id, version) DO UPDATE SET attempts = attempts + 1`
		)
		.run(rideId, ANALYSIS_VERSION);
}

export function failDerivation(ledger: Ledger, { rideId }: Derivation, sentence: string): void {
	ledger.database
		.prepare('UPDATE derivation SET failure = ? WHERE ride_id = ? AND version = ?')
		.run(sentence, rideId, ANALYSIS_VERSION);
}

/** Stores the new result beside those of other versions; one of the same version is kept as it is. */
export function saveDerivation(
	ledger: Ledger,
	holder: LeaseHolder,
	derivation: Derivation,
	file: AnalysedFile
): void {
	saveChannels(ledger, derivation.sha256, file);
	const wanted = ledger.database
		.transaction((): boolean => {
			const { rideId } = derivation;
			const ride = ledger.database.prepare('SELECT 1 FROM ride WHERE id = ?').get(rideId);
			if (!ride || !holdsLease(ledger, 'runner', holder)) return false;
			const known = ledger.database
				.prepare('SELECT 1 FROM result WHERE ride_id = ? AND version = ?')
				.get(rideId, file.analysisVersion);
			if (!known) saveResult(ledger, rideId, file);
			ledger.database
				.prepare('DELETE FROM derivation WHERE ride_id = ? AND version = ?')
				.run(rideId, file.analysisVersion);
			return true;
		})
		.immediate();
	if (!wanted) removeStrayChannels(ledger, derivation.sha256, file.analysisVersion);
}
