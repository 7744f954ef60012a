import type { TableLeftOut } from './readLoggerRows';
import type { RideWarning } from './ride';

/** What must be said of a logger's table: no date, lines and cells that were left out. */
export function tableWarnings(startedAtMs: number | null, rows: TableLeftOut): RideWarning[] {
	const warnings: RideWarning[] = [];
	if (startedAtMs === null) {
		warnings.push({
			code: 'no-clock-in-logger',
			sentence: 'The logger knows no date. Say when this ride was, so that it finds the build on the wheel.',
			detail: 'no comment line "# started_at: ISO" before the column names'
		});
	}
	if (rows.ragged > 0) {
		warnings.push({
			code: 'rows-left-out',
			sentence: 'Some lines of the file have missing or surplus columns and were left out.',
			detail: `${rows.ragged} lines, the first is line ${rows.firstRaggedLine}`
		});
	}
	if (rows.notNumbers > 0) {
		warnings.push({
			code: 'cells-left-out',
			sentence: 'Some cells of the file hold no number and were left out.',
			detail: `${rows.notNumbers} cells`
		});
	}
	return warnings;
}
