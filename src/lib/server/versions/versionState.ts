import { ANALYSIS_VERSION } from '$lib/slip/analysisVersion';
import { toInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import { currentVersion } from '../queue/analysisVersions';
import { MOST_ATTEMPTS } from '../queue/importQueue';
import type { Instant } from '../views';

export interface KeptVersion {
	version: number;
	/** rides that have a result of it */
	rides: number;
	firstAt: Instant;
	lastAt: Instant;
}

export interface FailedRide {
	rideId: number;
	fileName: string;
	sentence: string;
}

export interface VersionState {
	current: number;
	/** the version that this program computes */
	program: number;
	rides: number;
	/** rides that the program's version has not reached yet */
	missing: number;
	/** rides that the program's version could not read */
	failed: FailedRide[];
	/** all versions of which results are kept, the newest first */
	kept: KeptVersion[];
	/** the program's version is newer than the current one and every ride has it or failed */
	waits: boolean;
}

/** How the versions of the analysis stand in this ledger. */
export function versionState(ledger: Ledger): VersionState {
	const current = currentVersion(ledger);
	const { rides, missing } = countRides(ledger);
	const kept = ledger.database
		.prepare<[], { version: number; rides: number; firstMs: number; lastMs: number }>(
			`SELECT version, count(*) AS rides, min(computed_ms) AS firstMs, max(computed_ms) AS lastMs
			FROM result GROUP BY version ORDER BY version DESC`
		)
		.all();
	return {
		current,
		program: ANALYSIS_VERSION,
		rides,
		missing,
		failed: failedRides(ledger),
		kept: kept.map(({ version, rides: count, firstMs, lastMs }) => ({
			version,
			rides: count,
			firstAt: toInstant(firstMs),
			lastAt: toInstant(lastMs)
		})),
		waits:
			ANALYSIS_VERSION > current && missing === 0 && kept.some(({ version }) => version === ANALYSIS_VERSION)
	};
}

function countRides(ledger: Ledger): { rides: number; missing: number } {
	return ledger.database
		.prepare<[object], { rides: number; missing: number }>(
			`SELECT count(*) AS rides, coalesce(sum(
				NOT EXISTS (SELECT 1 FROM result WHERE ride_id = r.id AND version = @version)
				AND NOT EXISTS (SELECT 1 FROM derivation WHERE ride_id = r.id AND version = @version
					AND (failure IS NOT NULL OR attempts >= @most))
				AND NOT EXISTS (SELECT 1 FROM erased_source WHERE sha256 = r.sha256)), 0) AS missing
			FROM ride r`
		)
		.get({ version: ANALYSIS_VERSION, most: MOST_ATTEMPTS })!;
}

function failedRides(ledger: Ledger): FailedRide[] {
	return ledger.database
		.prepare<[object], FailedRide>(
			`SELECT r.id AS rideId, r.file_name AS fileName,
				coalesce(d.failure, 'Reading it broke off again and again.') AS sentence
			FROM derivation d JOIN ride r ON r.id = d.ride_id
			WHERE d.version = @version AND (d.failure IS NOT NULL OR d.attempts >= @most)
				AND NOT EXISTS (SELECT 1 FROM result WHERE ride_id = r.id AND version = @version)
				AND r.sha256 NOT IN (SELECT sha256 FROM erased_source)
			UNION ALL SELECT r.id, r.file_name, 'Its file was erased at its rider''s wish.'
			FROM erased_source e JOIN ride r ON r.sha256 = e.sha256
			WHERE NOT EXISTS (SELECT 1 FROM result WHERE ride_id = r.id AND version = @version)
			ORDER BY 1`
		)
		.all({ version: ANALYSIS_VERSION, most: MOST_ATTEMPTS });
}

/** Whether a newer version is complete and waits for a person; cheap where there is none. */
export function versionWaits(ledger: Ledger): boolean {
	return currentVersion(ledger) < ANALYSIS_VERSION && versionState(ledger).waits;
}
