import { randomBytes } from 'node:crypto';
import { join } from 'node:path';
import type { Actor } from '../actor';
import type { Ledger } from '../ledger/openLedger';
import { recordArchive } from '../queue/recordArchive';
import { recordSource } from '../queue/recordSource';
import { type RideHints, writeHints } from '../queue/rideHints';
import { isZip } from '../../../jobs/unpack/looksLikeRide';
import { isZipFile, moveToArchives } from './archivePlace';
import { cleanFileName } from './cleanFileName';
import { faultPoint } from './faultPoint';
import { moveToStore, writeThrough } from './sourceStore';
import { archiveLimitBytes, uploadLimitBytes } from './uploadLimit';

/**
 * Stores a file that lies on this machine (or comes as a stream) and queues it: first the bytes, synced
 * and named by their hash, then the ledger's rows. An archive waits to be unpacked; its files are queued then.
 *
 * @returns the import that now stands in the queue
 * @throws LedgerRefusal too-large
 */
export async function storeFile(
	ledger: Ledger,
	actor: Actor,
	input: { name: string; bytes: AsyncIterable<Uint8Array>; hints?: RideHints; example?: boolean }
): Promise<{ importId: number }> {
	const path = join(ledger.folder, 'incoming', `file-${randomBytes(16).toString('hex')}`);
	const { bytes, limit } = await withLimit(ledger, input.bytes);
	const { sha256, size } = await writeThrough(path, bytes, limit);
	faultPoint('source-stored');
	const fileName = cleanFileName(input.name);
	const hints = writeHints(ledger, input.hints ?? {});
	if (await isZipFile(path)) {
		faultPoint('archive-stored');
		await moveToArchives(ledger, path, sha256);
		faultPoint('archive-moved');
		return {
			importId: recordArchive(ledger, actor, { sha256, bytes: size, newImport: { fileName, hints } })
		};
	}
	moveToStore(ledger, path, sha256);
	faultPoint('source-moved');
	const now = ledger.now();
	return ledger.database
		.transaction(() => {
			const importId = recordSource(ledger, actor, {
				sha256,
				bytes: size,
				newImport: {
					fileName,
					hints,
					example: input.example ?? false,
					atMs: now
				}
			});
			return { importId };
		})
		.immediate();
}

/** The limit for what a stream brings, told from its first piece; the stream is then read from there on. */
async function withLimit(
	ledger: Ledger,
	stream: AsyncIterable<Uint8Array>
): Promise<{ bytes: AsyncIterable<Uint8Array>; limit: number }> {
	const pieces = stream[Symbol.asyncIterator]();
	const first = await pieces.next();
	const archive = !first.done && isZip(first.value);
	async function* all() {
		for (let piece = first; !piece.done; piece = await pieces.next()) yield piece.value;
	}
	return { bytes: all(), limit: archive ? archiveLimitBytes() : uploadLimitBytes(ledger) };
}
