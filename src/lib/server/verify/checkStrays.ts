import type Database from 'better-sqlite3';
import { readdirSync, statSync } from 'node:fs';
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
	return found;
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
