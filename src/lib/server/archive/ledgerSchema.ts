import type { Ledger } from '../ledger/openLedger';
import { archiveTables, LEFT_OUT, quoted } from './archiveTables';
import { describeTables, type TableDescription } from './describeTables';

export interface LedgerSchema {
	tables: (TableDescription & { rows: number })[];
	leftOut: { name: string; why: string }[];
	/** uploaded files and attachments, and what they take */
	files: number;
	bytes: number;
}

/** What an export of this ledger holds: tables with their meaning and their rows, and how much the files take. */
export function ledgerSchema(ledger: Ledger): LedgerSchema {
	const { database } = ledger;
	const tables = archiveTables(database);
	const described = describeTables(tables);
	const count = (name: string) =>
		database.prepare<[], { rows: number }>(`SELECT count(*) AS rows FROM ${quoted(name)}`).get()!.rows;
	const { files, bytes } = database
		.prepare<[], { files: number; bytes: number }>(
			'SELECT count(*) AS files, coalesce(sum(bytes), 0) AS bytes FROM source'
		)
		.get()!;
	return {
		tables: described.map((table) => ({ ...table, rows: count(table.name) })),
		leftOut: Object.entries(LEFT_OUT).map(([name, why]) => ({ name, why })),
		files,
		bytes
	};
}
