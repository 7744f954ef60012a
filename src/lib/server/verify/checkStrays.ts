import type Database from 'better-sqlite3';
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { storedFiles } from './storedFiles';
import { PartFindings } from './verifyReport';

/** what is younger may be on its way into the ledger */
const ON_ITS_WAY_MS = 10 * 60 * 1000;

/**
 * Files that no row names. None of them was accepted, so nothing is lost with them: they are notes. After a
 * ledger was put back from an old copy they are the rides that came since.
 */
export function checkStrays(dataFolder: string, database: Database.Database, nowMs: number): PartFindings {
	const found = new PartFindings();
	const known = database.prepare<[string], unknown>('SELECT 1 FROM source WHERE sha256 = ?');
	const coming = database.prepare<[string], unknown>('SELECT 1 FROM upload WHERE sha256 = ?');
	for (const file of storedFiles(dataFolder)) {
		found.checked++;
		const sha256 = file.slice(3);
		const named = /^[0-9a-f]{64}$/.test(sha256) && file.startsWith(`${sha256.slice(0, 2)}/`);
		if (!named) found.note(file, 'This file in the store is not named by a SHA-256.');
		else if (!known.get(sha256) && !coming.get(sha256) && isOld(join(dataFolder, 'sources', file), nowMs))
			found.note(sha256, 'No row of the ledger names this file; import it if it is a ride.');
	}
	const upload = database.prepare<[string], unknown>('SELECT 1 FROM upload WHERE id = ? AND finished = 0');
	for (const name of incoming(dataFolder)) {
		found.checked++;
		if (!upload.get(name) && isOld(join(dataFolder, 'incoming', name), nowMs))
			found.note(name, 'A leftover of something that broke off; it goes by itself after two days.');
	}
	checkArchives(dataFolder, database, found);
	return found;
}

/** An archive that waits must be there; its files are not in the store yet. */
function checkArchives(dataFolder: string, database: Database.Database, found: PartFindings): void {
	const columns = database.pragma('table_info(import)') as { name: string }[];
	// a ledger of an older layout knows no archives
	if (!columns.some(({ name }) => name === 'archive_sha256')) return;
	const waiting = database
		.prepare<[], { sha256: string }>(
			"SELECT DISTINCT archive_sha256 AS sha256 FROM import WHERE stage IN ('unpacking', 'failed') AND sha256 IS NULL"
		)
		.all();
	for (const { sha256 } of waiting) {
		found.checked++;
		if (!existsSync(join(dataFolder, 'archives', sha256)))
			found.damage(
				sha256,
				'This archive was not unpacked to its end, and its bytes are gone; hand it in again.'
			);
	}
}

function incoming(dataFolder: string): string[] {
	try {
		return readdirSync(join(dataFolder, 'incoming')).sort();
	} catch {
		return [];
	}
}

function isOld(path: string, nowMs: number): boolean {
	const changedMs = statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? Infinity;
	return nowMs - changedMs > ON_ITS_WAY_MS;
}
