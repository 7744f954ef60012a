import { existsSync, rmSync } from 'node:fs';
import { dirname } from 'node:path';
import type { Ledger } from '../ledger/openLedger';
import { removeChannels } from '../queue/saveChannels';
import { faultPoint } from '../store/faultPoint';
import { archivePath, dropArchive, dropGoing, dropMembers } from '../store/archivePlace';
import { sourcePath, syncFolder } from '../store/sourceStore';
import { ERASED_ARCHIVE } from './buryLeftovers';

/**
 * Takes away what tombstones stand for: files in the store, traces, and bytes of archives. Called after an erasure and at each
 * start, so that one which broke off in the middle is brought to its end. What SQLite removes it overwrites
 * (`secure_delete`, see openLedger); the logs are emptied.
 *
 * @param emptyLogs also where nothing was there any more: names may have gone out of tables
 * @returns how many files or traces were still there
 */
export function finishErasures(ledger: Ledger, emptyLogs = false): number {
	const hashes = ledger.database
		.prepare<[], string>('SELECT sha256 FROM erased_source ORDER BY sha256')
		.pluck()
		.all();
	let found = dropErasedArchives(ledger);
	const traced = ledger.channels.prepare('SELECT 1 FROM channel WHERE sha256 = ? LIMIT 1');
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
	if (found > 0 || emptyLogs)
		// busy readers may keep old pages in a log a while; the next checkpoint takes them
		for (const database of [ledger.database, ledger.channels]) database.pragma('wal_checkpoint(TRUNCATE)');
	return found;
}

/** Bytes of archives that an erasure took, and what was on its way out of them. */
function dropErasedArchives(ledger: Ledger): number {
	const { database, folder } = ledger;
	const archives = database
		.prepare<[string], { importId: number; sha256: string }>(
			'SELECT id AS importId, archive_sha256 AS sha256 FROM import WHERE code = ? AND archive_sha256 IS NOT NULL'
		)
		.all(ERASED_ARCHIVE);
	let found = 0;
	dropGoing(ledger);
	for (const { importId, sha256 } of archives) {
		if (existsSync(archivePath(folder, sha256))) found++;
		dropArchive(ledger, sha256);
		dropMembers(ledger, importId);
	}
	return found;
}

/** Whether a tombstone stands for a source. */
export function isErased(ledger: Ledger, sha256: string): boolean {
	return ledger.database.prepare('SELECT 1 FROM erased_source WHERE sha256 = ?').get(sha256) !== undefined;
}
