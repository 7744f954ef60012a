import type { Actor } from '../actor';
import type { FileRefusal } from '../../../jobs/analysis/messages';
import { leaveTrail } from '../ledger/leaveTrail';
import { toInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import { writeUnsynced } from '../ledger/writeUnsynced';
import { LedgerRefusal } from '../refusal';
import { BROKE_OFF_AFTER_MS } from '../store/brokenUploads';
import { archiveSentence } from '../unpack/archiveSentence';
import type { ImportStage, ImportView } from '../views';
import type { LeaseHolder } from './lease';

/** after so many attempts that ended without an answer a file is given up */
export const MOST_ATTEMPTS = 3;

export interface QueuedImport {
	readonly id: number;
	readonly fileName: string;
	readonly sha256: string;
	readonly attempts: number;
	/** the runner that took it; nobody else may say what became of it */
	readonly owner: string;
	/** what is known of the ride beforehand, as stored */
	readonly hints: string;
}

/**
 * The oldest waiting import, now marked as being analysed by this runner; null when none waits. A content
 * that is being read already is not given out again: what comes of it settles all its imports.
 */
export function takeNextImport(ledger: Ledger, holder: LeaseHolder): QueuedImport | null {
	const take = ledger.database.prepare<[string, number], QueuedImport>(
		`UPDATE import SET stage = 'analysing', owner = ?, attempts = attempts + 1, changed_ms = ?
		WHERE id = (SELECT w.id FROM import w WHERE w.stage = 'waiting' AND NOT EXISTS
			(SELECT 1 FROM import r WHERE r.sha256 = w.sha256 AND r.stage = 'analysing') ORDER BY w.id LIMIT 1)
		RETURNING id, file_name AS fileName, sha256, attempts, owner, hints`
	);
	return writeUnsynced(ledger, () => take.get(holder.owner, ledger.now())) ?? null;
}

/** What a runner that is gone left half done waits again, or is given up after too many attempts. */
export function requeueAbandoned(ledger: Ledger, holder: LeaseHolder): void {
	const abandoned = ledger.database
		.prepare<[string], QueuedImport>(
			`SELECT id, file_name AS fileName, sha256, attempts, owner, hints FROM import
			WHERE stage = 'analysing' AND owner IS NOT ?`
		)
		.all(holder.owner);
	for (const queued of abandoned) putBack(ledger, queued, 'the program was ended while it read this file');
}

/** Waits again, or, after too many attempts, fails with what happened last. */
export function putBack(ledger: Ledger, queued: QueuedImport, detail: string): void {
	if (queued.attempts < MOST_ATTEMPTS) setStage(ledger, queued, 'waiting', null);
	else
		setStage(ledger, queued, 'failed', {
			code: 'gave-up',
			sentence: `Reading this file broke off ${queued.attempts} times. The file is kept; it can be tried again.`,
			detail
		});
}

/** All that a runner has begun waits again as if it had not been: its own stop broke it off. */
export function releaseImports(ledger: Ledger, holder: LeaseHolder): void {
	ledger.database
		.prepare(
			`UPDATE import SET stage = 'waiting', owner = NULL, attempts = attempts - 1, changed_ms = ?
			WHERE stage = 'analysing' AND owner = ?`
		)
		.run(ledger.now(), holder.owner);
}

export function refuseImport(ledger: Ledger, queued: QueuedImport, refusal: FileRefusal): void {
	setStage(ledger, queued, 'refused', refusal);
}

/** Imports of the same content that came while this one was under way share its outcome. */
export function setStage(
	ledger: Ledger,
	queued: QueuedImport,
	stage: ImportStage,
	reason: FileRefusal | null
): void {
	const write = ledger.database.prepare(
		`UPDATE import SET stage = @stage, owner = NULL, code = @code, sentence = @sentence,
				technical = @technical, changed_ms = @now
			WHERE (id = @id AND stage = 'analysing' AND owner = @owner) OR (@final AND sha256 = @sha256 AND stage = 'already in the ledger' AND ride_id IS NULL)`
	);
	// found again by reading the file again
	writeUnsynced(ledger, () =>
		write.run({
			stage,
			code: reason?.code ?? null,
			sentence: reason?.sentence ?? null,
			technical: reason?.detail ?? null,
			now: ledger.now(),
			id: queued.id,
			owner: queued.owner,
			final: stage === 'refused' || stage === 'failed' || stage === 'asks' ? 1 : 0,
			sha256: queued.sha256
		})
	);
}

/** Puts a refused or failed import into the queue once more, for instance after the program was updated. */
export function retryImport(ledger: Ledger, actor: Actor, importId: number): void {
	ledger.database
		.transaction(() => {
			const { changes } = ledger.database
				.prepare(
					`UPDATE import SET stage = iif(sha256 IS NULL, 'unpacking', 'waiting'), attempts = 0, code = NULL,
						sentence = NULL, technical = NULL, changed_ms = ?
						WHERE id = ? AND (sha256 IS NOT NULL AND sha256 NOT IN (SELECT sha256 FROM erased_source)
							AND stage IN ('refused', 'failed')
							OR archive_sha256 IS NOT NULL AND stage = 'failed')`
				)
				.run(ledger.now(), importId);
			if (changes === 0)
				throw new LedgerRefusal('conflict', 'Only a file that was refused or failed can be tried again.');
			leaveTrail(ledger, actor, 'tried again', 'import', importId);
		})
		.immediate();
}

const VIEW = `SELECT i.id, i.file_name AS fileName, i.bytes, i.stage, i.ride_id AS rideId, i.sentence,
	i.technical AS detail, i.archive_id AS archiveId, i.folder, i.archive_sha256 IS NOT NULL AS isArchive, i.changed_ms AS changedMs, u.touched_ms AS touchedMs
	FROM import i LEFT JOIN upload u ON u.import_id = i.id AND u.sha256 IS NULL`;

type ImportRow = Omit<ImportView, 'at' | 'brokeOff' | 'isArchive'> & {
	isArchive: number;
	changedMs: number;
	touchedMs: number | null;
};

/** The newest imports first. */
export function listImports(ledger: Ledger, query: { limit: number }): ImportView[] {
	return importViews(ledger, '1', {}, query.limit);
}

/**
 * Imports for which a condition holds, the newest first.
 *
 * @param where SQL of our own; the import is i
 */
export function importViews(
	ledger: Ledger,
	where: string,
	values: Readonly<Record<string, unknown>>,
	limit: number
): ImportView[] {
	const rows = ledger.database
		.prepare<[object], ImportRow>(`${VIEW} WHERE ${where} ORDER BY i.id DESC LIMIT @limit`)
		.all({ ...values, limit: Math.max(1, Math.min(1000, Math.trunc(limit))) });
	return rows.map((row) => toView(ledger, row));
}

/** null when there is no such import */
export function findImport(ledger: Ledger, importId: number): ImportView | null {
	const row = ledger.database.prepare<[number], ImportRow>(`${VIEW} WHERE i.id = ?`).get(importId);
	return row ? toView(ledger, row) : null;
}

export function countUnfinishedImports(ledger: Ledger): number {
	return ledger.database
		.prepare<[], { n: number }>(
			"SELECT count(*) AS n FROM import WHERE stage IN ('waiting', 'analysing', 'unpacking')"
		)
		.get()!.n;
}

function toView(ledger: Ledger, { changedMs, touchedMs, ...row }: ImportRow): ImportView {
	const late = touchedMs !== null && ledger.now() - touchedMs > BROKE_OFF_AFTER_MS;
	const brokeOff = row.stage === 'receiving' && late;
	const isArchive = row.isArchive === 1;
	const sentence = brokeOff
		? 'The upload broke off: choose the file again to send it.'
		: (row.sentence ?? (isArchive ? archiveSentence(ledger, row.id, row.stage === 'unpacked') : null));
	return { ...row, isArchive, sentence, brokeOff, at: toInstant(changedMs) };
}
