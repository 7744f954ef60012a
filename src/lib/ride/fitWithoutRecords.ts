import type { FitPart } from './fitPart';

/** a message number that the FIT profile leaves to makers and that no reader knows */
const UNKNOWN_MESSAGE = 0xff77;

/**
 * A FIT file of its own made from the whole messages of a part but its records, for the FIT parser. The header
 * states the true size, and the descriptions of developer fields are renamed, because the parser writes developer
 * fields into the same object as native ones and a developer's values would replace recorded ones. Where timestamps
 * are compressed the records stay in: other messages may count on from theirs.
 * @param bytes the upload
 * @param part one part of it
 * @returns a new file with a 12-byte header and no checksum
 */
export function fitWithoutRecords(bytes: Uint8Array, part: FitPart): Uint8Array<ArrayBuffer> {
	const { start, dataStart, dataEnd, recordRuns } = part;
	const file = new Uint8Array(12 + dataEnd - dataStart);
	file.set(bytes.subarray(start, start + 12));
	file[0] = 12;
	file.set(bytes.subarray(dataStart, dataEnd), 12);
	const place = (offset: number) => offset - dataStart + 12;
	for (const offset of part.descriptionNumberOffsets) {
		// both bytes differ from 206 in either byte order
		file[place(offset)] = UNKNOWN_MESSAGE & 0xff;
		file[place(offset) + 1] = UNKNOWN_MESSAGE >> 8;
	}
	let end = 12;
	let from = dataStart;
	const keep = (to: number) => {
		file.copyWithin(end, place(from), place(to));
		end += to - from;
	};
	for (let run = 0; run < recordRuns.length && !part.compressed; run += 2) {
		keep(recordRuns[run]);
		from = recordRuns[run + 1];
	}
	keep(dataEnd);
	new DataView(file.buffer).setUint32(4, end - 12, true);
	return file.slice(0, end);
}
