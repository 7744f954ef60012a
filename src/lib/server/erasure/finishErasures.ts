import { existsSync, rmSync } from 'node:fs';
import { dirname } from 'node:path';
import type { Ledger } from '../ledger/openLedger';
import { removeChannels } from '../queue/saveChannels';
import { faultPoint } from '../store/faultPoint';
import { sourcePath, syncFolder } from '../store/sourceStore';

/**
 * Takes away what tombstones stand for: files in the store and traces. Called after an erasure and at each
 * start, so that one which broke off in the middle is brought to its end. What SQLite removes it overwrites
 * (`secure_delete`, see openLedger); the logs are emptied.
 *
 * @returns how many files or traces were still there
 */
export function finishErasures(ledger: Ledger): number {
	const hashes = ledger.database
		.prepare<[], string>('SELECT sha256 FROM erased_source ORDER BY sha256')
		.pluck()
		.all();
	if (hashes.length === 0) return 0;
	const traced = ledger.channels.prepare('SELECT 1 FROM channel WHERE sha256 = ? LIMIT 1');
	let found = 0;
	for (const sha256 of hashes) {
		const path = sourcePath(ledger.folder, sha256);
		const hasTraces = traced.get(sha256) !== undefined;
		if (!existsSync(path) && !hasTraces) continue;
		found++;
		if (existsSync(path)) {
			rmSync(path);
			syncFolder(dirname(path));
		}
		faultPoint('erasure-file-gone');
		if (hasTraces) removeChannels(ledger, sha256);
	}
	if (found > 0)
		// busy readers may keep old pages in a log a while; the next checkpoint takes them
		for (const database of [ledger.database, ledger.channels]) database.pragma('wal_checkpoint(TRUNCATE)');
	return found;
}

/** Whether a tombstone stands for a source. */
export function isErased(ledger: Ledger, sha256: string): boolean {
	return ledger.database.prepare('SELECT 1 FROM erased_source WHERE sha256 = ?').get(sha256) !== undefined;
}
