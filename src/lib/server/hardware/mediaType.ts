/** What may be attached: pictures that a browser shows without running anything, PDF, plain text. */
export const MEDIA_TYPES = [
	'image/png',
	'image/jpeg',
	'image/webp',
	'application/pdf',
	'text/plain'
] as const;
export type MediaType = (typeof MEDIA_TYPES)[number];

/**
 * What a file is, told from its bytes: a name or a browser's word can say anything. Drawings in SVG are not
 * taken, because they can carry scripts.
 *
 * @returns null for everything that is not taken
 * @example mediaType(Buffer.from('%PDF-1.7')) // 'application/pdf'
 * Source: signatures of the formats' standards (PNG: ISO/IEC 15948, 5.2; JPEG: ITU-T T.81, B.1.1.3; PDF:
 * ISO 32000-1, 7.5.2; WebP: RFC 9649, 2.4).
 */
export function mediaType(bytes: Uint8Array): MediaType | null {
	const begins = (signature: readonly number[], at = 0) =>
		signature.every((byte, i) => bytes[at + i] === byte);
	if (begins([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])) return 'image/png';
	if (begins([0xff, 0xd8, 0xff])) return 'image/jpeg';
	if (begins([0x52, 0x49, 0x46, 0x46]) && begins([0x57, 0x45, 0x42, 0x50], 8)) return 'image/webp';
	if (begins([0x25, 0x50, 0x44, 0x46, 0x2d])) return 'application/pdf';
	return isPlainText(bytes) ? 'text/plain' : null;
}

/** UTF-8 without control characters that is no document of another language. */
function isPlainText(bytes: Uint8Array): boolean {
	if (bytes.length === 0) return false;
	let text: string;
	try {
		text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
	} catch {
		return false;
	}
	// eslint-disable-next-line no-control-regex
	if (/[\u0000-\u0008\u000b\u000e-\u001f\u007f]/.test(text)) return false;
	return !/^\s*</.test(text);
}
