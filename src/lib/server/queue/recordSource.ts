import type { Actor } from '../actor';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';

export interface NewImport {
	fileName: string;
	hints: string;
	example: boolean;
	atMs: number;
	/** where it lay in an archive */
	place?: { archiveId: number; member: number; folder: string | null };
}

export interface StoredSource {
	sha256: string;
	bytes: number;
	/** an upload's import row exists already and leaves "receiving" */
	importId?: number;
	uploadId?: string;
	/** a file of this machine gets its row now */
	newImport?: NewImport;
}

/**
 * Writes down that a source is in the store and puts its import into the queue, in one transaction. A
 * source that a ride or another import already stands for is not analysed again: it counts once.
 *
 * @returns id of the import
 */
export function recordSource(ledger: Ledger, actor: Actor, stored: StoredSource): number {
	const { database } = ledger;
	return database
		.transaction((): number => {
			const now = ledger.now();
			const importId = stored.importId ?? insertReceiving(ledger, actor, stored);
			const { fileName, stage } = database
				.prepare<[number], { fileName: string; stage: string }>(
					'SELECT file_name AS fileName, stage FROM import WHERE id = ?'
				)
				.get(importId)!;
			if (stage !== 'receiving') return importId;

			const isNew = database
				.prepare(
					'INSERT OR IGNORE INTO source (sha256, bytes, file_name, stored_ms, stored_by) VALUES (?, ?, ?, ?, ?)'
				)
				.run(stored.sha256, stored.bytes, fileName, now, actor.personId).changes;
			if (isNew) leaveTrail(ledger, actor, 'stored', 'source', stored.sha256, { fileName });

			const earlier = findEarlier(ledger, stored.sha256);
			database
				.prepare(
					'UPDATE import SET stage = ?, sha256 = ?, ride_id = ?, sentence = ?, changed_ms = ? WHERE id = ?'
				)
				.run(
					earlier ? 'already in the ledger' : 'waiting',
					stored.sha256,
					earlier?.rideId ?? null,
					earlier?.sentence ?? null,
					now,
					importId
				);
			if (stored.uploadId)
				database
					.prepare('UPDATE upload SET sha256 = ?, finished = 1 WHERE id = ?')
					.run(stored.sha256, stored.uploadId);
			return importId;
		})
		.immediate();
}

function insertReceiving(ledger: Ledger, actor: Actor, stored: StoredSource): number {
	const { fileName, hints, example, atMs, place } = stored.newImport!;
	const { lastInsertRowid } = ledger.database
		.prepare(
			`INSERT INTO import (file_name, bytes, stage, hints, actor_id, example, created_ms, changed_ms, archive_id,
				member, folder) VALUES (?, ?, 'receiving', ?, ?, ?, ?, ?, ?, ?, ?)`
		)
		.run(
			fileName,
			stored.bytes,
			hints,
			actor.personId,
			example ? 1 : 0,
			atMs,
			atMs,
			place?.archiveId ?? null,
			place?.member ?? null,
			place?.folder ?? null
		);
	return Number(lastInsertRowid);
}

/** The ride or the waiting import that this content already stands for. */
function findEarlier(ledger: Ledger, sha256: string): { rideId: number | null; sentence: string } | null {
	const erased = ledger.database
		.prepare<[string], { rideId: number | null }>(
			`SELECT r.id AS rideId FROM erased_source e LEFT JOIN ride r ON r.sha256 = e.sha256 WHERE e.sha256 = ?`
		)
		.get(sha256);
	if (erased)
		return { ...erased, sentence: "This very file was erased at its rider's wish and is not taken again." };
	const ride = ledger.database
		.prepare<[string], { id: number; withdrawn: number }>(
			'SELECT id, withdrawn_ms IS NOT NULL AS withdrawn FROM ride WHERE sha256 = ?'
		)
		.get(sha256);
	if (ride?.withdrawn)
		return {
			rideId: ride.id,
			sentence: 'This very file is in the ledger as a withdrawn ride; restore it there if it shall count.'
		};
	if (ride) return { rideId: ride.id, sentence: 'This very file is in the ledger already; it counts once.' };
	const waiting = ledger.database
		.prepare("SELECT 1 FROM import WHERE sha256 = ? AND stage IN ('waiting', 'analysing', 'asks')")
		.get(sha256);
	return waiting ? { rideId: null, sentence: 'This very file was handed in already; it counts once.' } : null;
}
