/** what the picture and its colours need; all else (texts, times, Exif data) goes */
const KEPT: ReadonlySet<string> = new Set([
	...['IHDR', 'PLTE', 'IDAT', 'IEND'],
	...['tRNS', 'gAMA', 'cHRM', 'sRGB', 'iCCP', 'sBIT', 'bKGD', 'pHYs', 'cICP']
]);

/**
 * A PNG picture without texts, times and Exif data, and without anything behind its end.
 *
 * @returns null when it is cut off or not built as it should be
 * Source: ISO/IEC 15948, clauses 5.3 (chunks) and 11 (their meanings).
 */
export function cleanPng(bytes: Uint8Array): Uint8Array | null {
	const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
	const pieces: Uint8Array[] = [bytes.subarray(0, 8)];
	let data = 0;
	for (let at = 8; at + 12 <= bytes.length;) {
		const end = at + 12 + view.getUint32(at);
		if (end > bytes.length) return null;
		const type = String.fromCharCode(...bytes.subarray(at + 4, at + 8));
		if ((type === 'IHDR') !== (at === 8)) return null;
		if (type === 'IDAT') data += 1;
		if (KEPT.has(type)) pieces.push(bytes.subarray(at, end));
		if (type === 'IEND') return data > 0 ? new Uint8Array(Buffer.concat(pieces)) : null;
		at = end;
	}
	return null;
}
