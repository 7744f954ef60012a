import Database from 'better-sqlite3';
import { LedgerRefusal } from '../refusal';
import { faultPoint } from '../store/faultPoint';

/** One step of a database's layout. Once shipped it is never changed. */
export interface Migration {
	/** 1, 2, 3 ... without a gap */
	readonly number: number;
	readonly sql: string;
}

export type BeforeSteps = (database: Database.Database, from: number, to: number) => unknown;

const SHORTEST_PAUSE_MS = 15;
const LONGEST_PAUSE_MS = 60;

/**
 * Brings a database file to the newest layout, each step in its own transaction, with the file to itself:
 * while another process has it open, nothing is changed. `user_version` holds the last step that is in.
 * Between attempts the file is closed, or two processes that start at once would keep each other out.
 *
 * @param file path of the database; made when it does not exist
 * @param migrations in order of their numbers
 * @param waitMs how long to wait for others to close the file
 * @param before called once, with the file to itself, before the first step; what it throws ends all
 * @throws LedgerRefusal newer-ledger when the file knows steps that this program does not;
 *   ledger-in-use when another process keeps it open
 */
export function migrate(
	file: string,
	migrations: readonly Migration[],
	waitMs = 5000,
	before: BeforeSteps = () => {}
): void {
	const giveUpAt = performance.now() + waitMs;
	while (!bringToNewest(file, migrations, before)) {
		if (performance.now() >= giveUpAt)
			throw new LedgerRefusal(
				'ledger-in-use',
				'The ledger has to be brought to a new layout, but another Slip Ledger has it open; close that one first.'
			);
		pause(SHORTEST_PAUSE_MS + Math.random() * (LONGEST_PAUSE_MS - SHORTEST_PAUSE_MS));
	}
}

/** @returns false when another process has the file open; nothing was changed then */
function bringToNewest(file: string, migrations: readonly Migration[], beforeSteps: BeforeSteps): boolean {
	const newest = migrations[migrations.length - 1]?.number ?? 0;
	const database = new Database(file, { timeout: SHORTEST_PAUSE_MS });
	try {
		const before = versionOf(database);
		refuseNewer(before, newest);
		if (before === newest) return true;
		database.pragma('journal_mode = WAL');
		// in WAL mode only an exclusive locking mode keeps readers out, and it is refused while anyone is in
		database.pragma('locking_mode = EXCLUSIVE');
		database.exec('BEGIN EXCLUSIVE; COMMIT');
		beforeSteps(database, before, newest);
		for (const step of migrations) {
			if (step.number <= versionOf(database)) continue;
			database.transaction(() => {
				database.exec(step.sql);
				faultPoint('migration-step');
				database.pragma(`user_version = ${step.number}`);
			})();
		}
		faultPoint('migration-done');
		return true;
	} catch (error) {
		if (error instanceof Database.SqliteError && /^SQLITE_(BUSY|PROTOCOL)/.test(error.code)) return false;
		throw error;
	} finally {
		database.close();
	}
}

/** Waits without giving way to other work: the ledger is not open yet, so there is none. */
function pause(ms: number): void {
	Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, ms);
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
