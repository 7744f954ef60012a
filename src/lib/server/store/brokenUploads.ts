import type { Actor } from '../actor';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import { removeUpload } from './incomingFiles';

/** an upload of which nothing came for this long has broken off; a page tries again for half a minute */
export const BROKE_OFF_AFTER_MS = 60_000;

interface BrokenUpload {
	id: string;
	importId: number;
	bytes: number;
}

const BROKEN = `SELECT u.id, i.id AS importId, i.bytes
	FROM upload u JOIN import i ON i.id = u.import_id
	WHERE i.stage = 'receiving' AND u.sha256 IS NULL AND u.touched_ms < @before`;

/**
 * Takes an upload that broke off out of the list of files, with what came of it.
 *
 * @throws LedgerRefusal conflict while bytes come, or when it has arrived
 */
export function removeBrokenUpload(ledger: Ledger, actor: Actor, importId: number): void {
	const broken = ledger.database
		.prepare<[object], BrokenUpload>(`${BROKEN} AND i.id = @importId`)
		.get({ before: ledger.now() - BROKE_OFF_AFTER_MS, importId });
	if (!broken) throw new LedgerRefusal('conflict', 'Only an upload that broke off can be removed.');
	remove(ledger, actor, broken);
}

/**
 * Takes an upload back that its own sender gives up while it is under way.
 *
 * @throws LedgerRefusal not-found for somebody else's, conflict when all of it has come
 */
export function cancelUpload(ledger: Ledger, actor: Actor, id: string): void {
	const found = ledger.database
		.prepare<[object], BrokenUpload & { arrived: number }>(
			`SELECT u.id, i.id AS importId, i.bytes, u.sha256 IS NOT NULL AS arrived
			FROM upload u JOIN import i ON i.id = u.import_id WHERE u.id = @id AND i.actor_id = @actorId`
		)
		.get({ id, actorId: actor.personId });
	if (!found) throw new LedgerRefusal('not-found', 'There is no such upload.');
	if (found.arrived) throw new LedgerRefusal('conflict', 'All of this file has arrived already.');
	remove(ledger, actor, found, 'its sender gave it up');
}

/** A file that is announced again takes the place of the same person's uploads of it that broke off. */
export function giveUpBrokenUploads(ledger: Ledger, actor: Actor, fileName: string, bytes: number): void {
	const broken = ledger.database
		.prepare<[object], BrokenUpload>(
			`${BROKEN} AND i.actor_id = @actorId AND i.file_name = @fileName AND i.bytes = @bytes`
		)
		.all({ before: ledger.now() - BROKE_OFF_AFTER_MS, actorId: actor.personId, fileName, bytes });
	for (const upload of broken) remove(ledger, actor, upload);
}

function remove(
	ledger: Ledger,
	actor: Actor,
	{ id, importId, bytes }: BrokenUpload,
	why = 'it broke off'
): void {
	ledger.database
		.transaction(() => {
			// without the name: it may be a person's, and the row by which an erasure would find it goes
			leaveTrail(ledger, actor, 'removed', 'import', importId, { bytes, why });
			removeUpload(ledger, id);
		})
		.immediate();
}
