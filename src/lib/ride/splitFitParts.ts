import { fitChecksum } from './fitChecksum';
import { fitHeader, nextFitHeader, type FitHeader } from './fitHeader';
import type { FitDamage, FitPart } from './fitPart';
import { MAX_FIT_PARTS } from './limits';
import { refusal } from './refusal';
import { walkFitMessages } from './walkFitMessages';

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
	const left = limit - walk.end;
	let damage: FitDamage | null = null;
	if (sizeHolds) {
		if (walk.stoppedBy) damage = { kind: 'broken-inside', lostBytes: left, detail: walk.stoppedBy };
		else if (!sound) damage = { kind: 'bad-checksum', lostBytes: 0, detail: 'the file checksum differs' };
	} else if (header.dataBytes === 0) {
		// the last two bytes of a file whose header was never completed may be its checksum
		const lostBytes = left === 2 && fitChecksum(bytes, start, walk.end) === word(bytes, walk.end) ? 0 : left;
		damage = { kind: 'not-closed', lostBytes, detail: 'the header states no size' };
	} else {
		const missing = Math.max(0, statedEnd - limit);
		damage = {
			kind: 'cut-off',
			lostBytes: left + missing,
			detail: `the header states ${header.dataBytes} bytes of messages, ${limit - dataStart} are there`
		};
	}
	if (damage) damage = { ...damage, detail: `${damage.detail}; whole up to byte ${walk.end}` };
	const { end: dataEnd, records, messages, descriptionNumberOffsets } = walk;
	return {
		part: { start, dataStart, dataEnd, records, messages, descriptionNumberOffsets, damage },
		next: sizeHolds ? statedEnd + 2 : limit
	};
}

function word(bytes: Uint8Array, at: number): number {
	return bytes[at] | (bytes[at + 1] << 8);
}
