import { ANALYSIS_VERSION } from '$lib/slip/analysisVersion';
import { insertionStage, type InsertionStage } from '../insertions/insertionView';
import { toInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import { rideClockOdd } from '../rides/rideFacts';
import type { Instant } from '../views';
import { rememberRides } from '../ledger/rememberRides';
import { allSourceColumns, sourceColumns } from '../columns/sourceColumns';
import { bikesOfRides, type RiddenOn } from '../queue/bikeOfRide';
import { currentVersion } from '../queue/analysisVersions';
import { MOST_ATTEMPTS } from '../queue/importQueue';
import { readingFacts } from '../queue/readingFacts';

export interface RideStages {
	/** its bike, its wheel or the columns of its table are known otherwise now than when the result was made */
	again: { state: 'queued' } | { state: 'failed'; reason: string } | { state: 'other program' } | null;
	/** a newer version that has a result where the current one has none; null = no such */
	waitsForVersion: number | null;
	/** when and why its file was erased: its figures stand, nothing can be made again; null = it was not */
	erased: { at: Instant; reason: string } | null;
	/** what the recording's clock said, and whether a person has to say when it was */
	clock: { looksWrong: boolean; recordedAt: Instant; startedAt: Instant };
	/** null while the current version has no result */
	insertion: InsertionStage | null;
}

type Clock = Parameters<typeof rideClockOdd>[0];
type StagesRow = ReadAs & { facts: string | null; newer: number | null; erased: number } & Clock;

/** all that a result's key depends on */
interface ReadAs extends RiddenOn {
	readonly sha256: string;
}

/** How far the ledger has come with a ride beyond what its page shows; null when there is no such ride. */
export function rideStages(ledger: Ledger, rideId: number): RideStages | null {
	const version = currentVersion(ledger);
	const ride = ledger.database
		.prepare<[object], StagesRow>(
			`SELECT r.sha256, r.bike_id AS bikeId, r.wheel_id AS wheelId, r.started_ms AS startMs, s.bike_facts AS facts,
				(SELECT max(version) FROM result WHERE ride_id = r.id AND version > @version) AS newer,
				EXISTS (SELECT 1 FROM erased_source WHERE sha256 = r.sha256) AS erased,
				r.recorded_start_ms AS recordedStartMs, r.created_ms AS takenMs, r.example
			FROM ride r LEFT JOIN result s ON s.ride_id = r.id AND s.version = @version WHERE r.id = @rideId`
		)
		.get({ version, rideId });
	if (!ride) return null;
	return {
		erased: erasedOf(ledger, rideId),
		clock: {
			looksWrong: rideClockOdd(ride),
			recordedAt: toInstant(ride.recordedStartMs ?? ride.startMs),
			startedAt: toInstant(ride.startMs)
		},
		again: ride.facts === null || ride.erased ? null : againOf(ledger, rideId, version, ride.facts, ride),
		waitsForVersion: ride.facts === null ? ride.newer : null,
		insertion: insertionStage(ledger, rideId, version)
	};
}

function erasedOf(ledger: Ledger, rideId: number): RideStages['erased'] {
	const row = ledger.database
		.prepare<[number], { erasedMs: number; reason: string }>(
			`SELECT e.erased_ms AS erasedMs, e.reason FROM erased_source e JOIN ride r ON r.sha256 = e.sha256
			WHERE r.id = ?`
		)
		.get(rideId);
	return row ? { at: toInstant(row.erasedMs), reason: row.reason } : null;
}

function againOf(
	ledger: Ledger,
	rideId: number,
	version: number,
	facts: string,
	ride: ReadAs
): RideStages['again'] {
	const wanted = readingFacts(bikesOfRides(ledger)(ride), sourceColumns(ledger.database, ride.sha256));
	if (wanted === facts) return null;
	// results of an older version cannot be made again: its program is not this one
	if (version !== ANALYSIS_VERSION) return { state: 'other program' };
	const tried = ledger.database
		.prepare<[number, number, string], { failure: string | null; attempts: number }>(
			'SELECT failure, attempts FROM derivation WHERE ride_id = ? AND version = ? AND bike_facts = ?'
		)
		.get(rideId, version, wanted);
	if (tried?.failure) return { state: 'failed', reason: tried.failure };
	if (tried && tried.attempts >= MOST_ATTEMPTS)
		return { state: 'failed', reason: 'It broke off again and again.' };
	return { state: 'queued' };
}

/** Rides whose result is to be made again because bike, wheel or columns are known otherwise now. */
export function countComputingAgain(ledger: Ledger): number {
	return rememberRides<ReadonlySet<number>>(ledger, 'rides computed again', {
		all: () => readComputingAgain(ledger),
		anew: (before, touched) => {
			const changed = new Set(touched);
			const others = [...before].filter((id) => !changed.has(id));
			return new Set([...others, ...readComputingAgain(ledger, touched)]);
		}
	}).size;
}

function readComputingAgain(ledger: Ledger, rideIds?: readonly number[]): Set<number> {
	const bikeOf = bikesOfRides(ledger);
	const columnsOf = allSourceColumns(ledger.database);
	const wanted = ledger.database
		.prepare<[object], ReadAs & { rideId: number; facts: string; givenUpFacts: string | null }>(
			`SELECT s.ride_id AS rideId, r.sha256, r.bike_id AS bikeId, r.wheel_id AS wheelId, r.started_ms AS startMs,
				s.bike_facts AS facts, d.bike_facts AS givenUpFacts
			FROM result s JOIN ride r ON r.id = s.ride_id
			LEFT JOIN derivation d ON d.ride_id = s.ride_id AND d.version = s.version
				AND (d.failure IS NOT NULL OR d.attempts >= @most)
			WHERE s.version = @version AND r.sha256 NOT IN (SELECT sha256 FROM erased_source)
				${rideIds ? 'AND s.ride_id IN (SELECT value FROM json_each(@only))' : ''}`
		)
		.all({
			version: ANALYSIS_VERSION,
			most: MOST_ATTEMPTS,
			...(rideIds ? { only: JSON.stringify(rideIds) } : {})
		})
		.filter((ride) => {
			const facts = readingFacts(bikeOf(ride), columnsOf.get(ride.sha256) ?? null);
			return facts !== ride.facts && facts !== ride.givenUpFacts;
		});
	return new Set(wanted.map(({ rideId }) => rideId));
}
