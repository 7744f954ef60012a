import type Database from 'better-sqlite3';
import { quoted, type ArchiveTable } from './archiveTables';
import { rowRule } from './rowRules';

export type ArchiveValue = string | number | Buffer | null;
export type ArchiveRow = Readonly<Record<string, ArchiveValue>>;

/** The rows of a table as they go into an archive, in the order of its key. */
export function archiveRows(
	database: Database.Database,
	table: ArchiveTable,
	names: boolean
): IterableIterator<ArchiveRow> {
	const rule = rowRule(table.name, names);
	const columns = table.columns.map(
		({ name }) => `${rule.columns?.[name] ?? quoted(name)} AS ${quoted(name)}`
	);
	const where = rule.where ? `WHERE ${rule.where}` : '';
	return database
		.prepare<[], ArchiveRow>(
			`SELECT ${columns.join(', ')} FROM ${quoted(table.name)} ${where} ORDER BY ${table.order
				.map((name) => `${quoted(table.name)}.${quoted(name)}`)
				.join(', ')}`
		)
		.iterate();
}
