import { fieldsToRead, type FieldToRead, type FitNumberName } from './fitRecordFields';
import type { FitPart } from './fitPart';

/** One value a record by profile name, NaN = missing; fields that no record has are left out. */
export interface FitRecords {
	/** instants in milliseconds since 1970 UTC; NaN = none */
	readonly atMs: Float64Array;
	readonly numbers: { readonly [name in FitNumberName]?: Float64Array };
}

const RECORD = 20;
/** 1989-12-31 00:00 UTC, from which FIT counts (FIT profile, date_time) */
const FIT_EPOCH_MS = 631_065_600_000;
/** instants before 1998 in a FIT file count from power-on, not from a calendar (FIT profile, date_time) */
const FIRST_CALENDAR_MS = FIT_EPOCH_MS + 0x10000000 * 1000;
const UINT32 = 0x86;
const NO_TIME = 0xffffffff;

interface Definition {
	readonly bytes: number;
	/** bytes that a compressed-timestamp message leaves out */
	readonly timestampBytes: number;
	/** where the timestamp lies behind the header; -1 = nowhere */
	readonly timestampAt: number;
	readonly little: boolean;
	/** null = no record */
	readonly fields: readonly FieldToRead[] | null;
}

/**
 * Reads the records of whole parts straight into columns: they are nearly all of a file, and an object for each
 * would take most of the time and memory of reading it. What the fields mean is as in the FIT parser, which reads
 * the other messages; a test holds both equal.
 *
 * @param bytes the upload
 * @param parts parts of it as far as they are whole
 */
export function fitRecords(bytes: Uint8Array, parts: readonly FitPart[]): FitRecords {
	const length = parts.reduce((sum, part) => sum + part.records, 0);
	const atMs = new Float64Array(length).fill(NaN);
	const numbers: { [name in FitNumberName]?: Float64Array } = {};
	const column = (name: FitNumberName) => (numbers[name] ??= new Float64Array(length).fill(NaN));
	const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
	let row = 0;
	for (const { dataStart, dataEnd } of parts) {
		const definitions: (Definition | undefined)[] = new Array(16).fill(undefined);
		let lastTime = NO_TIME;
		let at = dataStart;
		while (at < dataEnd) {
			const header = bytes[at];
			if ((header & 0xc0) === 0x40) {
				at = define(view, at, definitions, column);
				continue;
			}
			const compressed = (header & 0x80) !== 0;
			const definition = definitions[compressed ? (header >> 5) & 3 : header & 15]!;
			const { timestampAt, timestampBytes, fields, little } = definition;
			// a compressed message leaves out a timestamp that would come first
			const from = at + 1 - (compressed ? timestampBytes : 0);
			const left = compressed && timestampBytes > 0;
			let time = timestampAt >= 0 && !left ? view.getUint32(from + timestampAt, little) : NO_TIME;
			if (compressed) {
				if (lastTime !== NO_TIME) time = lastTime = nextTime(lastTime, header & 31);
			} else if (timestampAt >= 0) lastTime = time;
			if (fields) {
				if (time !== NO_TIME) atMs[row] = calendarMs(time);
				for (const field of fields) field.read(view, from + field.at, little, row);
				row++;
			}
			at = from + definition.bytes;
		}
	}
	return { atMs, numbers };
}

/** Takes in a definition; returns where the next message begins. */
function define(
	view: DataView,
	at: number,
	definitions: (Definition | undefined)[],
	column: (name: FitNumberName) => Float64Array
): number {
	const little = view.getUint8(at + 2) === 0;
	const isRecord = view.getUint16(at + 3, little) === RECORD;
	const fieldsEnd = at + 6 + 3 * view.getUint8(at + 5);
	let timestampAt = -1;
	let bytes = 0;
	for (let field = at + 6; field < fieldsEnd; field += 3) {
		const size = view.getUint8(field + 1);
		// a date_time is one uint32; anything else under its number is none
		if (view.getUint8(field) === 253) {
			timestampAt = view.getUint8(field + 2) === UINT32 && size > 0 && size % 4 === 0 ? bytes : -1;
		}
		bytes += size;
	}
	const fields = isRecord ? fieldsToRead(view, at + 6, fieldsEnd, column) : null;
	let end = fieldsEnd;
	if ((view.getUint8(at) & 0x20) !== 0) {
		end = fieldsEnd + 1 + 3 * view.getUint8(fieldsEnd);
		for (let field = fieldsEnd + 1; field < end; field += 3) bytes += view.getUint8(field + 1);
	}
	const timestampFirst = fieldsEnd > at + 6 && view.getUint8(at + 6) === 253;
	definitions[view.getUint8(at) & 15] = {
		bytes,
		timestampBytes: timestampFirst ? view.getUint8(at + 7) : 0,
		timestampAt,
		little,
		fields
	};
	return end;
}

/** The first time from the last one on whose lowest five bits are these (FIT protocol, compressed timestamp header). */
function nextTime(last: number, lowest: number): number {
	const before = last % 32;
	return last - before + lowest + (lowest < before ? 32 : 0);
}

function calendarMs(time: number): number {
	const ms = time * 1000 + FIT_EPOCH_MS;
	return ms >= FIRST_CALENDAR_MS ? ms : NaN;
}
