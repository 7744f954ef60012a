import Database from 'better-sqlite3';
import { accessSync, constants, existsSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { LedgerRefusal } from '../refusal';
import { backupBeforeMigration } from './backupBeforeMigration';
import { keepStatements } from './keepStatements';
import { openingRefusal } from './openingRefusal';
import { migrate, refuseNewer, versionOf, type Migration } from './migrate';
import { CHANNEL_MIGRATIONS, LEDGER_MIGRATIONS } from './migrations';

/** Both databases and the folder they live in. Functions of this room take it first. */
export interface Ledger {
	readonly folder: string;
	/** what people wrote and what was counted */
	readonly database: Database.Database;
	/** traces of rides: can be derived again from the sources; opened when first asked for */
	readonly channels: Database.Database;
	/** milliseconds since 1970 UTC */
	now(): number;
	close(): void;
}

export interface OpenOptions {
	/** true brings an older ledger to this program's layout first; false refuses an older one */
	readonly migrate: boolean;
	/** true opens an up-to-date ledger so that nothing can be written through it */
	readonly forReading?: boolean;
	/** the clock; tests set their own */
	readonly now?: () => number;
}

const BUSY_TIMEOUT_MS = 10_000;
/** kilobytes; what the queue and the pages use again and again of a ledger of 10,000 rides fits in */
const LEDGER_CACHE_KB = 6144;
const CHANNEL_CACHE_KB = 2048;

/**
 * Opens the ledger in a folder; makes the folder and an empty ledger when there is none and `migrate` is
 * set. Several processes may have the same ledger open.
 *
 * @throws LedgerRefusal folder-not-writable, disk-full, ledger-damaged, newer-ledger, ledger-in-use (while
 *   migrating) or ledger-not-migrated; nothing was changed then
 */
export function openLedger(folder: string, options: OpenOptions): Ledger {
	makeFolders(folder);
	try {
		return openIn(folder, options);
	} catch (error) {
		throw openingRefusal(error, folder);
	}
}

function openIn(folder: string, options: OpenOptions): Ledger {
	const ledgerFile = join(folder, 'ledger.sqlite');
	const channelFile = join(folder, 'channels.sqlite');
	if (options.migrate) {
		const now = options.now ?? Date.now;
		migrate(ledgerFile, LEDGER_MIGRATIONS, undefined, (database, from, to) =>
			backupBeforeMigration(database, from, to, now())
		);
		migrate(channelFile, CHANNEL_MIGRATIONS);
	}
	// FULL: a verdict or a stored ride survives a power cut; there are few writes.
	const readonly = options.forReading ?? false;
	const database = open(ledgerFile, LEDGER_MIGRATIONS, 'FULL', readonly);
	database.pragma(`cache_size = -${LEDGER_CACHE_KB}`);
	let channels: Database.Database | null = null;
	return {
		folder,
		database,
		get channels() {
			// NORMAL: what a power cut takes from here is derived again.
			if (!channels) {
				channels = open(channelFile, CHANNEL_MIGRATIONS, 'NORMAL', readonly);
				// traces are read once and written once: what stays of them in memory is of no use to anybody
				channels.pragma(`cache_size = -${CHANNEL_CACHE_KB}`);
			}
			return channels;
		},
		now: options.now ?? Date.now,
		close() {
			channels?.close();
			database.close();
		}
	};
}

function open(
	file: string,
	migrations: readonly Migration[],
	synchronous: 'FULL' | 'NORMAL',
	readonly: boolean
): Database.Database {
	if (!existsSync(file)) throw notMigrated();
	const database = new Database(file, { timeout: BUSY_TIMEOUT_MS, readonly });
	try {
		const newest = migrations[migrations.length - 1].number;
		refuseNewer(versionOf(database), newest);
		if (versionOf(database) < newest) throw notMigrated();
		database.pragma('foreign_keys = ON');
		database.pragma(`synchronous = ${synchronous}`);
		// what is taken out is overwritten: a replaced trace holds where somebody rode
		database.pragma('secure_delete = ON');
		keepStatements(database);
	} catch (error) {
		database.close();
		throw error;
	}
	return database;
}

function notMigrated(): LedgerRefusal {
	return new LedgerRefusal(
		'ledger-not-migrated',
		'The ledger in this folder is missing or of an older layout; start Slip Ledger once, it brings the ledger up to date.'
	);
}

function makeFolders(folder: string): void {
	try {
		for (const part of ['', 'sources', 'incoming']) mkdirSync(join(folder, part), { recursive: true });
		accessSync(folder, constants.W_OK);
	} catch (error) {
		const reason = (error as NodeJS.ErrnoException).code ?? String(error);
		throw new LedgerRefusal(
			'folder-not-writable',
			`The folder ${folder} cannot be used for the ledger (${reason}); choose another with --data or SLIP_LEDGER_DATA.`
		);
	}
}
