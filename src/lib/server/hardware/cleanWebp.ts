/** what the picture needs, and its colours; Exif data, XMP and what nobody knows goes */
const KEPT: ReadonlySet<string> = new Set(['VP8 ', 'VP8L', 'VP8X', 'ALPH', 'ANIM', 'ANMF', 'ICCP']);
/** bits of the extended header that announce Exif data and XMP */
const ANNOUNCES_MORE = 0x08 | 0x04;

/**
 * A WebP picture without Exif data, XMP and unknown chunks, and without anything behind its end.
 *
 * @returns null when it is cut off or not built as it should be
 * Source: RFC 9649, 2.3 to 2.7.
 */
export function cleanWebp(bytes: Uint8Array): Uint8Array | null {
	const whole = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
	const end = 8 + whole.readUInt32LE(4);
	if (end > whole.length || end < 20) return null;
	const pieces: Buffer[] = [];
	let pictures = 0;
	for (let at = 12; at < end;) {
		if (at + 8 > end) return null;
		const size = whole.readUInt32LE(at + 4);
		// a chunk of odd size has one byte of padding
		const next = at + 8 + size + (size % 2);
		if (next > end) return null;
		const type = whole.toString('latin1', at, at + 4);
		if (type === 'VP8 ' || type === 'VP8L' || type === 'ANMF') pictures += 1;
		if (KEPT.has(type)) {
			const chunk = Buffer.from(whole.subarray(at, next));
			if (type === 'VP8X' && size > 0) chunk[8] &= ~ANNOUNCES_MORE;
			pieces.push(chunk);
		}
		at = next;
	}
	if (pictures === 0) return null;
	const content = Buffer.concat(pieces);
	const header = Buffer.from(whole.subarray(0, 12));
	header.writeUInt32LE(content.length + 4, 4);
	return new Uint8Array(Buffer.concat([header, content]));
}
