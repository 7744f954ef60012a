import { createHash } from 'node:crypto';
import { closeSync, existsSync, fsyncSync, mkdirSync, openSync, renameSync, rmSync } from 'node:fs';
import { open, type FileHandle } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { isErased } from '../erasure/finishErasures';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';

/** Where a source lies: two letters of its hash as a folder, so that no folder grows without bound. */
export function sourcePath(folder: string, sha256: string): string {
	if (!/^[0-9a-f]{64}$/.test(sha256)) throw new RangeError('not a SHA-256 in hex');
	return join(folder, 'sources', sha256.slice(0, 2), sha256);
}

/**
 * Copies a stream into a file on disk, hashing on the way, and waits until the disk has it.
 *
 * @param limitBytes more than this is refused, and the file is removed
 * @returns hash and size of what was written
 * @throws LedgerRefusal too-large
 */
export async function writeThrough(
	path: string,
	bytes: AsyncIterable<Uint8Array>,
	limitBytes: number
): Promise<{ sha256: string; size: number }> {
	const hash = createHash('sha256');
	let size = 0;
	const file = await open(path, 'wx');
	try {
		for await (const piece of bytes) {
			size += piece.byteLength;
			if (size > limitBytes) throw tooLarge(limitBytes);
			hash.update(piece);
			await writeAll(file, piece);
		}
		await file.sync();
	} catch (error) {
		rmSync(path, { force: true });
		throw error;
	} finally {
		await file.close();
	}
	return { sha256: hash.digest('hex'), size };
}

/** Hash of a file that is complete on disk, read in pieces; on wish the disk has it before it is read. */
export async function hashFile(path: string, syncBefore = false): Promise<string> {
	const hash = createHash('sha256');
	const file = await open(path, syncBefore ? 'r+' : 'r');
	try {
		if (syncBefore) await file.sync();
		for await (const piece of file.createReadStream({ autoClose: false })) hash.update(piece as Buffer);
	} finally {
		await file.close();
	}
	return hash.digest('hex');
}

/**
 * Gives a complete file its name in the store. The same content twice keeps the one that is there; what was
 * erased at its rider's wish does not come back. The
 * folder is synced too: a rename that the disk forgot would lose the source.
 */
export function moveToStore(ledger: Ledger, from: string, sha256: string): void {
	const folder = nameInStore(ledger, from, sha256);
	if (folder) syncFolder(folder);
}

/** The same, while pages are answered: the wait for the disk is not the event loop's. */
export async function moveToStoreBeside(ledger: Ledger, from: string, sha256: string): Promise<void> {
	const folder = nameInStore(ledger, from, sha256);
	if (folder) await syncFolderBeside(folder);
}

/** @returns the folder whose list of names has changed; null = the store has the content already, or may not have it */
function nameInStore(ledger: Ledger, from: string, sha256: string): string | null {
	const target = sourcePath(ledger.folder, sha256);
	if (existsSync(target) || isErased(ledger, sha256)) {
		rmSync(from, { force: true });
		return null;
	}
	mkdirSync(dirname(target), { recursive: true });
	renameSync(from, target);
	return dirname(target);
}

export function tooLarge(limitBytes: number): LedgerRefusal {
	return new LedgerRefusal(
		'too-large',
		`The file is larger than ${Math.floor(limitBytes / 2 ** 20)} MB; split the recording or raise the limit.`
	);
}

/**
 * Writes a piece whole, at the file's end or at an offset.
 *
 * @throws LedgerRefusal disk-full
 */
export async function writeAll(file: FileHandle, piece: Uint8Array, at?: number): Promise<void> {
	let written = 0;
	try {
		while (written < piece.byteLength) {
			const position = at === undefined ? null : at + written;
			const { bytesWritten } = await file.write(piece, written, piece.byteLength - written, position);
			written += bytesWritten;
		}
	} catch (error) {
		const { code } = error as NodeJS.ErrnoException;
		if (code !== 'ENOSPC' && code !== 'EDQUOT') throw error;
		throw new LedgerRefusal('disk-full', 'The disk that holds the ledger is full; make room and go on.');
	}
}

/** Waits until the disk has a folder's list of names. */
export function syncFolder(folder: string): void {
	if (process.platform === 'win32') return;
	const handle = openSync(folder, 'r');
	try {
		fsyncSync(handle);
	} finally {
		closeSync(handle);
	}
}

/** The same, while pages are answered. */
export async function syncFolderBeside(folder: string): Promise<void> {
	if (process.platform === 'win32') return;
	const handle = await open(folder, 'r');
	try {
		await handle.sync();
	} finally {
		await handle.close();
	}
}
