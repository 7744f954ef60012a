import { statfsSync } from 'node:fs';
import { LedgerRefusal } from '../refusal';

/** SQLite needs this much for the index of its log before it can read */
const LEAST_FREE_BYTES = 2 ** 20;

/**
 * What SQLite says when a ledger cannot be opened, as a sentence that tells what to do; anything else as it is.
 *
 * @param folder of the ledger
 */
export function openingRefusal(error: unknown, folder: string): unknown {
	const code = (error as { code?: string } | null)?.code ?? '';
	if (/^SQLITE_(CORRUPT|NOTADB)/.test(code))
		return new LedgerRefusal(
			'ledger-damaged',
			'The ledger in this folder is damaged and was not opened; nothing was changed. "npm run verify" says what is whole; restore the last backup into another folder.'
		);
	if (!/^SQLITE_(FULL|IOERR|CANTOPEN|READONLY)/.test(code)) return error;
	if (freeBytes(folder) < LEAST_FREE_BYTES)
		return new LedgerRefusal(
			'disk-full',
			'The disk that holds the ledger is full; make room and start again. Nothing that was taken is lost.'
		);
	return new LedgerRefusal(
		'folder-not-writable',
		`The folder ${folder} cannot be used for the ledger (${code}); look at the disk and at who may write there.`
	);
}

/** a disk that does not even say how full it is has another trouble */
function freeBytes(folder: string): number {
	try {
		const { bavail, bsize } = statfsSync(folder);
		return bavail * bsize;
	} catch {
		return Infinity;
	}
}
