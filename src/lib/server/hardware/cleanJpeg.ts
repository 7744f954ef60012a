const START_OF_SCAN = 0xda;
const END_OF_IMAGE = 0xd9;
const EXIF = 0xe1;
/** "ICC_PROFILE" and "Adobe": without them colours change */
const KEPT: readonly { marker: number; begins: string }[] = [
	{ marker: 0xe0, begins: 'JFIF\0' },
	{ marker: 0xe2, begins: 'ICC_PROFILE\0' },
	{ marker: 0xee, begins: 'Adobe' }
];

/**
 * A JPEG picture without application data and comments, but for those that colours need, and without anything
 * behind its end. Where the camera was turned, that alone is written anew.
 *
 * @returns null when it is cut off or not built as it should be
 * Source: ITU-T T.81, B.1 and B.2 (segments, scans); Exif 2.32, 4.6.4 (orientation).
 */
export function cleanJpeg(bytes: Uint8Array): Uint8Array | null {
	const pieces: Uint8Array[] = [bytes.subarray(0, 2)];
	let [at, turned, scans] = [2, 1, 0];
	for (;;) {
		if (bytes[at] !== 0xff) return null;
		// any number of fill bytes may stand before a marker
		while (bytes[at + 1] === 0xff) at += 1;
		const marker = bytes[at + 1];
		if (marker === END_OF_IMAGE) break;
		if (marker === undefined || marker < 0xc0 || (marker >= 0xd0 && marker <= 0xd8)) return null;
		const end = at + 2 + lengthAt(bytes, at + 2);
		if (end < at + 4 || end > bytes.length) return null;
		const segment = bytes.subarray(at, end);
		if (marker === EXIF) turned = orientationOf(segment.subarray(4)) ?? turned;
		else if (isPicture(marker) || isKept(marker, segment)) pieces.push(segment);
		at = end;
		if (marker !== START_OF_SCAN) continue;
		scans += 1;
		const scanned = endOfScan(bytes, at);
		if (scanned === null) return null;
		pieces.push(bytes.subarray(at, scanned));
		at = scanned;
	}
	if (scans === 0) return null;
	if (turned !== 1) pieces.splice(afterJfif(pieces), 0, orientationSegment(turned));
	return joined([...pieces, Uint8Array.of(0xff, END_OF_IMAGE)]);
}

/** everything but application data (0xe0 to 0xef), reserved extensions (0xf0 to 0xfd) and comments (0xfe) */
const isPicture = (marker: number) => marker < 0xe0;

function isKept(marker: number, segment: Uint8Array): boolean {
	return KEPT.some(
		(kept) => kept.marker === marker && textAt(segment, 4, kept.begins.length) === kept.begins
	);
}

/** The JFIF segment, where there is one, comes first of all. */
const afterJfif = (pieces: readonly Uint8Array[]) => (pieces[1]?.[1] === 0xe0 ? 2 : 1);

/** Coded data last until a marker that is neither a stuffed byte nor a restart. */
function endOfScan(bytes: Uint8Array, from: number): number | null {
	for (let at = from; at + 1 < bytes.length; at++) {
		if (bytes[at] !== 0xff) continue;
		const next = bytes[at + 1];
		if (next !== 0 && next !== 0xff && !(next >= 0xd0 && next <= 0xd7)) return at;
	}
	return null;
}

/** 1 to 8, as the camera wrote it into Exif data; null when it says nothing that can be read */
function orientationOf(data: Uint8Array): number | null {
	if (textAt(data, 0, 6) !== 'Exif\0\0' || data.length < 14) return null;
	const tiff = new DataView(data.buffer, data.byteOffset + 6, data.byteLength - 6);
	const order = tiff.getUint16(0);
	if (order !== 0x4949 && order !== 0x4d4d) return null;
	const little = order === 0x4949;
	const first = tiff.getUint32(4, little);
	if (first + 2 > tiff.byteLength) return null;
	const entries = tiff.getUint16(first, little);
	for (let i = 0; i < entries; i++) {
		const entry = first + 2 + 12 * i;
		if (entry + 12 > tiff.byteLength) return null;
		if (tiff.getUint16(entry, little) !== 0x0112) continue;
		const value = tiff.getUint16(entry + 8, little);
		return value >= 1 && value <= 8 ? value : null;
	}
	return null;
}

/** Exif data with one entry: which side is up. */
function orientationSegment(turned: number): Uint8Array {
	return Uint8Array.of(
		...[0xff, EXIF, 0, 34],
		...[0x45, 0x78, 0x69, 0x66, 0, 0],
		// most significant byte first; the first directory follows at once, with one entry
		...[0x4d, 0x4d, 0, 42, 0, 0, 0, 8, 0, 1],
		// orientation, one short number
		...[0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, turned, 0, 0],
		// no further directory
		...[0, 0, 0, 0]
	);
}

function lengthAt(bytes: Uint8Array, at: number): number {
	return at + 1 < bytes.length ? bytes[at] * 256 + bytes[at + 1] : 0;
}

function textAt(bytes: Uint8Array, at: number, length: number): string {
	return String.fromCharCode(...bytes.subarray(at, at + length));
}

function joined(pieces: readonly Uint8Array[]): Uint8Array {
	const whole = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0));
	let at = 0;
	for (const piece of pieces) {
		whole.set(piece, at);
		at += piece.length;
	}
	return whole;
}
