import Database from 'better-sqlite3';
import { join } from 'node:path';
import type { Ledger } from '../ledger/openLedger';

/**
 * The ledger as it is now, for reading at leisure: a connection of its own in one read transaction, so that
 * writes of others do not come in between. Close it when done.
 */
export function snapshot(ledger: Ledger): Database.Database {
	const database = new Database(join(ledger.folder, 'ledger.sqlite'), { readonly: true, timeout: 10_000 });
	database.exec('BEGIN');
	// the first read is what fixes the state
	database.prepare('SELECT count(*) FROM sqlite_master').get();
	return database;
}
