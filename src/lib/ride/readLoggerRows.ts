import { parse } from 'csv-parse/sync';
import { READ_LIMITS } from './limits';
import type { LoggerHeader } from './loggerHeader';
import { refusal } from './refusal';
import { decimal } from './trackColumns';

export interface LoggerRows {
	/** seconds as written; NaN = none */
	readonly timeS: Float64Array;
	readonly crankRpm: Float64Array;
	readonly wheelRpm: Float64Array;
	readonly crankTorqueNm: Float64Array;
	/** rows with another number of columns than the head, which were left out */
	readonly ragged: number;
	/** line of the first of them; 0 = none */
	readonly firstRaggedLine: number;
	/** cells that hold something other than a number */
	readonly notNumbers: number;
}

const CHUNK = 1 << 20;
const NEWLINE = 0x0a;

/**
 * Reads the rows of a logger's CSV file, a piece at a time so that memory stays small.
 * @param bytes the file
 * @param bodyAt first byte of the first row
 * @param header its head
 * @param mostSamples as many as may be
 * @returns the columns; a last line that does not end with a line break may be cut off and is left out
 * @throws RideRefused 'too-large' past the bound on samples, 'damaged' where quotes do not close
 */
export function readLoggerRows(
	bytes: Uint8Array,
	bodyAt: number,
	header: LoggerHeader,
	mostSamples = READ_LIMITS.samples
): LoggerRows {
	const end = bytes.lastIndexOf(NEWLINE) + 1;
	const most = countLines(bytes, bodyAt, end);
	if (most > mostSamples) throw refusal('too-large', `${most} lines, the bound is ${mostSamples}`);
	const column = () => new Float64Array(most);
	const rows = { timeS: column(), crankRpm: column(), wheelRpm: column(), crankTorqueNm: column() };
	let count = 0;
	let ragged = 0;
	let firstRaggedLine = 0;
	let notNumbers = 0;
	let line = header.lines;
	const comma = header.delimiter !== ',';
	const cell = (record: readonly string[], at: number): number => {
		if (at === -1 || record[at] === '') return NaN;
		const value = decimal(comma ? record[at].replace(',', '.') : record[at]);
		if (Number.isNaN(value)) notNumbers++;
		return value;
	};
	for (let from = bodyAt; from < end;) {
		const to = from + CHUNK >= end ? end : bytes.lastIndexOf(NEWLINE, from + CHUNK) + 1 || end;
		const pieceEnd = to > from ? to : bytes.indexOf(NEWLINE, from) + 1;
		parsePiece(bytes.subarray(from, pieceEnd), header.delimiter, line, (record, at) => {
			if (record.length !== header.columns) {
				if (ragged++ === 0) firstRaggedLine = at;
				return;
			}
			rows.timeS[count] = cell(record, header.time);
			rows.crankRpm[count] = cell(record, header.crankRpm);
			rows.wheelRpm[count] = cell(record, header.wheelRpm);
			rows.crankTorqueNm[count] = cell(record, header.crankTorqueNm);
			count++;
		});
		line += countLines(bytes, from, pieceEnd);
		from = pieceEnd;
	}
	return {
		timeS: rows.timeS.subarray(0, count),
		crankRpm: rows.crankRpm.subarray(0, count),
		wheelRpm: rows.wheelRpm.subarray(0, count),
		crankTorqueNm: rows.crankTorqueNm.subarray(0, count),
		ragged,
		firstRaggedLine,
		notNumbers
	};
}

function parsePiece(
	piece: Uint8Array,
	delimiter: string,
	lineBefore: number,
	row: (record: readonly string[], line: number) => void
): void {
	try {
		parse(new TextDecoder('utf-8').decode(piece), {
			delimiter,
			comment: '#',
			trim: true,
			skip_empty_lines: true,
			relax_column_count: true,
			max_record_size: 100_000,
			on_record: (record: string[], { lines }) => {
				row(record, lineBefore + lines);
				return null;
			}
		});
	} catch (error) {
		throw refusal('damaged', `after line ${lineBefore}: ${(error as Error).message}`);
	}
}

function countLines(bytes: Uint8Array, from: number, to: number): number {
	let lines = 0;
	for (let at = bytes.indexOf(NEWLINE, from); at !== -1 && at < to; at = bytes.indexOf(NEWLINE, at + 1))
		lines++;
	return lines;
}
