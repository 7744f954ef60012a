import { MAX_FIT_MESSAGES } from './limits';
import { refusal } from './refusal';

/** global message numbers of the FIT profile */
const RECORD = 20;
const FIELD_DESCRIPTION = 206;

export interface FitWalk {
	/** one past the last whole message */
	readonly end: number;
	readonly messages: number;
	readonly records: number;
	/** where the definitions of developer-field descriptions keep their message number */
	readonly descriptionNumberOffsets: number[];
	/** stretches of nothing but records: first byte, one past the last, of each in turn */
	readonly recordRuns: number[];
	/** some message counts its time on from the one before */
	readonly compressed: boolean;
	/** why the walk ended before `limit`; null = it did not */
	readonly stoppedBy: string | null;
}

interface Definition {
	readonly number: number;
	readonly bytes: number;
	/** bytes that a compressed-timestamp message leaves out: its timestamp field, when that is first */
	readonly timestampBytes: number;
}

/**
 * Steps over the messages of a FIT file without reading their values (FIT protocol, record headers and
 * definition messages) to find how far it is whole.
 * @param bytes the upload
 * @param from first byte of the first message
 * @param limit one past the last byte that may belong to a message
 * @param before messages already counted in earlier parts
 * @returns where the last whole message ends, and what was seen on the way
 * @throws RideRefused 'too-large' past the bound on messages
 */
export function walkFitMessages(bytes: Uint8Array, from: number, limit: number, before = 0): FitWalk {
	const definitions = new Map<number, Definition>();
	const descriptionNumberOffsets: number[] = [];
	const recordRuns: number[] = [];
	let compressed = false;
	let at = from;
	let messages = 0;
	let records = 0;
	let stoppedBy: string | null = null;
	while (at < limit) {
		const header = bytes[at];
		const isDefinition = (header & 0xc0) === 0x40;
		const read = isDefinition
			? readDefinition(bytes, at, limit, definitions)
			: readMessage(header, at, limit, definitions);
		if (typeof read === 'string') {
			stoppedBy = read;
			break;
		}
		if (isDefinition && read.number === FIELD_DESCRIPTION) descriptionNumberOffsets.push(at + 3);
		if (!isDefinition && read.number === RECORD) {
			records++;
			if (recordRuns.at(-1) === at) recordRuns[recordRuns.length - 1] = read.end;
			else recordRuns.push(at, read.end);
		}
		if ((header & 0x80) !== 0) compressed = true;
		at = read.end;
		if (before + ++messages > MAX_FIT_MESSAGES) {
			throw refusal('too-large', `more than ${MAX_FIT_MESSAGES} messages`);
		}
	}
	return { end: at, messages, records, descriptionNumberOffsets, recordRuns, compressed, stoppedBy };
}

type Step = { readonly end: number; readonly number: number } | string;

function readDefinition(
	bytes: Uint8Array,
	at: number,
	limit: number,
	definitions: Map<number, Definition>
): Step {
	if (at + 6 > limit) return 'a definition is cut off';
	if ((bytes[at] & 0x10) !== 0) return 'a definition sets a reserved bit';
	if (bytes[at + 2] > 1) return 'a definition has an unknown byte order';
	const little = bytes[at + 2] === 0;
	const number = little ? bytes[at + 3] | (bytes[at + 4] << 8) : (bytes[at + 3] << 8) | bytes[at + 4];
	const nativeEnd = at + 6 + 3 * bytes[at + 5];
	const hasDeveloperFields = (bytes[at] & 0x20) !== 0;
	if (nativeEnd + (hasDeveloperFields ? 1 : 0) > limit) return 'a definition is cut off';
	const end = hasDeveloperFields ? nativeEnd + 1 + 3 * bytes[nativeEnd] : nativeEnd;
	if (end > limit) return 'a definition is cut off';
	let size = 0;
	for (let field = at + 6; field < nativeEnd; field += 3) size += bytes[field + 1];
	for (let field = nativeEnd + 1; field < end; field += 3) size += bytes[field + 1];
	const timestampFirst = bytes[at + 5] > 0 && bytes[at + 6] === 253;
	definitions.set(bytes[at] & 15, {
		number,
		bytes: size,
		timestampBytes: timestampFirst ? bytes[at + 7] : 0
	});
	return { end, number };
}

function readMessage(header: number, at: number, limit: number, definitions: Map<number, Definition>): Step {
	const compressed = (header & 0x80) !== 0;
	if (!compressed && (header & 0x30) !== 0) return 'a message sets a reserved bit';
	const definition = definitions.get(compressed ? (header >> 5) & 3 : header & 15);
	if (!definition) return 'a message has no definition';
	const end = at + 1 + definition.bytes - (compressed ? definition.timestampBytes : 0);
	return end > limit ? 'a message is cut off' : { end, number: definition.number };
}
