import { parseInstant } from './parseInstant';
import { decimal } from './trackColumns';

/** The beginning of a table of numbers whose columns nobody has named for us. */
export interface TableHead {
	readonly delimiter: ',' | ';' | '\t';
	/** of the columns, as the file has them; "column 1" ... where it has none */
	readonly names: readonly string[];
	/** where the first row of values begins, bytes */
	readonly bodyAt: number;
	/** lines before it */
	readonly lines: number;
	/** instant of time 0 from a comment `# started_at: ISO`; null = none */
	readonly startedAtMs: number | null;
	/** the same for every file with the same columns: what a person says of one holds for all of them */
	readonly key: string;
	/** the first rows, as written */
	readonly rows: readonly (readonly string[])[];
}

const HEAD_BYTES = 65_536;
const MOST_COLUMNS = 200;
const LONGEST_NAME = 60;
/** lines of words before a table begins */
const MOST_PREAMBLE = 60;
const ROWS_ASKED = 3;
const ROWS_KEPT = 400;

/**
 * Finds a table in the beginning of a file: rows of as many cells, at least two of them numbers, below a line of names.
 *
 * @param bytes the file
 * @returns its head, or null when there is no table
 */
export function tableHead(bytes: Uint8Array): TableHead | null {
	const text = new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes.subarray(0, HEAD_BYTES));
	if (text.includes('\0') || /^\uFEFF?\s*</.test(text)) return null;
	const ends = [...text.matchAll(/\n/g)].map(({ index }) => index);
	const lines = ends.map((end, i) =>
		text
			.slice(i === 0 ? 0 : ends[i - 1] + 1, end)
			.replace(/^\uFEFF/, '')
			.trim()
	);
	for (const delimiter of ['\t', ';', ','] as const) {
		const cells = lines.map((line) => cellsOf(line, delimiter));
		const first = cells.findIndex((_, i) => i <= MOST_PREAMBLE && beginsTable(lines, cells, i, delimiter));
		if (first === -1) continue;
		const columns = cells[first].length;
		const names = namesAbove(lines, cells, first, columns);
		const bodyAt = new TextEncoder().encode(text.slice(0, first === 0 ? 0 : ends[first - 1] + 1)).length;
		const rows = cells
			.slice(first)
			.filter((row, i) => row.length === columns && lines[first + i] !== '')
			.slice(0, ROWS_KEPT);
		const key = JSON.stringify([delimiter, ...names.map((name) => name.toLowerCase())]);
		return { delimiter, names, bodyAt, lines: first, startedAtMs: startOf(lines.slice(0, first)), key, rows };
	}
	return null;
}

/** Quotes within a head's cells are rare and are taken off; a delimiter within quotes is not looked for. */
function cellsOf(line: string, delimiter: string): string[] {
	return line.split(delimiter).map((cell) => cell.trim().replace(/^"(.*)"$/, '$1'));
}

function beginsTable(
	lines: readonly string[],
	cells: readonly string[][],
	i: number,
	delimiter: string
): boolean {
	const columns = cells[i].length;
	if (columns < 2 || columns > MOST_COLUMNS) return false;
	const rows = cells.slice(i, i + ROWS_ASKED).filter((_, at) => lines[i + at] !== '');
	return (
		rows.length >= 2 &&
		rows.every((row) => row.length === columns && row.filter((cell) => isValue(cell, delimiter)).length >= 2)
	);
}

function isValue(cell: string, delimiter: string): boolean {
	return !Number.isNaN(numberIn(cell, delimiter)) || parseInstant(cell.replace(' ', 'T')) !== null;
}

/** A cell as a number: with a decimal comma where the comma does not part the cells. */
export function numberIn(cell: string, delimiter: string): number {
	return decimal(delimiter === ',' ? cell : cell.replace(',', '.'));
}

/** The line above the values, with the one above it where that names and this states units. */
function namesAbove(
	lines: readonly string[],
	cells: readonly string[][],
	first: number,
	columns: number
): string[] {
	const above = [first - 2, first - 1]
		.filter((i) => i >= 0 && cells[i].length === columns && !lines[i].startsWith('#'))
		.map((i) => cells[i]);
	return Array.from({ length: columns }, (_, i) => {
		const name = above
			.map((row) => row[i])
			.filter((part) => part !== '')
			.join(' ')
			.replace(/\p{C}/gu, '')
			.slice(0, LONGEST_NAME);
		return name || `column ${i + 1}`;
	});
}

function startOf(lines: readonly string[]): number | null {
	for (const line of lines) {
		const stated = /^#\s*started_at\s*:\s*(\S+)$/i.exec(line);
		if (stated) return parseInstant(stated[1])?.atMs ?? null;
	}
	return null;
}
