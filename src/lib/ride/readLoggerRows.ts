import { parse } from 'csv-parse/sync';
import { READ_LIMITS } from './limits';
import type { LoggerHeader } from './loggerHeader';
import { refusal } from './refusal';
import { decimal } from './trackColumns';

/** What was left out of a table. */
export interface TableLeftOut {
	/** rows with another number of columns than the head, which were left out */
	readonly ragged: number;
	/** line of the first of them; 0 = none */
	readonly firstRaggedLine: number;
	/** cells that hold something other than a number */
	readonly notNumbers: number;
}

export interface LoggerRows extends TableLeftOut {
	/** seconds as written; NaN = none */
	readonly timeS: Float64Array;
	readonly crankRpm: Float64Array;
	readonly wheelRpm: Float64Array;
	readonly crankTorqueNm: Float64Array;
}

/** A column that is wanted: its place (-1 = there is none) and how a cell is read; NaN = no value. */
export interface WantedColumn {
	readonly column: number;
	readonly read: (cell: string) => number;
}

const CHUNK = 1 << 20;
const NEWLINE = 0x0a;

/**
 * Reads the rows of a logger's CSV file.
 * @param bytes the file
 * @param bodyAt first byte of the first row
 * @param header its head
 * @param mostSamples as many as may be
 * @returns the columns
 * @throws RideRefused as readTableColumns does
 */
export function readLoggerRows(
	bytes: Uint8Array,
	bodyAt: number,
	header: LoggerHeader,
	mostSamples = READ_LIMITS.samples
): LoggerRows {
	const comma = header.delimiter !== ',';
	const read = (cell: string) => decimal(comma ? cell.replace(',', '.') : cell);
	const wanted = [header.time, header.crankRpm, header.wheelRpm, header.crankTorqueNm].map((column) => ({
		column,
		read
	}));
	const { values, ...leftOut } = readTableColumns(bytes, bodyAt, header, wanted, mostSamples);
	const [timeS, crankRpm, wheelRpm, crankTorqueNm] = values;
	return { timeS, crankRpm, wheelRpm, crankTorqueNm, ...leftOut };
}

/**
 * Reads columns of a table, a piece at a time so that memory stays small.
 * @param bytes the file
 * @param bodyAt first byte of the first row
 * @param head how cells are parted, how many a row has, lines before the first
 * @param wanted the columns
 * @param mostSamples as many as may be
 * @returns one array a column; a last line that does not end with a line break may be cut off and is left out
 * @throws RideRefused 'too-large' past the bound on samples, 'damaged' where quotes do not close
 */
export function readTableColumns(
	bytes: Uint8Array,
	bodyAt: number,
	head: { readonly delimiter: string; readonly columns: number; readonly lines: number },
	wanted: readonly WantedColumn[],
	mostSamples = READ_LIMITS.samples
): TableLeftOut & { readonly values: Float64Array[] } {
	const end = bytes.lastIndexOf(NEWLINE) + 1;
	const most = countLines(bytes, bodyAt, end);
	if (most > mostSamples) throw refusal('too-large', `${most} lines, the bound is ${mostSamples}`);
	const values = wanted.map(() => new Float64Array(most));
	let count = 0;
	let ragged = 0;
	let firstRaggedLine = 0;
	let notNumbers = 0;
	let line = head.lines;
	const valueOf = (record: readonly string[], { column, read }: WantedColumn): number => {
		if (column === -1 || record[column] === '') return NaN;
		const value = read(record[column]);
		if (Number.isNaN(value)) notNumbers++;
		return value;
	};
	for (let from = bodyAt; from < end;) {
		const to = from + CHUNK >= end ? end : bytes.lastIndexOf(NEWLINE, from + CHUNK) + 1 || end;
		const pieceEnd = to > from ? to : bytes.indexOf(NEWLINE, from) + 1;
		parsePiece(bytes.subarray(from, pieceEnd), head.delimiter, line, (record, at) => {
			if (record.length !== head.columns) {
				if (ragged++ === 0) firstRaggedLine = at;
				return;
			}
			for (let i = 0; i < wanted.length; i++) values[i][count] = valueOf(record, wanted[i]);
			count++;
		});
		line += countLines(bytes, from, pieceEnd);
		from = pieceEnd;
	}
	return { values: values.map((column) => column.subarray(0, count)), ragged, firstRaggedLine, notNumbers };
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
