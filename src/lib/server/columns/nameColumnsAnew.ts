import { mappingFault, type ColumnMapping } from '$lib/ride/columnMapping';
import { canonicalJson } from '$lib/release/canonicalJson';
import type { Actor } from '../actor';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import { rememberColumns } from './rememberedColumns';
import { rideColumns, ridesReadAlike } from './rideColumns';
import { NAMED_ANEW } from './setAsideVerdicts';

/**
 * Corrects by which columns the table of a ride was read. The ride is read and analysed anew; until then it stands as
 * it was. What was found by the old answer stays in the trail, and the new answer is remembered for the header.
 *
 * @param alike also other rides of the same header that were read by the same wrong answer
 * @returns how many rides are read anew
 * @throws LedgerRefusal not-found for a ride that was not read by named columns; wrong-value for an answer that does
 *   not fit or changes nothing; conflict for a split ride, whose cuts are instants
 */
export function nameColumnsAnew(
	ledger: Ledger,
	actor: Actor,
	rideId: number,
	mapping: ColumnMapping,
	alike = false
): number {
	return ledger.database
		.transaction((): number => {
			const now = rideColumns(ledger, rideId);
			if (!now)
				throw new LedgerRefusal('not-found', 'This ride was not read by columns that somebody named.');
			const fault = mappingFault(mapping, now.head.names.length);
			if (fault) throw new LedgerRefusal('wrong-value', fault);
			if (canonicalJson(mapping) === canonicalJson(now.mapping))
				throw new LedgerRefusal('wrong-value', 'It was read by these very columns; nothing would change.');
			const rides = [rideId, ...(alike ? ridesReadAlike(ledger, now) : [])];
			for (const id of rides) readAnew(ledger, actor, id, now.mapping, mapping);
			rememberColumns(ledger, actor, now.head.key, mapping);
			return rides.length;
		})
		.immediate();
}

function readAnew(
	ledger: Ledger,
	actor: Actor,
	rideId: number,
	before: ColumnMapping,
	after: ColumnMapping
): void {
	const { database } = ledger;
	if (database.prepare('SELECT 1 FROM ride_cut WHERE ride_id = ?').get(rideId))
		throw new LedgerRefusal('conflict', `Ride ${rideId} is split: join it first, then correct its columns.`);
	const result = database
		.prepare<[number], { version: number; totalM: number; observedM: number }>(
			`SELECT version, total_m AS totalM, observed_m AS observedM FROM result WHERE ride_id = ?
			ORDER BY version DESC LIMIT 1`
		)
		.get(rideId);
	const events = database
		.prepare<[number, number], object>(
			`SELECT e.start_s AS startS, e.kind, e.overrun_crank_deg AS overrunCrankDeg, v.verdict
			FROM slip_event e LEFT JOIN verdict v ON v.id = e.verdict_id
			WHERE e.ride_id = ? AND e.version = ? ORDER BY e.start_s`
		)
		.all(rideId, result?.version ?? 0);
	leaveTrail(ledger, actor, NAMED_ANEW, 'ride', rideId, {
		columns: { before, after },
		...(result ? { version: result.version, totalM: result.totalM, observedM: result.observedM } : {}),
		eventsBefore: events.length,
		events
	});
	// a result of an older program does not say by which columns it was read: from now on that could not be told
	database
		.prepare(
			`UPDATE result_detail SET detail = json_set(detail, '$.columns', json(@before))
			WHERE ride_id = @rideId AND json_extract(detail, '$.columns') IS NULL`
		)
		.run({ rideId, before: JSON.stringify(before) });
	database
		.prepare('UPDATE source_columns SET mapping = ? WHERE sha256 = (SELECT sha256 FROM ride WHERE id = ?)')
		.run(JSON.stringify(after), rideId);
}
