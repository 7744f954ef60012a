import { randomBytes } from 'node:crypto';
import { createReadStream, existsSync, mkdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { dirname } from 'node:path';
import { hashFile, sourcePath, syncFolder, writeThrough } from '../store/sourceStore';
import type { BackupSource, BackupSourceState } from './backupManifest';

export interface SourceRow {
	readonly sha256: string;
	readonly bytes: number;
	/** 1 = a tombstone stands for it */
	readonly erased: number;
}

/**
 * Brings what the backup does not hold yet into it, each file under its hash and only when its bytes have that
 * hash. What is there already is not read again unless `check` is set.
 *
 * @param from data folder
 * @param to backup folder
 */
export async function copySources(
	from: string,
	to: string,
	rows: readonly SourceRow[],
	check: boolean
): Promise<{ sources: BackupSource[]; added: number }> {
	const sources: BackupSource[] = [];
	const folders = new Set<string>();
	let added = 0;
	for (const { sha256, bytes, erased } of rows) {
		const target = sourcePath(to, sha256);
		if (erased) rmSync(target, { force: true });
		let state: BackupSourceState = erased ? 'erased' : 'kept';
		if (!erased && !(await isThere(target, sha256, bytes, check))) {
			state = await copyOne(sourcePath(from, sha256), target, sha256, bytes);
			if (state === 'kept') {
				added++;
				folders.add(dirname(target));
			}
		}
		sources.push({ sha256, bytes, state });
	}
	for (const folder of folders) syncFolder(folder);
	return { sources, added };
}

async function isThere(path: string, sha256: string, bytes: number, check: boolean): Promise<boolean> {
	if (statSync(path, { throwIfNoEntry: false })?.size !== bytes) return false;
	return !check || (await hashFile(path)) === sha256;
}

async function copyOne(from: string, to: string, sha256: string, bytes: number): Promise<BackupSourceState> {
	if (!existsSync(from)) return 'missing';
	mkdirSync(dirname(to), { recursive: true });
	const part = `${to}.${randomBytes(8).toString('hex')}.part`;
	try {
		const written = await writeThrough(part, createReadStream(from), Infinity);
		if (written.sha256 !== sha256 || written.size !== bytes) return 'damaged';
		renameSync(part, to);
		return 'kept';
	} finally {
		rmSync(part, { force: true });
	}
}
