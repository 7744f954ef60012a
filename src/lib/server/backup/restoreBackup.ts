import Database from 'better-sqlite3';
import { randomBytes } from 'node:crypto';
import { copyFileSync, createReadStream, existsSync, readFileSync, rmSync } from 'node:fs';
import { statfs } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import type { RestoreOutcome } from '../archive/restoreArchive';
import { refuseUnlessEmpty } from '../archive/refuseUnlessEmpty';
import { takeOver } from '../archive/takeOver';
import { migrate, refuseNewer } from '../ledger/migrate';
import { LEDGER_MIGRATIONS } from '../ledger/migrations';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import { faultPoint } from '../store/faultPoint';
import { hashFile, moveToStore, sourcePath, writeThrough } from '../store/sourceStore';
import { readBackupManifest, type BackupManifest } from './backupManifest';
import { ERASED_LIST, findGeneration } from './backupPlaces';

const SPARE_BYTES = 64 * 2 ** 20;

/**
 * Makes a generation of a backup the content of an empty ledger. Every hash is checked before anything is
 * written; sources that were erased since do not come back. Traces are made again from the sources.
 *
 * @param path backup folder (its newest generation is taken), or one generation in it
 * @throws LedgerRefusal conflict when the ledger is not empty; newer-ledger; incomplete when a hash does not
 *   agree; disk-full; wrong-value: nothing was changed then
 */
export async function restoreBackup(ledger: Ledger, path: string): Promise<RestoreOutcome> {
	refuseUnlessEmpty(ledger);
	const { folder, generation } = findGeneration(resolve(path));
	const manifest = readBackupManifest(generation);
	refuseNewer(manifest.layout, LEDGER_MIGRATIONS[LEDGER_MIGRATIONS.length - 1].number);
	const erased = readErased(folder);
	const kept = manifest.sources.filter(({ sha256, state }) => state === 'kept' && !erased.has(sha256));
	await refuseFullDisk(ledger, manifest, kept);
	await refuseWrongHashes(folder, generation, manifest, kept);
	const aside = join(ledger.folder, 'incoming', `restore-${randomBytes(16).toString('hex')}.sqlite`);
	const added: string[] = [];
	try {
		copyFileSync(join(generation, 'ledger.sqlite'), aside);
		const rows = prepareAside(aside, erased, ledger.now());
		faultPoint('restore-read');
		for (const { sha256, bytes } of kept)
			if (await copyIn(ledger, sourcePath(folder, sha256), sha256, bytes)) added.push(sha256);
		faultPoint('restore-files');
		const tables = takeOver(ledger, aside);
		faultPoint('restore-done');
		const missing = manifest.sources.filter(
			({ sha256, state }) => state !== 'kept' && state !== 'erased' && !erased.has(sha256)
		).length;
		return { tables, rows, files: kept.length, missing, names: true };
	} catch (error) {
		for (const sha256 of added) rmSync(sourcePath(ledger.folder, sha256), { force: true });
		throw error;
	} finally {
		for (const ending of ['', '-wal', '-shm', '-journal']) rmSync(aside + ending, { force: true });
	}
}

/** Brings the copy to the newest layout and takes out what belongs to a machine, as an archive leaves it out. */
function prepareAside(aside: string, erased: ReadonlySet<string>, nowMs: number): number {
	migrate(aside, LEDGER_MIGRATIONS);
	const database = new Database(aside);
	try {
		return database.transaction((): number => {
			database.exec(`DELETE FROM import WHERE stage = 'receiving';
				UPDATE import SET stage = 'waiting', owner = NULL WHERE stage = 'analysing';
				DELETE FROM setting WHERE name = 'ledgerMark'`);
			buryAgain(database, erased, nowMs);
			return countRows(database);
		})();
	} finally {
		database.close();
	}
}

/** Sources that were erased after this generation was made are tombstones in the restored ledger too. */
function buryAgain(database: Database.Database, erased: ReadonlySet<string>, nowMs: number): void {
	const bury = database.prepare(
		`INSERT OR IGNORE INTO erased_source (sha256, erased_ms, erased_by, reason)
		SELECT sha256, ?, (SELECT id FROM person WHERE role = 'owner' ORDER BY id LIMIT 1),
			'erased after this backup was made' FROM source WHERE sha256 = ?`
	);
	for (const sha256 of erased) bury.run(nowMs, sha256);
}

function countRows(database: Database.Database): number {
	const tables = database
		.prepare<[], { name: string }>(
			"SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%'"
		)
		.all();
	return tables.reduce(
		(sum, { name }) =>
			sum + database.prepare<[], { n: number }>(`SELECT count(*) AS n FROM "${name}"`).get()!.n,
		0
	);
}

function readErased(folder: string): ReadonlySet<string> {
	try {
		return new Set(JSON.parse(readFileSync(join(folder, ERASED_LIST), 'utf8')) as string[]);
	} catch (error) {
		if ((error as NodeJS.ErrnoException).code === 'ENOENT') return new Set();
		throw new LedgerRefusal(
			'incomplete',
			'The list of erased files in this backup cannot be read, so it is not known what must not come back. Nothing was changed.'
		);
	}
}

async function refuseFullDisk(
	ledger: Ledger,
	manifest: BackupManifest,
	kept: readonly { bytes: number }[]
): Promise<void> {
	const { bavail, bsize } = await statfs(ledger.folder);
	const needed = 2 * manifest.ledger.bytes + kept.reduce((sum, { bytes }) => sum + bytes, 0) + SPARE_BYTES;
	if (bavail * bsize < needed)
		throw new LedgerRefusal(
			'disk-full',
			'The disk has too little room for this backup; nothing was changed.'
		);
}

async function refuseWrongHashes(
	folder: string,
	generation: string,
	manifest: BackupManifest,
	kept: readonly { sha256: string }[]
): Promise<void> {
	const check = async (path: string, sha256: string, what: string) => {
		if (existsSync(path) && (await hashFile(path)) === sha256) return;
		throw new LedgerRefusal(
			'incomplete',
			`${what} in this backup is missing or does not have its SHA-256: it is damaged or was changed. Nothing was taken over; name an earlier one of its dated ledgers.`
		);
	};
	await check(join(generation, 'ledger.sqlite'), manifest.ledger.sha256, 'The ledger');
	for (const { sha256 } of kept)
		await check(sourcePath(folder, sha256), sha256, `The source ${sha256.slice(0, 12)}`);
}

/** @returns whether it was not in the store before */
async function copyIn(ledger: Ledger, from: string, sha256: string, bytes: number): Promise<boolean> {
	if (existsSync(sourcePath(ledger.folder, sha256))) return false;
	const path = join(ledger.folder, 'incoming', `restore-${randomBytes(16).toString('hex')}`);
	const written = await writeThrough(path, createReadStream(from), bytes);
	if (written.sha256 !== sha256) {
		rmSync(path, { force: true });
		throw new LedgerRefusal('incomplete', 'A source of the backup changed while it was read.');
	}
	moveToStore(ledger, path, sha256);
	return true;
}
