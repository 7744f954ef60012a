import { csvCell } from '$lib/tables/csvCell';
import type { ArchiveRow, ArchiveValue } from './archiveRows';
import type { ArchiveTable } from './archiveTables';

const PIECE_CHARACTERS = 65_536;

/**
 * A table as comma-separated values (RFC 4180), header first. Instants are written as ISO 8601 in UTC, so
 * that a spreadsheet reads them; bytes are left out; text that a spreadsheet would run gets an apostrophe.
 */
export function* tableCsv(table: ArchiveTable, rows: Iterable<ArchiveRow>): Generator<Buffer> {
	const columns = table.columns.filter(({ type }) => type !== 'BLOB').map(({ name }) => name);
	let piece = `${columns.map(csvColumn).join(',')}\r\n`;
	for (const row of rows) {
		piece += `${columns.map((name) => cell(name, row[name])).join(',')}\r\n`;
		if (piece.length < PIECE_CHARACTERS) continue;
		yield Buffer.from(piece);
		piece = '';
	}
	yield Buffer.from(piece);
}

/** The column's name in such a file: started_ms is written as started_utc. */
export function csvColumn(name: string): string {
	return isInstant(name) ? name.replace(/ms$/, 'utc') : name;
}

export function isInstant(name: string): boolean {
	return /(^|_)ms$/.test(name);
}

function cell(name: string, value: ArchiveValue): string {
	if (Buffer.isBuffer(value)) return '';
	if (typeof value === 'number' && isInstant(name)) return instant(value);
	// identities keep all their digits
	if (typeof value === 'number' && Number.isSafeInteger(value)) return String(value);
	return csvCell(value);
}

function instant(ms: number): string {
	const date = new Date(ms);
	return Number.isNaN(date.getTime()) ? '' : date.toISOString();
}
