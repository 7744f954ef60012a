import { existsSync, readdirSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { findPersonAsActor } from '../people/people';
import type { Ledger } from '../ledger/openLedger';
import { giveUpOldArchives } from '../unpack/giveUpArchive';
import { dropArchive, dropGoing } from './archivePlace';
import { removeUpload } from './incomingFiles';
import { finishUpload } from './uploads';

/** an upload that nobody went on with for this long is given up */
const ABANDONED_AFTER_MS = 48 * 3600 * 1000;

/**
 * Clears up after a stop at any moment: uploads that were complete go on to the queue, abandoned ones and
 * files that belong to no upload are removed, archives that failed long ago give their bytes back. Safe while other processes upload.
 */
export async function recoverUploads(ledger: Ledger): Promise<void> {
	const complete = ledger.database
		.prepare<[], { id: string; actorId: number }>(
			`SELECT u.id, i.actor_id AS actorId FROM upload u JOIN import i ON i.id = u.import_id
			WHERE u.sha256 IS NOT NULL AND u.finished = 0`
		)
		.all();
	for (const { id, actorId } of complete) {
		const actor = findPersonAsActor(ledger, actorId);
		if (actor) await finishUpload(ledger, actor, id);
	}

	const before = ledger.now() - ABANDONED_AFTER_MS;
	const abandoned = ledger.database
		.prepare<[number], { id: string }>('SELECT id FROM upload WHERE finished = 0 AND touched_ms < ?')
		.all(before);
	for (const { id } of abandoned) removeUpload(ledger, id);
	giveUpOldArchives(ledger);
	dropGoing(ledger);
	removeStrayFiles(ledger, before);
	removeStrayArchives(ledger, before);
}

/** Files in incoming/ that no upload knows: half-written copies of a terminal command that was stopped. */
function removeStrayFiles(ledger: Ledger, beforeMs: number): void {
	const known = ledger.database.prepare('SELECT 1 FROM upload WHERE id = ? AND finished = 0');
	const incoming = join(ledger.folder, 'incoming');
	for (const name of readdirSync(incoming)) {
		if (known.get(name)) continue;
		const path = join(incoming, name);
		const changedMs = statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? Infinity;
		if (changedMs < beforeMs) rmSync(path, { force: true });
	}
}

/** Archives that no row needs any more: their last step was cut short, or their row never came. */
function removeStrayArchives(ledger: Ledger, beforeMs: number): void {
	const folder = join(ledger.folder, 'archives');
	if (!existsSync(folder)) return;
	for (const name of readdirSync(folder)) {
		const changedMs = statSync(join(folder, name), { throwIfNoEntry: false })?.mtimeMs ?? Infinity;
		if (changedMs < beforeMs && /^[0-9a-f]{64}$/.test(name)) dropArchive(ledger, name);
	}
}
