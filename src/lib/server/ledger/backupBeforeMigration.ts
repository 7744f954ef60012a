import type Database from 'better-sqlite3';
import {
	closeSync,
	existsSync,
	fsyncSync,
	mkdirSync,
	openSync,
	renameSync,
	rmSync,
	statfsSync,
	statSync
} from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { LedgerRefusal } from '../refusal';
import { faultPoint } from '../store/faultPoint';
import { syncFolder } from '../store/sourceStore';

/** where a ledger's copies from before its changes of layout lie, beside it */
export const OLD_LAYOUTS = 'backups';
const SPARE_BYTES = 16 * 2 ** 20;

/**
 * Keeps a copy of a ledger that somebody has written in, before its layout changes: the program that wrote it
 * can open the copy. An empty ledger needs none.
 *
 * @param database the ledger, held by this process alone
 * @param from its layout now
 * @param to the layout that comes
 * @returns path of the copy; null when none was needed
 * @throws LedgerRefusal disk-full; nothing was changed then
 */
export function backupBeforeMigration(
	database: Database.Database,
	from: number,
	to: number,
	nowMs: number
): string | null {
	if (from === 0 || !database.prepare('SELECT 1 FROM person LIMIT 1').get()) return null;
	const folder = join(dirname(database.name), OLD_LAYOUTS);
	const stamp = new Date(nowMs).toISOString().slice(0, 19).replaceAll(':', '');
	const name = `${basename(database.name, '.sqlite')}-layout-${from}-before-${to}-${stamp}Z.sqlite`;
	const path = join(folder, name);
	const part = `${path}.part`;
	if (existsSync(path)) return path;
	try {
		mkdirSync(folder, { recursive: true });
		refuseFullDisk(database, folder);
		rmSync(part, { force: true });
		database.prepare('VACUUM INTO ?').run(part);
		const file = openSync(part, 'r+');
		try {
			fsyncSync(file);
		} finally {
			closeSync(file);
		}
		renameSync(part, path);
		syncFolder(folder);
	} catch (error) {
		rmSync(part, { force: true });
		const { code } = error as { code?: string };
		if (code === 'SQLITE_FULL' || code === 'ENOSPC' || code === 'EDQUOT') throw noRoom();
		throw error;
	}
	faultPoint('migration-backed-up');
	return path;
}

function refuseFullDisk(database: Database.Database, folder: string): void {
	const { bavail, bsize } = statfsSync(folder);
	// the copy, and as much again for the change itself
	const needed = 2 * statSync(database.name).size + SPARE_BYTES;
	if (bavail * bsize < needed) throw noRoom();
}

function noRoom(): LedgerRefusal {
	return new LedgerRefusal(
		'disk-full',
		'The ledger has to be brought to a new layout, and a copy of it is kept first, but the disk is too full for that; nothing was changed. Make room and start again.'
	);
}
