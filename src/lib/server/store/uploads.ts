import { randomBytes } from 'node:crypto';
import { existsSync, statSync } from 'node:fs';
import { open } from 'node:fs/promises';
import type { Actor } from '../actor';
import type { Ledger } from '../ledger/openLedger';
import { syncLog } from '../ledger/syncLog';
import { writeBeside } from '../ledger/writeBeside';
import { writeUnsynced } from '../ledger/writeUnsynced';
import { recordArchive } from '../queue/recordArchive';
import { recordSource } from '../queue/recordSource';
import { type RideHints, writeHints } from '../queue/rideHints';
import { LedgerRefusal } from '../refusal';
import { archivePath, isZipFile, moveToArchives } from './archivePlace';
import { cleanFileName } from './cleanFileName';
import { giveUpBrokenUploads } from './brokenUploads';
import { faultPoint } from './faultPoint';
import { incomingPath, removeUpload } from './incomingFiles';
import { hashFile, moveToStoreBeside, tooLarge, writeAll } from './sourceStore';
import { archiveLimitBytes, limitByName, uploadLimitBytes } from './uploadLimit';

interface UploadRow {
	id: string;
	importId: number;
	size: number;
	sha256: string | null;
	finished: number;
	touchedMs: number;
}

/** how often a piece on its way says that bytes still come */
const TOUCH_EVERY_MS = 5_000;
/** what was said so lately need not be said again: most files come whole in less */
const TOUCHED_JUST_NOW_MS = 1_000;

/** uploads that a request of this process is writing to */
const writing = new Set<string>();

/**
 * Announces a file. Its bytes follow in pieces, each at the offset where the last one ended, over as many
 * connections as it takes.
 *
 * @throws LedgerRefusal too-large, wrong-value
 */
export async function createUpload(
	ledger: Ledger,
	actor: Actor,
	input: { name: string; size: number; hints?: RideHints }
): Promise<{ id: string; offset: number }> {
	if (!Number.isSafeInteger(input.size) || input.size <= 0)
		throw new LedgerRefusal('wrong-value', 'The file is empty or its size is not known.');
	const limit = limitByName(ledger, input.name);
	if (input.size > limit) throw tooLarge(limit);
	const fileName = cleanFileName(input.name);
	giveUpBrokenUploads(ledger, actor, fileName, input.size);
	const id = randomBytes(16).toString('hex');
	await (await open(incomingPath(ledger, id), 'wx')).close();
	const now = ledger.now();
	const announce = ledger.database.transaction(() => {
		const { lastInsertRowid } = ledger.database
			.prepare(
				`INSERT INTO import (file_name, bytes, stage, hints, actor_id, created_ms, changed_ms)
				VALUES (?, ?, 'receiving', ?, ?, ?, ?)`
			)
			.run(fileName, input.size, writeHints(ledger, input.hints ?? {}), actor.personId, now, now);
		ledger.database
			.prepare('INSERT INTO upload (id, import_id, size, touched_ms) VALUES (?, ?, ?, ?)')
			.run(id, lastInsertRowid, input.size, now);
	});
	// an announcement that a power cut takes is made again: nothing was accepted yet
	writeUnsynced(ledger, () => announce.immediate());
	return { id, offset: 0 };
}

/** How many bytes have come; the client goes on from there. */
export function uploadOffset(ledger: Ledger, id: string): { offset: number; size: number } {
	const upload = findUpload(ledger, id);
	if (upload.sha256) return { offset: upload.size, size: upload.size };
	return { offset: receivedBytes(ledger, id), size: upload.size };
}

/**
 * Writes a piece to disk as it comes. What came before a broken connection stays.
 *
 * @returns the new offset
 * @throws LedgerRefusal wrong-offset when `offset` is not where the last piece ended; conflict while
 *   another request writes to the same upload; too-large when more comes than was announced
 */
