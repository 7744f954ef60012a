import { isGzip } from '$lib/ride/unpackGzip';
import { tableHead, type TableHead } from '$lib/ride/tableHead';
import { closeSync, openSync, readSync } from 'node:fs';
import { constants, gunzipSync } from 'node:zlib';
import { sourcePath } from '../store/sourceStore';

/** as many bytes as the head of a table is looked for in */
const HEAD_BYTES = 65_536;

/** The head of the table that a stored file holds; null when there is none or the file is gone. */
export function headOfSource(folder: string, sha256: string): TableHead | null {
	try {
		const bytes = firstBytes(sourcePath(folder, sha256));
		return tableHead(isGzip(bytes) ? unpackFirst(bytes) : bytes);
	} catch {
		return null;
	}
}

function firstBytes(path: string): Buffer {
	const file = openSync(path, 'r');
	try {
		const bytes = Buffer.alloc(HEAD_BYTES);
		return bytes.subarray(0, readSync(file, bytes, 0, HEAD_BYTES, 0));
	} finally {
		closeSync(file);
	}
}

/** What the first packed bytes unpack to; that they are cut off is expected. They are few, so this cannot grow large. */
function unpackFirst(bytes: Uint8Array): Uint8Array {
	return gunzipSync(bytes, { finishFlush: constants.Z_SYNC_FLUSH, maxOutputLength: 1100 * HEAD_BYTES });
}
