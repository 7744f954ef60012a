import { fitChecksum } from './fitChecksum';
import { fitHeader, nextFitHeader, type FitHeader } from './fitHeader';
import type { FitDamage, FitPart } from './fitPart';
import { MAX_FIT_PARTS } from './limits';
import { refusal } from './refusal';
import { walkFitMessages, type FitWalk } from './walkFitMessages';

export interface FitChain {
	readonly parts: readonly FitPart[];
	/** bytes after the last part that belong to no FIT file */
	readonly trailingBytes: number;
}

/**
 * Finds the FIT files chained in an upload and how far each of them is whole. Recordings that were not
 * closed state a size of 0; cut-off ones state more than there is; both are read up to their last whole
 * message.
 * @param bytes the upload
 * @returns the parts in file order
 * @throws RideRefused 'not-a-ride-file' without a header at the start, 'too-large' past the bounds
 */
export function splitFitParts(bytes: Uint8Array): FitChain {
	const parts: FitPart[] = [];
	let offset = 0;
	let messages = 0;
	while (offset < bytes.length) {
		const header = fitHeader(bytes, offset);
		if (!header) break;
		if (parts.length === MAX_FIT_PARTS)
			throw refusal('too-large', `more than ${MAX_FIT_PARTS} chained files`);
		const { part, next } = readPart(bytes, offset, header, messages);
		parts.push(part);
		messages += part.messages;
		offset = next;
	}
	if (parts.length === 0) throw refusal('not-a-ride-file', 'no FIT header at byte 0');
	return { parts, trailingBytes: bytes.length - offset };
}

function readPart(
	bytes: Uint8Array,
	start: number,
	header: FitHeader,
	messagesBefore: number
): { part: FitPart; next: number } {
	const dataStart = start + header.headerBytes;
	const statedEnd = dataStart + header.dataBytes;
	const closed = header.dataBytes > 0 && statedEnd + 2 <= bytes.length;
	const sound = closed && fitChecksum(bytes, start, statedEnd) === word(bytes, statedEnd);
	// a wrong size and a wrong checksum look alike: believe the size where a file or a header ends there
	const sizeHolds =
		sound || (closed && (statedEnd + 2 === bytes.length || fitHeader(bytes, statedEnd + 2) !== null));
	const limit = sizeHolds ? statedEnd : nextFitHeader(bytes, dataStart);
	const walk = walkFitMessages(bytes, dataStart, limit, messagesBefore);
	const damage = damageOf(bytes, header, { start, statedEnd, limit, sound, sizeHolds }, walk);
	const { end: dataEnd, records, messages, descriptionNumberOffsets, recordRuns, compressed } = walk;
	const found = { records, messages, descriptionNumberOffsets, recordRuns, compressed };
	return {
		part: { start, dataStart, dataEnd, ...found, damage },
		next: sizeHolds ? statedEnd + 2 : limit
	};
}

interface Ends {
	readonly start: number;
	readonly statedEnd: number;
	readonly limit: number;
	readonly sound: boolean;
	readonly sizeHolds: boolean;
}

function damageOf(bytes: Uint8Array, header: FitHeader, ends: Ends, walk: FitWalk): FitDamage | null {
	const { start, statedEnd, limit, sound, sizeHolds } = ends;
	const left = limit - walk.end - paddingBytes(bytes, walk.end, limit);
	const upTo = `whole up to byte ${walk.end}`;
	if (sizeHolds) {
		if (walk.stoppedBy)
			return { kind: 'broken-inside', lostBytes: left, detail: `${walk.stoppedBy}; ${upTo}` };
		return sound
			? null
			: { kind: 'bad-checksum', lostBytes: 0, detail: `the file checksum differs; ${upTo}` };
	}
	const stated = `the header states ${header.dataBytes} bytes of messages`;
	if (header.dataBytes === 0 || statedEnd < limit) {
		// the last two bytes of a file whose header was never completed may be its checksum
		const isChecksum = left === 2 && fitChecksum(bytes, start, walk.end) === word(bytes, walk.end);
		return { kind: 'not-closed', lostBytes: isChecksum ? 0 : left, detail: `${stated}; ${upTo}` };
	}
	return { kind: 'cut-off', lostBytes: left + statedEnd - limit, detail: `${stated}; ${upTo}` };
}

/** a device that reserves space fills it with one byte, which is nothing lost */
function paddingBytes(bytes: Uint8Array, from: number, to: number): number {
	let at = to;
	while (at > from && (bytes[at - 1] === 0 || bytes[at - 1] === 0xff)) at--;
	return to - at > 16 ? to - at : 0;
}

function word(bytes: Uint8Array, at: number): number {
	return bytes[at] | (bytes[at + 1] << 8);
}