export async function appendToUpload(
	ledger: Ledger,
	id: string,
	offset: number,
	body: AsyncIterable<Uint8Array>
): Promise<{ offset: number }> {
	const upload = findUpload(ledger, id);
	if (writing.has(id)) throw new LedgerRefusal('conflict', 'This upload is being written to already.');
	writing.add(id);
	try {
		const received = upload.sha256 ? upload.size : receivedBytes(ledger, id);
		if (offset !== received)
			throw new LedgerRefusal('wrong-offset', `The next piece must begin at byte ${received}.`);
		let at = offset;
		let touchedMs = touchUnlessJustNow(ledger, upload, upload.touchedMs);
		const file = await open(incomingPath(ledger, id), 'r+');
		try {
			for await (const piece of body) {
				if (at + piece.byteLength > upload.size)
					throw new LedgerRefusal('too-large', 'More bytes came than the upload announced.');
				await writeAll(file, piece, at);
				at += piece.byteLength;
				if (Math.abs(ledger.now() - touchedMs) >= TOUCH_EVERY_MS) touchedMs = touch(ledger, id);
				if (at * 2 >= upload.size) faultPoint('upload-half');
			}
		} finally {
			await file.close();
		}
		touchUnlessJustNow(ledger, upload, touchedMs);
		return { offset: at };
	} finally {
		writing.delete(id);
	}
}

/**
 * Puts a complete upload into the store and queues it. May be asked again after any failure: the steps
 * that are done are not done twice. Whoever is answered can rely on it: the disk has file, name and rows then.
 *
 * @returns the import that now stands in the queue, or of an archive the one that waits to be unpacked
 * @throws LedgerRefusal incomplete while bytes are missing; too-large where only the name was that of an archive
 */
export async function finishUpload(ledger: Ledger, actor: Actor, id: string): Promise<{ importId: number }> {
	const upload = findUpload(ledger, id);
	if (upload.finished) {
		// the first request may still be waiting for the disk
		await syncLog(ledger);
		return { importId: upload.importId };
	}
	const path = incomingPath(ledger, id);
	const isArchive = existsSync(path) ? await isZipFile(path) : null;
	let { sha256 } = upload;
	if (!sha256) {
		if (writing.has(id)) throw new LedgerRefusal('conflict', 'This upload is still being written to.');
		const missing = upload.size - receivedBytes(ledger, id);
		if (missing !== 0) throw new LedgerRefusal('incomplete', `${missing} bytes are still missing.`);
		refuseLargeRide(ledger, id, upload.size, isArchive ?? false);
		sha256 = await hashFile(path, true);
		const write = ledger.database.prepare('UPDATE upload SET sha256 = ? WHERE id = ?');
		writeUnsynced(ledger, () => write.run(sha256, id));
	}
	faultPoint('source-stored');
	const stored = { sha256, bytes: upload.size, importId: upload.importId, uploadId: id };
	if (isArchive ?? existsSync(archivePath(ledger.folder, sha256))) {
		faultPoint('archive-stored');
		if (existsSync(path)) await moveToArchives(ledger, path, sha256);
		faultPoint('archive-moved');
		return { importId: await writeBeside(ledger, () => recordArchive(ledger, actor, stored)) };
	}
	if (existsSync(path)) await moveToStoreBeside(ledger, path, sha256);
	faultPoint('source-moved');
	await writeBeside(ledger, () => recordSource(ledger, actor, stored));
	return { importId: upload.importId };
}

/** Under the name of an archive more may come than a ride has; what is none is not kept then. */
function refuseLargeRide(ledger: Ledger, id: string, size: number, isArchive: boolean): void {
	const limit = uploadLimitBytes(ledger);
	if (size <= (isArchive ? archiveLimitBytes() : limit)) return;
	removeUpload(ledger, id);
	throw tooLarge(isArchive ? archiveLimitBytes() : limit);
}

function touchUnlessJustNow(ledger: Ledger, { id }: UploadRow, touchedMs: number): number {
	// a clock that was set back must not silence it
	return Math.abs(ledger.now() - touchedMs) < TOUCHED_JUST_NOW_MS ? touchedMs : touch(ledger, id);
}

/** Says that bytes came just now; a slow line may need minutes for one piece. */
function touch(ledger: Ledger, id: string): number {
	const now = ledger.now();
	const write = ledger.database.prepare('UPDATE upload SET touched_ms = ? WHERE id = ?');
	writeUnsynced(ledger, () => write.run(now, id));
	return now;
}

export function findUpload(ledger: Ledger, id: string): UploadRow {
	const row = ledger.database
		.prepare<[string], UploadRow>(
			'SELECT id, import_id AS importId, size, sha256, finished, touched_ms AS touchedMs FROM upload WHERE id = ?'
		)
		.get(id);
	if (!row) throw new LedgerRefusal('not-found', 'There is no such upload; begin it again.');
	return row;
}

function receivedBytes(ledger: Ledger, id: string): number {
	return statSync(incomingPath(ledger, id), { throwIfNoEntry: false })?.size ?? 0;
}
