import type { Bike } from '$lib/drivetrain/bike';
import type { ColumnMapping } from '$lib/ride/columnMapping';
import type { InsertionResult } from '$lib/slip/insertionTest';
import { ANALYSIS_VERSION } from '$lib/slip/analysisVersion';
import type { Ledger } from '../ledger/openLedger';
import { faultPoint } from '../store/faultPoint';
import { MOST_ATTEMPTS } from './importQueue';
import { holdsLease, type LeaseHolder } from './lease';
import { queueTransaction } from './queueTransaction';

/** A ride that stands and into which slips are still to be put. */
export interface Insertion {
	readonly rideId: number;
	readonly sha256: string;
	readonly fileName: string;
	readonly bike: Bike;
	/** of a logger's table, as the result was read; null = the file needs none */
	readonly columns: ColumnMapping | null;
	/** of the result that it belongs to: another one wants a test of its own */
	readonly facts: string;
	readonly seed: number;
}

type InsertionRow = Omit<Insertion, 'bike' | 'columns' | 'seed'> & {
	bike: string | null;
	columns: string | null;
};

/** a ride that stands and into which slips are still to be put: result s, ride r, test t, attempts a */
const WAITING = `FROM result s JOIN ride r ON r.id = s.ride_id
	LEFT JOIN result_detail d ON d.ride_id = s.ride_id AND d.version = s.version
	LEFT JOIN insertion_test t ON t.ride_id = s.ride_id AND t.version = s.version
	LEFT JOIN insertion_attempt a ON a.ride_id = s.ride_id AND a.version = s.version
	WHERE s.version = @version AND t.ride_id IS NULL AND r.withdrawn_ms IS NULL
		AND r.sha256 NOT IN (SELECT sha256 FROM erased_source)
		AND a.failure IS NULL AND coalesce(a.attempts, 0) < @most`;

/**
 * The oldest ride with a result of this program's version that was not put to the test yet; null = none.
 *
 * @param busy rides that are worked on already
 */
export function nextInsertion(ledger: Ledger, busy: Iterable<number>): Insertion | null {
	const row = ledger.database
		.prepare<[object], InsertionRow>(
			`SELECT r.id AS rideId, r.sha256, r.file_name AS fileName, s.bike_facts AS facts,
				json_extract(d.detail, '$.bike') AS bike, json_extract(d.detail, '$.columns') AS columns
			${WAITING} AND r.id NOT IN (SELECT value FROM json_each(@busy))
			ORDER BY r.id LIMIT 1`
		)
		.get({ version: ANALYSIS_VERSION, most: MOST_ATTEMPTS, busy: JSON.stringify([...busy]) });
	if (!row) return null;
	return {
		...row,
		bike: row.bike ? (JSON.parse(row.bike) as Bike) : {},
		columns: row.columns ? (JSON.parse(row.columns) as ColumnMapping) : null,
		seed: seedOf(row.sha256)
	};
}

/** Into how many of these rides slips are still to be put. */
export function countWaitingInsertions(ledger: Ledger, rideIds: readonly number[]): number {
	return ledger.database
		.prepare<[object], number>(
			`SELECT count(*) ${WAITING} AND r.id IN (SELECT value FROM json_each(@rideIds))`
		)
		.pluck()
		.get({ version: ANALYSIS_VERSION, most: MOST_ATTEMPTS, rideIds: JSON.stringify(rideIds) })!;
}

/** The same file always gets the same slips. */
function seedOf(sha256: string): number {
	return Number.parseInt(sha256.slice(0, 8), 16);
}

export function beginInsertion(ledger: Ledger, { rideId }: Insertion): void {
	ledger.database
		.prepare(
			`INSERT INTO insertion_attempt (ride_id, version, attempts) VALUES (?, ?, 1)
			ON CONFLICT (ride_id, version) DO UPDATE SET attempts = attempts + 1`
		)
		.run(rideId, ANALYSIS_VERSION);
}

/** An attempt that the program's own stop broke off does not count. */
export function releaseInsertion(ledger: Ledger, { rideId }: Insertion): void {
	ledger.database
		.prepare(
			'UPDATE insertion_attempt SET attempts = attempts - 1 WHERE ride_id = ? AND version = ? AND attempts > 0'
		)
		.run(rideId, ANALYSIS_VERSION);
}

export function failInsertion(ledger: Ledger, { rideId }: Insertion, sentence: string): void {
	ledger.database
		.prepare('UPDATE insertion_attempt SET failure = ? WHERE ride_id = ? AND version = ?')
		.run(sentence, rideId, ANALYSIS_VERSION);
}

/** Stores what became of the slips, unless the result was replaced or the lease lost meanwhile. */
export function saveInsertion(
	ledger: Ledger,
	holder: LeaseHolder,
	{ rideId, facts }: Insertion,
	result: InsertionResult
): void {
	faultPoint('inserted');
	const { database } = ledger;
	const { analysisVersion: version, tallies } = result;
	queueTransaction(ledger, () => {
		const standing = database
			.prepare('SELECT 1 FROM result WHERE ride_id = ? AND version = ? AND bike_facts = ?')
			.get(rideId, version, facts);
		if (!standing || !holdsLease(ledger, 'runner', holder)) return;
		database.prepare('DELETE FROM insertion_test WHERE ride_id = ? AND version = ?').run(rideId, version);
		database
			.prepare(
				`INSERT INTO insertion_test (ride_id, version, seed, passes, put, found, observed_change_m,
						not_run, computed_ms) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)`
			)
			.run(
				rideId,
				version,
				result.seed,
				result.passes,
				result.put,
				result.found,
				result.observedChangeM,
				result.notRun,
				ledger.now()
			);
		const add = database.prepare('INSERT INTO insertion_tally VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)');
		tallies.forEach((row, tally) =>
			add.run(
				rideId,
				version,
				tally,
				row.sizeCrankDeg,
				row.place,
				row.torqueFromNm,
				row.observed ? 1 : 0,
				row.put,
				row.found
			)
		);
		const keep = database.prepare('INSERT INTO review_probe VALUES (?, ?, ?, ?, ?)');
		result.probes.forEach((probe, number) =>
			keep.run(rideId, version, number, probe.putCrankDeg, JSON.stringify(probe))
		);
		database.prepare('DELETE FROM insertion_attempt WHERE ride_id = ? AND version = ?').run(rideId, version);
	});
	faultPoint('insertion-done');
}
