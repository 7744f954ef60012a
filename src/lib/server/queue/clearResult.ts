import type { Ledger } from '../ledger/openLedger';

/**
 * Takes away all that hangs on one result of a ride but the result itself and its events, whichever tables
 * refer to it, so that a new one can take its place. Belongs in the caller's transaction.
 *
 * @returns ids of the events that are still there: they go when the new ones are in, so that no id is used
 *   again for another event of this ride while a page with the old one is open
 */
export function clearResult(ledger: Ledger, rideId: number, version: number): readonly number[] {
	const { database } = ledger;
	for (const table of tablesOfResults(ledger)) {
		if (table === 'slip_event') continue;
		database.prepare(`DELETE FROM ${table} WHERE ride_id = ? AND version = ?`).run(rideId, version);
	}
	return database
		.prepare<[number, number], { id: number }>('SELECT id FROM slip_event WHERE ride_id = ? AND version = ?')
		.all(rideId, version)
		.map(({ id }) => id);
}

export function removeEvents(ledger: Ledger, ids: readonly number[]): void {
	const remove = ledger.database.prepare('DELETE FROM slip_event WHERE id = ?');
	for (const id of ids) remove.run(id);
}

/** asked for at every ride; no layout changes while somebody has the ledger open */
const tables = new WeakMap<Ledger, readonly string[]>();

/** Tables whose rows belong to a result, by what they themselves declare. Names come from the layout alone. */
export function tablesOfResults(ledger: Ledger): readonly string[] {
	const known = tables.get(ledger) ?? readTables(ledger);
	tables.set(ledger, known);
	return known;
}

function readTables(ledger: Ledger): readonly string[] {
	return ledger.database
		.prepare<[], { name: string }>(
			`SELECT DISTINCT m.name FROM sqlite_master m JOIN pragma_foreign_key_list(m.name) f
			WHERE m.type = 'table' AND f."table" = 'result' ORDER BY m.name`
		)
		.all()
		.map(({ name }) => name);
}
