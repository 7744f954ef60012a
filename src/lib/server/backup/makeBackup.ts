import Database from 'better-sqlite3';
import { randomBytes } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { statfs } from 'node:fs/promises';
import { join, relative, resolve } from 'node:path';
import { versionOf } from '../ledger/migrate';
import type { Actor } from '../actor';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import { faultPoint } from '../store/faultPoint';
import { hashFile, sourcePath, syncFolder } from '../store/sourceStore';
import { BACKUP_FORMAT, BACKUP_FORMAT_VERSION, type BackupManifest } from './backupManifest';
import { ERASED_LIST, generationName, LEDGERS, listGenerations, PARTIAL } from './backupPlaces';
import { asBackupRefusal, copyLedger } from './copyLedger';
import { copySources, type SourceRow } from './copySources';
import { writeWhole } from './writeWhole';

export interface BackupOptions {
	/** how many dated ledgers stay; the oldest go */
	readonly keep?: number;
	/** read again what the backup holds already */
	readonly check?: boolean;
}

export interface BackupOutcome {
	/** path of the new generation */
	generation: string;
	sources: number;
	added: number;
	/** SHA-256 of sources that could not be copied */
	missing: string[];
	damaged: string[];
	generations: number;
}

export const DEFAULT_KEPT_GENERATIONS = 30;
const SPARE_BYTES = 32 * 2 ** 20;
const STALE_AFTER_MS = 24 * 3600 * 1000;

/**
 * Copies the ledger and what is new in the store into a folder, while the server runs. A generation becomes
 * one by its last step, a rename; whatever breaks off before leaves the earlier ones as they were.
 *
 * @param actor whose backup the trail names; null = nobody is in the ledger yet
 * @throws LedgerRefusal wrong-value for a folder within the data folder; disk-full; folder-not-writable;
 *   ledger-damaged
 */
export async function makeBackup(
	ledger: Ledger,
	actor: Actor | null,
	target: string,
	options: BackupOptions = {}
): Promise<BackupOutcome> {
	const folder = resolve(target);
	refuseWithin(ledger.folder, folder);
	const partial = join(folder, LEDGERS, `${PARTIAL}${randomBytes(8).toString('hex')}`);
	makeFolders(folder, partial);
	try {
		removeStale(folder, ledger.now());
		await refuseFullDisk(ledger, folder);
		const outcome = await writeGeneration(ledger, folder, partial, options);
		faultPoint('backup-named');
		if (actor)
			leaveTrail(ledger, actor, 'backed up', 'ledger', 'backup', {
				folder,
				generation: relative(folder, outcome.generation)
			});
		faultPoint('backup-done');
		return outcome;
	} catch (error) {
		throw asBackupRefusal(error);
	} finally {
		rmSync(partial, { recursive: true, force: true });
	}
}

async function writeGeneration(
	ledger: Ledger,
	folder: string,
	partial: string,
	options: BackupOptions
): Promise<BackupOutcome> {
	const made = ledger.now();
	const copy = join(partial, 'ledger.sqlite');
	await copyLedger(ledger, copy);
	faultPoint('backup-ledger');
	const { rows, layout } = readCopy(copy);
	const { sources, added } = await copySources(ledger.folder, folder, rows, options.check === true);
	faultPoint('backup-sources');
	writeWhole(
		join(folder, ERASED_LIST),
		JSON.stringify(rows.filter(({ erased }) => erased).map(({ sha256 }) => sha256))
	);
	const manifest: BackupManifest = {
		format: BACKUP_FORMAT,
		formatVersion: BACKUP_FORMAT_VERSION,
		layout,
		madeAt: new Date(made).toISOString(),
		ledger: { bytes: statSync(copy).size, sha256: await hashFile(copy) },
		sources
	};
	writeWhole(join(partial, 'manifest.json'), `${JSON.stringify(manifest, null, '\t')}\n`);
	faultPoint('backup-manifest');
	const generation = freeName(join(folder, LEDGERS, generationName(made)));
	renameSync(partial, generation);
	syncFolder(join(folder, LEDGERS));
	const withState = (state: string) =>
		sources.filter((source) => source.state === state).map(({ sha256 }) => sha256);
	return {
		generation,
		sources: withState('kept').length,
		added,
		missing: withState('missing'),
		damaged: withState('damaged'),
		generations: removeOldest(folder, options.keep ?? DEFAULT_KEPT_GENERATIONS)
	};
}

