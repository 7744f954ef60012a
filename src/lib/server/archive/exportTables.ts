import { Readable } from 'node:stream';
import type { Ledger } from '../ledger/openLedger';
import { archiveRows } from './archiveRows';
import { archiveTables } from './archiveTables';
import { describeTables } from './describeTables';
import { textPart } from './exportArchive';
import { schemaText } from './schemaText';
import { snapshot } from './snapshot';
import { csvColumn, isInstant, tableCsv } from './tableCsv';
import { writeZip } from './writeZip';

/**
 * Every table of the ledger for a spreadsheet: a zip file with one CSV file a table and a text that says what
 * each column means. It cannot be read back; the archive is for that.
 *
 * @param options names: people's names and weights too; else codes stand in for names
 */
export function exportTables(ledger: Ledger, options: { names?: boolean } = {}): Readable {
	const database = snapshot(ledger);
	try {
		const names = options.names === true;
		const tables = archiveTables(database);
		const described = describeTables(tables).map((table) => ({
			...table,
			columns: table.columns
				.filter(({ type }) => type !== 'BLOB')
				.map((column) =>
					isInstant(column.name) ? { ...column, type: 'text', unit: 'ISO 8601, UTC' } : column
				)
		}));
		const parts = [
			{ path: 'README.txt', open: () => textPart(readme(schemaText(described, csvColumn), names)) },
			...tables.map((table) => ({
				path: `${table.name}.csv`,
				open: () => Readable.from(tableCsv(table, archiveRows(database, table, names)), { objectMode: false })
			}))
		];
		return writeZip(parts, new Date(ledger.now()), () => database.close());
	} catch (error) {
		database.close();
		throw error;
	}
}

function readme(schema: string, names: boolean): string {
	return `The tables of a ledger of Slip Ledger, one file each: comma-separated values (RFC 4180), UTF-8, header
first. Instants are ISO 8601 in UTC. Yes is 1 and no is 0; an empty cell is not known or not said. A text that
a spreadsheet would run as a formula has an apostrophe before it.

People: ${names ? 'names and weights are in it.' : 'codes stand in for names; weights are left out.'}

Events and distances stand by ride and analysis version; never add up two versions. "Observed" metres are
those that could have shown a slip: on all of them together nine in ten of the reference size and more should be found; a rate is
per observed kilometre, not per kilometre.

${schema}
`;
}
