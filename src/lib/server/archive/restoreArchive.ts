import Database from 'better-sqlite3';
import { randomBytes } from 'node:crypto';
import { rmSync } from 'node:fs';
import { statfs } from 'node:fs/promises';
import { join } from 'node:path';
import { migrate, refuseNewer } from '../ledger/migrate';
import { LEDGER_MIGRATIONS } from '../ledger/migrations';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import { faultPoint } from '../store/faultPoint';
import { archiveTables, quoted, type ArchiveTable } from './archiveTables';
import { noArchive, tablePath } from './manifest';
import { openArchive, type OpenArchive } from './openArchive';
import { readTable } from './readTable';
import { refuseUnlessEmpty } from './refuseUnlessEmpty';
import { restoreFiles } from './restoreFiles';
import { asRefusal, takeOver } from './takeOver';

export interface RestoreOutcome {
	tables: number;
	rows: number;
	/** sources and attachments that are in the store now */
	files: number;
	/** those that the ledger knows and the archive does not hold */
	missing: number;
	/** names of people came along; else codes stand for them */
	names: boolean;
}

/**
 * Makes an archive the content of an empty ledger. Everything is read into a database of its own first, under
 * the rules of the ledger's layout, and brought to the newest one; then it becomes visible in one step.
 *
 * @throws LedgerRefusal conflict when the ledger is not empty; newer-ledger; too-large; incomplete;
 *   disk-full; wrong-value: nothing was changed then
 */
export async function restoreArchive(ledger: Ledger, path: string): Promise<RestoreOutcome> {
	refuseUnlessEmpty(ledger);
	const archive = await openArchive(path);
	const aside = join(ledger.folder, 'incoming', `restore-${randomBytes(16).toString('hex')}.sqlite`);
	let removeFiles = () => {};
	try {
		await refuseFullDisk(ledger, archive);
		const rows = await readAside(archive, aside);
		faultPoint('restore-read');
		const files = await restoreFiles(ledger, archive);
		removeFiles = files.remove;
		faultPoint('restore-files');
		const tables = takeOver(ledger, aside);
		faultPoint('restore-done');
		return { tables, rows, files: files.stored, missing: files.missing, names: archive.manifest.names };
	} catch (error) {
		removeFiles();
		throw error;
	} finally {
		archive.close();
		for (const ending of ['', '-wal', '-shm']) rmSync(aside + ending, { force: true });
	}
}

/** Unpacked, once more in the database aside, and room to work. */
async function refuseFullDisk(ledger: Ledger, archive: OpenArchive): Promise<void> {
	const { bavail, bsize } = await statfs(ledger.folder);
	if (bavail * bsize < 2 * archive.unpackedBytes + 64 * 2 ** 20)
		throw new LedgerRefusal(
			'disk-full',
			'The disk has too little room for this archive; nothing was changed.'
		);
}

/** @returns the number of rows */
async function readAside(archive: OpenArchive, aside: string): Promise<number> {
	const { manifest } = archive;
	const newest = LEDGER_MIGRATIONS[LEDGER_MIGRATIONS.length - 1].number;
	refuseNewer(manifest.layout, newest);
	migrate(
		aside,
		LEDGER_MIGRATIONS.filter(({ number }) => number <= manifest.layout)
	);
	const database = new Database(aside);
	let rows = 0;
	try {
		database.pragma('synchronous = OFF');
		database.exec('BEGIN; PRAGMA defer_foreign_keys = ON');
		const tables = archiveTables(database);
		const unknown = manifest.tables.find(({ name }) => tables.every((table) => table.name !== name));
		if (unknown) throw noArchive(`its table ${unknown.name.slice(0, 64)} is none of this layout`);
		for (const table of tables) {
			const expected = manifest.tables.find(({ name }) => name === table.name);
			if (!expected) throw noArchive(`the table ${table.name} is missing`);
			const insert = inserter(database, table);
			await readTable(await archive.read(tablePath(table.name)), table, expected, (row) => {
				insert(table.columns.map(({ name }) => row[name]));
				rows++;
			});
		}
		refuseLooseEnds(database);
		database.exec('COMMIT');
	} catch (error) {
		throw asRefusal(error);
	} finally {
		database.close();
	}
	migrate(aside, LEDGER_MIGRATIONS);
	return rows;
}

function inserter(database: Database.Database, table: ArchiveTable): (values: unknown[]) => void {
	const columns = table.columns.map(({ name }) => quoted(name)).join(', ');
	const holders = table.columns.map(() => '?').join(', ');
	// a fresh ledger holds nothing, but a step of its layout may have put a first row there
	database.exec(`DELETE FROM ${quoted(table.name)}`);
	const statement = database.prepare(`INSERT INTO ${quoted(table.name)} (${columns}) VALUES (${holders})`);
	return (values) => statement.run(values);
}

function refuseLooseEnds(database: Database.Database): void {
	const [loose] = database.pragma('foreign_key_check') as { table: string; parent: string }[];
	if (loose) throw noArchive(`a row of ${loose.table} refers to a row of ${loose.parent} that is not there`);
}
