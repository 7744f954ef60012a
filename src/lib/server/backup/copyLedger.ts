import Database from 'better-sqlite3';
import { closeSync, fsyncSync, openSync } from 'node:fs';
import { snapshot } from '../archive/snapshot';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';

/** pages a step; between steps other work goes on */
const PAGES_A_STEP = 400;

/**
 * A copy of the ledger as it is now, by SQLite's online backup, while others read and write. The connection
 * that is copied holds one read transaction, so that no write of others makes the copy begin anew.
 *
 * @param path of the copy, a single file; must not exist
 * @throws LedgerRefusal ledger-damaged when the copy is not sound; disk-full
 */
export async function copyLedger(ledger: Ledger, path: string): Promise<void> {
	const source = snapshot(ledger);
	try {
		await source.backup(path, { progress: () => PAGES_A_STEP });
		const copy = new Database(path);
		try {
			copy.pragma('journal_mode = DELETE');
			if (copy.pragma('quick_check(1)', { simple: true }) !== 'ok') throw damaged();
		} finally {
			copy.close();
		}
	} catch (error) {
		throw asBackupRefusal(error);
	} finally {
		source.close();
	}
	const file = openSync(path, 'r+');
	try {
		fsyncSync(file);
	} finally {
		closeSync(file);
	}
}

/** What the disk and the ledger say, in a sentence; anything else as it is. */
export function asBackupRefusal(error: unknown): unknown {
	const { code } = error as { code?: string };
	if (code === 'SQLITE_FULL' || code === 'ENOSPC' || code === 'EDQUOT')
		return new LedgerRefusal(
			'disk-full',
			'The disk of the backup is full; earlier backups are as they were.'
		);
	if (code?.startsWith('SQLITE_CORRUPT') || code === 'SQLITE_NOTADB') return damaged();
	return error;
}

function damaged(): LedgerRefusal {
	return new LedgerRefusal(
		'ledger-damaged',
		'The ledger is damaged, so no backup was made of it; earlier backups are as they were. "npm run verify" says what is whole.'
	);
}
