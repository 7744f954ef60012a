import { READ_LIMITS } from './limits';
import { refusal } from './refusal';

/** Whether bytes are a gzip file (RFC 1952, section 2.3.1: the two first bytes). */
export function isGzip(bytes: Uint8Array): boolean {
	return bytes.length >= 18 && bytes[0] === 0x1f && bytes[1] === 0x8b;
}

/**
 * Unpacks a gzip file piece by piece and stops as soon as it grows too large, so that a small file cannot fill the
 * memory.
 *
 * @param bytes a gzip file (RFC 1952)
 * @param largestBytes as much as may come out of it
 * @throws RideRefused too-large, or damaged where its checksum or length do not agree or it is cut off
 */
export async function unpackGzip(
	bytes: Uint8Array,
	largestBytes = READ_LIMITS.unpackedBytes
): Promise<Uint8Array> {
	const pieces: Uint8Array[] = [];
	let length = 0;
	const reader = new Blob([bytes as Uint8Array<ArrayBuffer>])
		.stream()
		.pipeThrough(new DecompressionStream('gzip'))
		.getReader();
	try {
		for (let piece = await reader.read(); !piece.done; piece = await reader.read()) {
			length += piece.value.length;
			if (length > largestBytes) break;
			pieces.push(piece.value);
		}
	} catch (error) {
		throw refusal('damaged', `gzip: ${error instanceof Error ? error.message : String(error)}`);
	}
	if (length > largestBytes) {
		await reader.cancel().catch(() => undefined);
		throw refusal('too-large', `gzip: ${bytes.length} bytes unpack to more than ${largestBytes}`);
	}
	const whole = new Uint8Array(length);
	let at = 0;
	for (const piece of pieces) {
		whole.set(piece, at);
		at += piece.length;
	}
	return whole;
}
