import Database from 'better-sqlite3';
import type { Ledger } from '../ledger/openLedger';
import { archiveTables, quoted } from './archiveTables';
import { noArchive } from './manifest';
import { refuseUnlessEmpty } from './refuseUnlessEmpty';

/**
 * Copies every table of a database aside into an empty ledger, in one transaction: what is read aside becomes
 * visible at once or not at all.
 *
 * @param aside path of a database of the newest layout
 * @returns the number of tables
 * @throws LedgerRefusal conflict when the ledger is not empty; wrong-value for rows that break its rules
 */
export function takeOver(ledger: Ledger, aside: string): number {
	const { database } = ledger;
	database.prepare('ATTACH ? AS aside').run(aside);
	try {
		return database
			.transaction((): number => {
				database.pragma('defer_foreign_keys = ON');
				refuseUnlessEmpty(ledger);
				const tables = archiveTables(database);
				for (const { name, columns } of tables) {
					const list = columns.map((column) => quoted(column.name)).join(', ');
					database.exec(
						`INSERT INTO main.${quoted(name)} (${list}) SELECT ${list} FROM aside.${quoted(name)}`
					);
				}
				return tables.length;
			})
			.immediate();
	} catch (error) {
		throw asRefusal(error);
	} finally {
		database.exec('DETACH aside');
	}
}

/** A row that breaks a rule of the ledger's layout. */
export function asRefusal(error: unknown): unknown {
	if (!(error instanceof Database.SqliteError) || !error.code.startsWith('SQLITE_CONSTRAINT')) return error;
	return noArchive(`a row breaks a rule of the ledger (${error.message})`);
}
