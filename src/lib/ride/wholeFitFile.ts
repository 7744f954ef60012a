import type { FitPart } from './fitPart';

/** a message number that the FIT profile leaves to makers and that no reader knows */
const UNKNOWN_MESSAGE = 0xff77;

/**
 * A FIT file of its own made from the whole messages of a part: the header states the true size, and
 * the descriptions of developer fields are renamed, because the parser writes developer fields into the
 * same object as native ones and a developer's "power" would replace the recorded power.
 * @param bytes the upload
 * @param part one part of it
 * @returns a new file with a 12-byte header and no checksum
 */
export function wholeFitFile(bytes: Uint8Array, part: FitPart): Uint8Array<ArrayBuffer> {
	const dataBytes = part.dataEnd - part.dataStart;
	const file = new Uint8Array(12 + dataBytes);
	file.set(bytes.subarray(part.start, part.start + 12));
	file[0] = 12;
	new DataView(file.buffer).setUint32(4, dataBytes, true);
	file.set(bytes.subarray(part.dataStart, part.dataEnd), 12);
	for (const offset of part.descriptionNumberOffsets) {
		// both bytes differ from 206 in either byte order
		file[offset - part.dataStart + 12] = UNKNOWN_MESSAGE & 0xff;
		file[offset - part.dataStart + 13] = UNKNOWN_MESSAGE >> 8;
	}
	return file;
}
