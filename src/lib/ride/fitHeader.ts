export interface FitHeader {
	readonly headerBytes: 12 | 14;
	/** bytes of messages as the header states them; 0 when the recording was not closed */
	readonly dataBytes: number;
}

/**
 * The header of a FIT file (FIT protocol, file structure: 12 or 14 bytes with ".FIT" at byte 8).
 * @param bytes the upload
 * @param offset where the header should begin
 * @returns its sizes, or null when no FIT header stands there
 */
export function fitHeader(bytes: Uint8Array, offset: number): FitHeader | null {
	const headerBytes = bytes[offset];
	if (headerBytes !== 12 && headerBytes !== 14) return null;
	if (offset + headerBytes > bytes.length) return null;
	const signature = [0x2e, 0x46, 0x49, 0x54];
	if (signature.some((byte, i) => bytes[offset + 8 + i] !== byte)) return null;
	const dataBytes =
		bytes[offset + 4] +
		bytes[offset + 5] * 0x100 +
		bytes[offset + 6] * 0x10000 +
		bytes[offset + 7] * 0x1000000;
	return { headerBytes, dataBytes };
}

/**
 * Where the next FIT header begins.
 * @param bytes the upload
 * @param from first offset to look at
 * @returns its offset, or the length of the upload when there is none
 */
export function nextFitHeader(bytes: Uint8Array, from: number): number {
	for (let at = bytes.indexOf(0x2e, from + 8); at !== -1; at = bytes.indexOf(0x2e, at + 1)) {
		if (fitHeader(bytes, at - 8)) return at - 8;
	}
	return bytes.length;
}
