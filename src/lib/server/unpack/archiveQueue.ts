import type { FileRefusal } from '../../../jobs/analysis/messages';
import type { Ledger } from '../ledger/openLedger';
import { syncLog } from '../ledger/syncLog';
import { writeUnsynced } from '../ledger/writeUnsynced';
import { MOST_ATTEMPTS } from '../queue/importQueue';
import type { LeaseHolder } from '../queue/lease';
import { dropArchiveBeside } from '../store/archivePlace';
import { faultPoint } from '../store/faultPoint';

/** An archive that waits to be unpacked, or goes on where the last attempt stopped. */
export interface QueuedArchive {
	readonly id: number;
	readonly sha256: string;
	readonly attempts: number;
	readonly hints: string;
	readonly actorId: number;
	readonly owner: string;
}

/** The oldest archive that waits, now taken by this runner; one that broke off too often is given up first. */
export function takeNextArchive(ledger: Ledger, holder: LeaseHolder): QueuedArchive | null {
	ledger.database
		.prepare(
			`UPDATE import SET stage = 'failed', owner = NULL, code = 'gave-up', sentence = ?, changed_ms = ?
			WHERE stage = 'unpacking' AND attempts >= ?`
		)
		.run(
			`Unpacking this archive broke off ${MOST_ATTEMPTS} times. It is kept; it can be tried again.`,
			ledger.now(),
			MOST_ATTEMPTS
		);
	const take = ledger.database.prepare<[string, number], QueuedArchive>(
		`UPDATE import SET owner = ?, attempts = attempts + 1, changed_ms = ?
		WHERE id = (SELECT id FROM import WHERE stage = 'unpacking' ORDER BY id LIMIT 1)
		RETURNING id, archive_sha256 AS sha256, attempts, hints, actor_id AS actorId, owner`
	);
	return writeUnsynced(ledger, () => take.get(holder.owner, ledger.now())) ?? null;
}

/** Members of which a row says what became of them. */
export function recordedMembers(ledger: Ledger, archiveId: number): number[] {
	return ledger.database
		.prepare<[number], number>('SELECT member FROM import WHERE archive_id = ?')
		.pluck()
		.all(archiveId);
}

/** Its own stop broke it off: the attempt does not count. */
export function releaseArchive(ledger: Ledger, { id, owner }: QueuedArchive): void {
	ledger.database
		.prepare(
			`UPDATE import SET owner = NULL, attempts = attempts - 1, changed_ms = ?
			WHERE id = ? AND stage = 'unpacking' AND owner = ? AND attempts > 0`
		)
		.run(ledger.now(), id, owner);
}

/**
 * Everything in it is written down, or it is refused as a whole; its bytes go after that, since what was taken
 * from it lies in the store and whoever sent it has the rest. Before they go the disk has every row that was written
 * for its files: until then whatever a power cut took could be unpacked again.
 *
 * @param isStopped true = the ledger may be closed: the bytes stay and are cleared up later
 */
export async function finishArchive(
	ledger: Ledger,
	archive: QueuedArchive,
	refusal: FileRefusal | null,
	isStopped: () => boolean = () => false
): Promise<void> {
	const write = ledger.database.prepare(
		`UPDATE import SET stage = ?, owner = NULL, code = ?, sentence = ?, technical = ?, changed_ms = ?
		WHERE id = ? AND stage = 'unpacking' AND owner = ?`
	);
	const { changes } = writeUnsynced(ledger, () =>
		write.run(
			refusal ? 'refused' : 'unpacked',
			refusal?.code ?? null,
			refusal?.sentence ?? null,
			refusal?.detail ?? null,
			ledger.now(),
			archive.id,
			archive.owner
		)
	);
	faultPoint('archive-recorded');
	await syncLog(ledger);
	faultPoint('archive-done');
	if (changes === 1 && !isStopped()) await dropArchiveBeside(ledger, archive.sha256);
}
