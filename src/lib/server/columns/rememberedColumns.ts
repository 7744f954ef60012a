import type { ColumnMapping } from '$lib/ride/columnMapping';
import type { Actor } from '../actor';
import { toInstant } from '../ledger/instants';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import type { Instant } from '../views';
import { headOfSource } from './headOfSource';

/** An answer that files with the same header are read by. */
export interface RememberedAnswer {
	/** tells it apart from the others */
	header: string;
	/** of the columns, in small letters */
	names: string[];
	mapping: ColumnMapping;
	by: string;
	at: Instant;
	/** rides that were read by it, and one of them, where it can be corrected */
	rides: number;
	newestRideId: number | null;
}

/** Keeps an answer for all files with this header that come later. Belongs in the caller's transaction. */
export function rememberColumns(ledger: Ledger, actor: Actor, header: string, mapping: ColumnMapping): void {
	ledger.database
		.prepare(
			`INSERT INTO column_mapping (header, mapping, actor_id, said_ms) VALUES (?, ?, ?, ?)
			ON CONFLICT (header) DO UPDATE SET mapping = excluded.mapping, actor_id = excluded.actor_id,
				said_ms = excluded.said_ms`
		)
		.run(header, JSON.stringify(mapping), actor.personId, ledger.now());
}

/** The answers that are remembered, the newest first. */
export function rememberedAnswers(ledger: Ledger): RememberedAnswer[] {
	const { database, folder } = ledger;
	const read = database.prepare<[string], { rideId: number; sha256: string }>(
		`SELECT r.id AS rideId, r.sha256 FROM ride r JOIN source_columns c ON c.sha256 = r.sha256
		WHERE c.mapping = ? ORDER BY r.id DESC`
	);
	return database
		.prepare<[], { header: string; mapping: string; by: string; saidMs: number }>(
			`SELECT m.header, m.mapping, p.code AS by, m.said_ms AS saidMs FROM column_mapping m
			JOIN person p ON p.id = m.actor_id ORDER BY m.said_ms DESC, m.header`
		)
		.all()
		.map(({ header, mapping, by, saidMs }) => {
			// the header lies in the files, not in the ledger: the same answer may stand for two of them
			const rides = read.all(mapping).filter(({ sha256 }) => headOfSource(folder, sha256)?.key === header);
			return {
				header,
				names: (JSON.parse(header) as string[]).slice(1),
				mapping: JSON.parse(mapping) as ColumnMapping,
				by,
				at: toInstant(saidMs),
				rides: rides.length,
				newestRideId: rides[0]?.rideId ?? null
			};
		});
}

/**
 * Forgets an answer: the next file with this header asks. Rides that were read by it stay as they are.
 *
 * @throws LedgerRefusal not-found
 */
export function forgetColumns(ledger: Ledger, actor: Actor, header: string): void {
	ledger.database
		.transaction(() => {
			const mapping = ledger.database
				.prepare<[string], string>('DELETE FROM column_mapping WHERE header = ? RETURNING mapping')
				.pluck()
				.get(header);
			if (mapping === undefined) throw new LedgerRefusal('not-found', 'This answer was forgotten already.');
			leaveTrail(ledger, actor, 'forgot the columns of', 'table header', header, {
				columns: { before: JSON.parse(mapping) as object, after: null }
			});
		})
		.immediate();
}
