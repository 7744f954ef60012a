import type { ArchiveRow, ArchiveValue } from './archiveRows';
import type { ArchiveTable } from './archiveTables';

const PIECE_CHARACTERS = 65_536;

/**
 * A table as canonical JSON: an array with one row a line, the columns of a row in the order of their names,
 * no white space within a line, numbers as ECMAScript writes them (the rules of RFC 8785). Bytes stand in
 * base64. The same rows always give the same bytes.
 *
 * @throws RangeError for a number that JSON cannot hold
 */
export function* tableJson(table: ArchiveTable, rows: Iterable<ArchiveRow>): Generator<Buffer> {
	const names = table.columns.map(({ name }) => name).sort();
	let piece = '[';
	let first = true;
	for (const row of rows) {
		piece += first ? '\n' : ',\n';
		first = false;
		piece += `{${names.map((name) => `${JSON.stringify(name)}:${valueJson(row[name], table, name)}`).join(',')}}`;
		if (piece.length < PIECE_CHARACTERS) continue;
		yield Buffer.from(piece);
		piece = '';
	}
	yield Buffer.from(`${piece}\n]\n`);
}

function valueJson(value: ArchiveValue, table: ArchiveTable, name: string): string {
	if (Buffer.isBuffer(value)) return `"${value.toString('base64')}"`;
	const isNumber = typeof value === 'number';
	if (isNumber && (!Number.isFinite(value) || (Number.isInteger(value) && !isExact(value))))
		throw new RangeError(`${table.name}.${name} holds ${value}, which has no exact form in the archive`);
	return JSON.stringify(value);
}

/** beyond this a 64-bit number of the database may have lost digits on its way */
function isExact(value: number): boolean {
	return Number.isSafeInteger(value) || Math.abs(value) > 2 ** 63;
}

/**
 * Reads one line of such a table; null for the brackets around the rows.
 *
 * @throws SyntaxError when the line is no row of exactly these columns
 */
export function readRowLine(table: ArchiveTable, line: string): ArchiveRow | null {
	if (line === '[' || line === ']') return null;
	const row = JSON.parse(line.endsWith(',') ? line.slice(0, -1) : line) as Record<string, unknown>;
	if (typeof row !== 'object' || row === null || Array.isArray(row)) throw new SyntaxError('no row');
	if (Object.keys(row).length !== table.columns.length) throw new SyntaxError('other columns');
	return Object.fromEntries(
		table.columns.map(({ name, type }) => {
			if (!Object.hasOwn(row, name)) throw new SyntaxError(`no column ${name}`);
			const value = row[name];
			if (value !== null && typeof value !== 'string' && typeof value !== 'number')
				throw new SyntaxError(`${name} is no plain value`);
			return [name, type === 'BLOB' && typeof value === 'string' ? Buffer.from(value, 'base64') : value];
		})
	);
}
