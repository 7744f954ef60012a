import type { Actor } from '../actor';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import { dropArchive, dropMembers } from '../store/archivePlace';
import { archiveSentence } from './archiveSentence';

/** An archive that nobody tried again for this long is given up: the list of files shows it as long. */
export const GIVEN_UP_AFTER_MS = 14 * 24 * 3600 * 1000;

interface Failed {
	importId: number;
	sha256: string;
}

/**
 * Gives up an archive whose unpacking broke off again and again: what was taken out of it stays, its bytes go.
 *
 * @throws LedgerRefusal conflict for one that did not fail
 */
export function giveUpArchive(ledger: Ledger, actor: Actor, importId: number): void {
	const failed = ledger.database
		.transaction((): Failed => {
			const [found] = failedArchives(ledger, 'id = ?', importId);
			if (!found) throw new LedgerRefusal('conflict', 'Only an archive that failed can be given up.');
			refuse(ledger, importId);
			leaveTrail(ledger, actor, 'gave up the archive', 'import', importId);
			return found;
		})
		.immediate();
	release(ledger, failed);
}

/** Gives up archives that failed and that nobody tried again for two weeks. */
export function giveUpOldArchives(ledger: Ledger): void {
	for (const { importId, sha256 } of failedArchives(
		ledger,
		'changed_ms < ?',
		ledger.now() - GIVEN_UP_AFTER_MS
	)) {
		refuse(ledger, importId);
		release(ledger, { importId, sha256 });
	}
}

function release(ledger: Ledger, { importId, sha256 }: Failed): void {
	dropArchive(ledger, sha256);
	dropMembers(ledger, importId);
}

function failedArchives(ledger: Ledger, where: 'id = ?' | 'changed_ms < ?', value: number): Failed[] {
	return ledger.database
		.prepare<[number], Failed>(
			`SELECT id AS importId, archive_sha256 AS sha256 FROM import
			WHERE stage = 'failed' AND archive_sha256 IS NOT NULL AND ${where}`
		)
		.all(value);
}

function refuse(ledger: Ledger, importId: number): void {
	ledger.database
		.prepare(
			"UPDATE import SET stage = 'refused', code = 'given-up', sentence = ?, changed_ms = ? WHERE id = ?"
		)
		.run(
			`Unpacking it broke off, and it was given up: ${archiveSentence(ledger, importId, true)} The rest was not read; its bytes are gone. Hand it in again if it should count.`,
			ledger.now(),
			importId
		);
}
