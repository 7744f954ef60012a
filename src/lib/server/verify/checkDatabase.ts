import type Database from 'better-sqlite3';
import { quoted } from '../archive/archiveTables';
import { versionOf } from '../ledger/migrate';
import { PartFindings } from './verifyReport';

const MOST_MESSAGES = 20;

/**
 * Whether every page of a database is sound and every row that is referred to is there. When it is not sound,
 * each table is looked at by itself, so that it is known which of them are whole.
 *
 * @param newest the layout that this program knows
 */
export function checkDatabase(database: Database.Database, newest: number): PartFindings {
	const found = new PartFindings();
	const layout = versionOf(database);
	if (layout > newest) found.damage('layout', `It is of layout ${layout}; this program knows ${newest}.`);
	else if (layout < newest)
		found.note('layout', `It is of layout ${layout}; the next start brings it to ${newest}.`);
	const tables = tableNames(database);
	found.checked = tables.length;
	if (integrityOf(database, '').length > 0) {
		for (const table of tables) {
			const messages = integrityOf(database, table);
			if (messages.length > 0)
				found.damage(table, `The table ${table} is damaged: ${messages.slice(0, 3).join('; ')}.`);
			else found.note(table, `The table ${table} is whole.`);
		}
		// pages that belong to no table: lists of free pages, say
		if (!tables.some((table) => integrityOf(database, table).length > 0))
			found.damage('file', `The file is damaged: ${integrityOf(database, '').slice(0, 3).join('; ')}.`);
	}
	looseEnds(database, found);
	return found;
}

function tableNames(database: Database.Database): string[] {
	return database
		.prepare<[], { name: string }>(
			"SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%' ORDER BY name"
		)
		.all()
		.map(({ name }) => name);
}

/** @param table '' = the whole file; @returns what SQLite finds wrong, empty when it is sound */
function integrityOf(database: Database.Database, table: string): string[] {
	try {
		const asked = table === '' ? String(MOST_MESSAGES) : quoted(table);
		const rows = database.pragma(`integrity_check(${asked})`) as { integrity_check: string }[];
		return rows
			.map((row) =>
				row.integrity_check.replace(/^\*\*\* in database \w+ \*\*\*\s*/, '').replaceAll('\n', ' ')
			)
			.filter((message) => message !== 'ok' && message !== '');
	} catch (error) {
		return [(error as Error).message];
	}
}

function looseEnds(database: Database.Database, found: PartFindings): void {
	try {
		const rows = database.pragma('foreign_key_check') as { table: string; parent: string; rowid: number }[];
		for (const { table, parent, rowid } of rows)
			found.damage(
				table,
				`A row of ${table} (${rowid ?? 'without number'}) refers to one of ${parent} that is not there.`
			);
	} catch (error) {
		found.damage('references', `References between tables could not be read: ${(error as Error).message}.`);
	}
}
