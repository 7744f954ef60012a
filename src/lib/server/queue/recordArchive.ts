import type { Actor } from '../actor';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';

/** An archive whose bytes lie in their place. */
export interface StoredArchive {
	sha256: string;
	bytes: number;
	/** an upload's import row exists already and leaves "receiving" */
	importId?: number;
	uploadId?: string;
	/** an archive of this machine gets its row now */
	newImport?: { fileName: string; hints: string };
}

/**
 * Writes down that an archive has arrived and waits to be unpacked, in one transaction.
 *
 * @returns id of its import
 */
export function recordArchive(ledger: Ledger, actor: Actor, stored: StoredArchive): number {
	const { database } = ledger;
	return database
		.transaction((): number => {
			const now = ledger.now();
			const importId = stored.importId ?? insertRow(ledger, actor, stored, now);
			const { changes } = database
				.prepare(
					`UPDATE import SET stage = 'unpacking', archive_sha256 = ?, changed_ms = ?
					WHERE id = ? AND stage = 'receiving'`
				)
				.run(stored.sha256, now, importId);
			// the name may hold a person's: it stays in the row, where an erasure finds it
			if (changes === 1) leaveTrail(ledger, actor, 'handed in an archive', 'import', importId);
			if (stored.uploadId)
				database
					.prepare('UPDATE upload SET sha256 = ?, finished = 1 WHERE id = ?')
					.run(stored.sha256, stored.uploadId);
			return importId;
		})
		.immediate();
}

function insertRow(ledger: Ledger, actor: Actor, stored: StoredArchive, now: number): number {
	const { fileName, hints } = stored.newImport!;
	const { lastInsertRowid } = ledger.database
		.prepare(
			`INSERT INTO import (file_name, bytes, stage, hints, actor_id, created_ms, changed_ms)
			VALUES (?, ?, 'receiving', ?, ?, ?, ?)`
		)
		.run(fileName, stored.bytes, hints, actor.personId, now, now);
	return Number(lastInsertRowid);
}
