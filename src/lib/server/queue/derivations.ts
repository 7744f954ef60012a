import type { Bike } from '$lib/drivetrain/bike';
import type { ColumnMapping } from '$lib/ride/columnMapping';
import { ANALYSIS_VERSION } from '$lib/slip/analysisVersion';
import type { AnalysedFile } from '../../../jobs/analysis/messages';
import type { Ledger } from '../ledger/openLedger';
import { allSourceColumns } from '../columns/sourceColumns';
import { takeOtherReading } from '../columns/takeOtherReading';
import { faultPoint } from '../store/faultPoint';
import { bikesOfRides } from './bikeOfRide';
import { MOST_ATTEMPTS } from './importQueue';
import { holdsLease, type LeaseHolder } from './lease';
import { queueTransaction } from './queueTransaction';
import { readingFacts } from './readingFacts';
import { removeStrayChannels, saveChannels, sourcesWithChannels } from './saveChannels';
import { saveResult } from './saveResult';

/** A ride whose result or traces this program has to make (again). */
export interface Derivation {
	readonly rideId: number;
	readonly sha256: string;
	readonly fileName: string;
	readonly bike: Bike;
	/** of a logger's table, as a person named them; null = the file needs none */
	readonly columns: ColumnMapping | null;
}

interface RideRow {
	rideId: number;
	sha256: string;
	fileName: string;
	bikeId: number | null;
	wheelId: number | null;
	startMs: number;
	/** of this program's result; null = there is none */
	resultFacts: string | null;
	triedFacts: string | null;
	attempts: number;
	failure: string | null;
}

/**
 * Rides without a result of this program's version, with one that was made from other facts about the bike or by
 * other columns, or whose traces are gone; oldest first. Nothing else says so: a change of a bike or a wheel queues its rides by
 * being made, and nothing is lost when a program is killed.
 *
 * @param only look at these rides alone; null = at all
 */
export function listDerivations(ledger: Ledger, only: readonly number[] | null = null): Derivation[] {
	const rides = ledger.database
		.prepare<[object], RideRow>(
			`SELECT r.id AS rideId, r.sha256, r.file_name AS fileName, r.bike_id AS bikeId,
				r.wheel_id AS wheelId, r.started_ms AS startMs, s.bike_facts AS resultFacts,
				d.bike_facts AS triedFacts, coalesce(d.attempts, 0) AS attempts, d.failure
			FROM ride r LEFT JOIN result s ON s.ride_id = r.id AND s.version = @version
			LEFT JOIN derivation d ON d.ride_id = r.id AND d.version = @version
			WHERE r.sha256 NOT IN (SELECT sha256 FROM erased_source)
				${only ? 'AND r.id IN (SELECT value FROM json_each(@only))' : ''} ORDER BY r.id`
		)
		.all({ version: ANALYSIS_VERSION, ...(only ? { only: JSON.stringify(only) } : {}) });
	const bikeOf = bikesOfRides(ledger);
	const columnsOf = allSourceColumns(ledger.database);
	const drawn = sourcesWithChannels(ledger, ANALYSIS_VERSION, only && rides.map(({ sha256 }) => sha256));
	const wanted: Derivation[] = [];
	for (const ride of rides) {
		const bike = bikeOf(ride);
		const columns = columnsOf.get(ride.sha256) ?? null;
		const facts = readingFacts(bike, columns);
		if (ride.resultFacts === facts && drawn.has(ride.sha256)) continue;
		const givenUp = ride.failure !== null || ride.attempts >= MOST_ATTEMPTS;
		if (givenUp && ride.triedFacts === facts) continue;
		wanted.push({ rideId: ride.rideId, sha256: ride.sha256, fileName: ride.fileName, bike, columns });
	}
	return wanted;
}

/**
 * Counts the attempt before it is made, so that a file which ends the program is given up in the end. Other
 * facts about the bike are a new beginning.
 */
export function beginDerivation(ledger: Ledger, { rideId, bike, columns }: Derivation): void {
	queueTransaction(ledger, () =>
		ledger.database
			.prepare(
				`INSERT INTO derivation (ride_id, version, attempts, bike_facts) VALUES (?, ?, 1, ?)
			ON CONFLICT (ride_id, version) DO UPDATE SET
				attempts = CASE WHEN bike_facts = excluded.bike_facts THEN attempts + 1 ELSE 1 END,
				failure = CASE WHEN bike_facts = excluded.bike_facts THEN failure END,
				bike_facts = excluded.bike_facts`
			)
			.run(rideId, ANALYSIS_VERSION, readingFacts(bike, columns))
	);
}

/** An attempt that the program's own stop broke off does not count. */
export function releaseDerivation(ledger: Ledger, { rideId }: Derivation): void {
	queueTransaction(ledger, () =>
		ledger.database
			.prepare(
				'UPDATE derivation SET attempts = attempts - 1 WHERE ride_id = ? AND version = ? AND attempts > 0'
			)
			.run(rideId, ANALYSIS_VERSION)
	);
}

export function failDerivation(ledger: Ledger, { rideId }: Derivation, sentence: string): void {
	queueTransaction(ledger, () =>
		ledger.database
			.prepare('UPDATE derivation SET failure = ? WHERE ride_id = ? AND version = ?')
			.run(sentence, rideId, ANALYSIS_VERSION)
	);
}

/**
 * Stores the new result beside those of other versions. One of the same version is kept as it is where only
 * traces were lost; where it was made from other facts about the bike or by other columns it is replaced in one
 * transaction.
 */
export function saveDerivation(
	ledger: Ledger,
	holder: LeaseHolder,
	derivation: Derivation,
	file: AnalysedFile
): void {
	faultPoint('derived');
	saveChannels(ledger, derivation.sha256, file);
	faultPoint('derived-channels-written');
	const wanted = queueTransaction(ledger, (): boolean => {
		const { rideId } = derivation;
		const ride = ledger.database.prepare('SELECT 1 FROM ride WHERE id = ?').get(rideId);
		if (!ride || !holdsLease(ledger, 'runner', holder)) return false;
		const known = ledger.database
			.prepare<[number, number], { facts: string }>(
				'SELECT bike_facts AS facts FROM result WHERE ride_id = ? AND version = ?'
			)
			.get(rideId, file.analysisVersion);
		if (known?.facts !== readingFacts(file.detail.bike ?? {}, file.detail.columns ?? null))
			takeOtherReading(ledger, rideId, file, () => saveResult(ledger, rideId, file));
		ledger.database
			.prepare('DELETE FROM derivation WHERE ride_id = ? AND version = ?')
			.run(rideId, file.analysisVersion);
		return true;
	});
	if (!wanted) removeStrayChannels(ledger, derivation.sha256, file.analysisVersion);
	faultPoint('derivation-done');
}
