import { randomBytes } from 'node:crypto';
import { join } from 'node:path';
import type { Actor } from '../actor';
import type { Ledger } from '../ledger/openLedger';
import { recordSource } from '../queue/recordSource';
import { type RideHints, writeHints } from '../queue/rideHints';
import { cleanFileName } from './cleanFileName';
import { faultPoint } from './faultPoint';
import { moveToStore, writeThrough } from './sourceStore';
import { uploadLimitBytes } from './uploadLimit';

/**
 * Stores a file that lies on this machine (or comes as a stream) and queues it: first the bytes, synced
 * and named by their hash, then the ledger's rows.
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
	const { sha256, size } = await writeThrough(path, input.bytes, uploadLimitBytes(ledger));
	faultPoint('source-stored');
	moveToStore(ledger, path, sha256);
	faultPoint('source-moved');
	const now = ledger.now();
	return ledger.database
		.transaction(() => {
			const importId = recordSource(ledger, actor, {
				sha256,
				bytes: size,
				newImport: {
					fileName: cleanFileName(input.name),
					hints: writeHints(ledger, input.hints ?? {}),
					example: input.example ?? false,
					atMs: now
				}
			});
			return { importId };
		})
		.immediate();
}
