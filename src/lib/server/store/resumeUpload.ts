import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { truncate } from 'node:fs/promises';
import type { Actor } from '../actor';
import type { Ledger } from '../ledger/openLedger';
import { cleanFileName } from './cleanFileName';
import { incomingPath } from './incomingFiles';

/** as many bytes of an upload have one hash; of a smaller one less, since what is behind the last whole one is lost */
export const HASHED_PIECE_BYTES = 4 * 2 ** 20;
const SMALL_PIECE_BYTES = 2 ** 18;
const SMALL_UP_TO_BYTES = 8_000_000;

/** bytes came so lately that another window may still be sending */
const STILL_COMING_MS = 3_000;

export interface ResumableUpload {
	id: string;
	pieceBytes: number;
	/** SHA-256 of each whole piece that has come */
	pieces: string[];
}

/**
 * An upload of the same person that broke off, with hashes of what has come: name and size alone do not prove
 * that a file chosen anew is the same, so whoever sends it compares these and goes on only where they agree.
 *
 * @returns null when there is none
 */
export async function resumeUpload(
	ledger: Ledger,
	actor: Actor,
	input: { name: string; size: number }
): Promise<ResumableUpload | null> {
	const found = ledger.database
		.prepare<[object], { id: string }>(
			`SELECT u.id FROM upload u JOIN import i ON i.id = u.import_id
			WHERE i.stage = 'receiving' AND u.sha256 IS NULL AND i.actor_id = @actorId
				AND i.file_name = @fileName AND u.size = @size AND u.touched_ms < @before ORDER BY u.touched_ms DESC LIMIT 1`
		)
		.get({
			actorId: actor.personId,
			fileName: cleanFileName(input.name),
			size: input.size,
			before: ledger.now() - STILL_COMING_MS
		});
	if (!found) return null;
	const path = incomingPath(ledger, found.id);
	const pieceBytes = input.size < SMALL_UP_TO_BYTES ? SMALL_PIECE_BYTES : HASHED_PIECE_BYTES;
	const pieces = await hashesOf(path, pieceBytes);
	// what is behind the last whole piece cannot be compared, so it is sent again
	await truncate(path, pieces.length * pieceBytes);
	return pieces.length > 0 ? { id: found.id, pieceBytes, pieces } : null;
}

/** of the whole pieces alone: the last one may be cut off */
async function hashesOf(path: string, pieceBytes: number): Promise<string[]> {
	const hashes: string[] = [];
	let hash = createHash('sha256');
	let room = pieceBytes;
	for await (const read of createReadStream(path, { highWaterMark: 2 ** 18 })) {
		for (let rest = read as Buffer; rest.length > 0;) {
			const part = rest.subarray(0, room);
			hash.update(part);
			rest = rest.subarray(part.length);
			room -= part.length;
			if (room > 0) continue;
			hashes.push(hash.digest('hex'));
			hash = createHash('sha256');
			room = pieceBytes;
		}
	}
	return hashes;
}
