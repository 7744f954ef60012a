import Database from 'better-sqlite3';
import { LedgerRefusal } from '../refusal';

/** One step of a database's layout. Once shipped it is never changed. */
export interface Migration {
	/** 1, 2, 3 ... without a gap */
	readonly number: number;
	readonly sql: string;
}

/**
 * Brings a database file to the newest layout, each step in its own transaction, with the file to itself:
 * while another process has it open, nothing is changed. `user_version` holds the last step that is in.
 *
 * @param file path of the database; made when it does not exist
 * @param migrations in order of their numbers
 * @param waitMs how long to wait for others to close the file
 * @throws LedgerRefusal newer-ledger when the file knows steps that this program does not;
 *   ledger-in-use when another process keeps it open
 */
export function migrate(file: string, migrations: readonly Migration[], waitMs = 5000): void {
	const newest = migrations[migrations.length - 1]?.number ?? 0;
	const database = new Database(file, { timeout: waitMs });
	try {
		const before = versionOf(database);
		refuseNewer(before, newest);
		if (before === newest) return;
		database.pragma('journal_mode = WAL');
		takeForOneself(database);
		for (const step of migrations) {
			if (step.number <= versionOf(database)) continue;
			database.transaction(() => {
				database.exec(step.sql);
				database.pragma(`user_version = ${step.number}`);
			})();
		}
	} finally {
		database.close();
	}
}

export function versionOf(database: Database.Database): number {
	return database.pragma('user_version', { simple: true }) as number;
}

export function refuseNewer(found: number, newest: number): void {
	if (found <= newest) return;
	throw new LedgerRefusal(
		'newer-ledger',
		`This ledger was written by a newer Slip Ledger (layout ${found}, this one knows ${newest}); nothing was changed. Update the program.`
	);
}

/** In WAL mode only an exclusive locking mode keeps readers out, and it is refused while anyone is in. */
function takeForOneself(database: Database.Database): void {
	database.pragma('locking_mode = EXCLUSIVE');
	try {
		database.exec('BEGIN EXCLUSIVE; COMMIT');
	} catch (error) {
		if (!(error instanceof Database.SqliteError) || !error.code.startsWith('SQLITE_BUSY')) throw error;
		throw new LedgerRefusal(
			'ledger-in-use',
			'The ledger has to be brought to a new layout, but another Slip Ledger has it open; close that one first.'
		);
	}
}
