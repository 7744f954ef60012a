import { randomBytes } from 'node:crypto';
import { existsSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import { moveToStore, sourcePath, writeThrough } from '../store/sourceStore';
import { filePath, noArchive } from './manifest';
import type { OpenArchive } from './openArchive';

/**
 * Puts the sources and attachments of an archive into the store, each only when its bytes have the hash that
 * names it.
 *
 * @returns how many are in the store and how many the archive does not hold; `remove` takes those away again
 *   that were not there before
 * @throws LedgerRefusal incomplete when a file is another one; nothing stays in the store then
 */
export async function restoreFiles(
	ledger: Ledger,
	archive: OpenArchive
): Promise<{ stored: number; missing: number; remove: () => void }> {
	const added: string[] = [];
	const remove = () => {
		for (const sha256 of added) rmSync(sourcePath(ledger.folder, sha256), { force: true });
	};
	let stored = 0;
	try {
		for (const { sha256, bytes, included } of archive.manifest.files) {
			if (!included) continue;
			stored++;
			if (existsSync(sourcePath(ledger.folder, sha256))) continue;
			await restoreFile(ledger, archive, sha256, bytes);
			added.push(sha256);
		}
	} catch (error) {
		remove();
		throw error;
	}
	return { stored, missing: archive.manifest.files.length - stored, remove };
}

async function restoreFile(
	ledger: Ledger,
	archive: OpenArchive,
	sha256: string,
	bytes: number
): Promise<void> {
	const path = join(ledger.folder, 'incoming', `restore-${randomBytes(16).toString('hex')}`);
	const stream = await archive.read(filePath(sha256));
	try {
		const written = await writeThrough(path, stream, bytes);
		if (written.sha256 !== sha256 || written.size !== bytes) throw damaged(sha256);
		moveToStore(ledger, path, sha256);
	} catch (error) {
		rmSync(path, { force: true });
		if (error instanceof LedgerRefusal) throw error.code === 'too-large' ? damaged(sha256) : error;
		throw noArchive((error as Error).message);
	}
}

function damaged(sha256: string): LedgerRefusal {
	return new LedgerRefusal(
		'incomplete',
		`The source ${sha256.slice(0, 12)} in this archive does not have the SHA-256 that names it: it is damaged or was changed. Nothing was taken over.`
	);
}
