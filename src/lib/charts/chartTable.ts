import { csvCell } from '$lib/tables/csvCell';

/** The figures behind a chart: names of the columns with their units, then the rows. */
export interface ChartTable {
	readonly columns: readonly string[];
	readonly rows: Iterable<readonly (string | number | null)[]>;
}

/**
 * A table as comma-separated values (RFC 4180). An empty cell is not known; text that a spreadsheet would run as a
 * formula is neutralised.
 */
export function chartTableCsv({ columns, rows }: ChartTable): string {
	const lines = [columns, ...rows].map((cells) => cells.map(csvCell).join(','));
	return `${lines.join('\r\n')}\r\n`;
}