function readCopy(path: string): { rows: SourceRow[]; layout: number } {
	const database = new Database(path, { readonly: true });
	try {
		const rows = database
			.prepare<[], SourceRow>(
				`SELECT sha256, bytes, EXISTS (SELECT 1 FROM erased_source e WHERE e.sha256 = s.sha256) AS erased
				FROM source s ORDER BY sha256`
			)
			.all();
		return { rows, layout: versionOf(database) };
	} finally {
		database.close();
	}
}

function refuseWithin(dataFolder: string, folder: string): void {
	const way = relative(resolve(dataFolder), folder);
	if (way !== '' && (way.startsWith('..') || resolve(way) === way)) return;
	throw new LedgerRefusal(
		'wrong-value',
		'A backup within the data folder is lost together with it; name a folder elsewhere, best on another disk.'
	);
}

function makeFolders(folder: string, partial: string): void {
	try {
		mkdirSync(join(folder, 'sources'), { recursive: true });
		mkdirSync(partial, { recursive: true });
	} catch (error) {
		const { code } = error as NodeJS.ErrnoException;
		if (code === 'ENOSPC') throw asBackupRefusal(error);
		throw new LedgerRefusal(
			'folder-not-writable',
			`The folder ${folder} cannot be used for a backup (${code}).`
		);
	}
}

/** What is written can be reckoned beforehand; half a backup would only take room away. */
async function refuseFullDisk(ledger: Ledger, folder: string): Promise<void> {
	let needed = statSync(join(ledger.folder, 'ledger.sqlite')).size + SPARE_BYTES;
	const rows = ledger.database
		.prepare<[], { sha256: string; bytes: number }>(
			'SELECT sha256, bytes FROM source WHERE sha256 NOT IN (SELECT sha256 FROM erased_source)'
		)
		.all();
	for (const { sha256, bytes } of rows) if (!existsSync(sourcePath(folder, sha256))) needed += bytes;
	const { bavail, bsize } = await statfs(folder);
	if (bavail * bsize < needed)
		throw new LedgerRefusal(
			'disk-full',
			`The disk of the backup has room for ${megabytes(bavail * bsize)} MB and ${megabytes(needed)} MB are needed; nothing was written.`
		);
}

const megabytes = (bytes: number) => Math.ceil(bytes / 2 ** 20);

function freeName(path: string): string {
	for (let i = 1; ; i++) {
		const name = i === 1 ? path : `${path}-${i}`;
		if (!existsSync(name)) return name;
	}
}

/** @returns how many are left */
function removeOldest(folder: string, keep: number): number {
	const all = listGenerations(folder);
	const over = all.slice(0, Math.max(0, all.length - Math.max(1, keep)));
	for (const name of over) {
		// first out of the list, then off the disk: a kill in between leaves no half of one
		const going = join(folder, LEDGERS, `${PARTIAL}old-${name}`);
		renameSync(join(folder, LEDGERS, name), going);
		rmSync(going, { recursive: true, force: true });
	}
	return all.length - over.length;
}

/** What a backup left behind that was killed. */
function removeStale(folder: string, nowMs: number): void {
	const ledgers = join(folder, LEDGERS);
	for (const name of readdirSync(ledgers)) {
		if (!name.startsWith(PARTIAL)) continue;
		const old = nowMs - statSync(join(ledgers, name)).mtimeMs > STALE_AFTER_MS;
		if (old || name.startsWith(`${PARTIAL}old-`))
			rmSync(join(ledgers, name), { recursive: true, force: true });
	}
}
