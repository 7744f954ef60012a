import { LEDGER_MIGRATIONS } from '../ledger/migrations';
import type { ArchiveTable } from './archiveTables';
import { TABLE_WORDS } from './tableWords';

export interface ColumnDescription {
	readonly name: string;
	readonly type: string;
	/** what the name's ending tells of its unit; '' = it has none */
	readonly unit: string;
	/** in the words of the ledger's layout; '' = the name says it all */
	readonly about: string;
}

export interface TableDescription {
	readonly name: string;
	readonly about: string;
	readonly columns: readonly ColumnDescription[];
}

const UNITS: readonly [ending: RegExp, unit: string][] = [
	[/(^|_)ms$/, 'milliseconds since 1970, UTC'],
	[/_mps$/, 'metres a second'],
	[/_rpm$/, 'turns a minute'],
	[/_nm$/, 'newton metres'],
	[/_mm$/, 'millimetres'],
	[/_deg$/, 'degrees'],
	[/_kg$/, 'kilograms'],
	[/_g$/, 'grams'],
	[/_turns$/, 'crank turns'],
	[/_m$/, 'metres'],
	[/_s$/, 'seconds']
];

/**
 * What each table and column means, in the words that stand beside them in the numbered steps of the
 * ledger's layout: one place for both, so that a new table brings its own description.
 */
export function describeTables(
	tables: readonly ArchiveTable[],
	steps: readonly string[] = LEDGER_MIGRATIONS.map(({ sql }) => sql)
): TableDescription[] {
	const words = new Map([...Object.entries(TABLE_WORDS), ...wordsIn(steps)]);
	return tables.map(({ name, columns }) => ({
		name,
		about: words.get(name) ?? '',
		columns: columns.map((column) => ({
			name: column.name,
			type: column.type,
			unit: UNITS.find(([ending]) => ending.test(column.name))?.[1] ?? '',
			about: words.get(`${name}.${column.name}`) ?? ''
		}))
	}));
}

/** Comments by what follows them: a table, or a column of it ("table.column"). */
function wordsIn(steps: readonly string[]): Map<string, string> {
	const words = new Map<string, string>();
	for (const sql of steps) {
		let table: string | null = null;
		let comment: string[] = [];
		for (const line of sql.split('\n')) {
			const said = /^\s*--\s?(.*)$/.exec(line);
			if (said) {
				comment.push(said[1].trim());
				continue;
			}
			const made = /^CREATE TABLE (\w+)/.exec(line);
			const added = /^ALTER TABLE (\w+) ADD COLUMN (\w+)/.exec(line);
			const column = table ? /^\t(\w+) (INTEGER|REAL|TEXT|BLOB|INT)\b/.exec(line) : null;
			const about =
				made?.[1] ?? (added ? `${added[1]}.${added[2]}` : column ? `${table}.${column[1]}` : null);
			if (about && comment.length > 0) words.set(about, comment.join(' '));
			if (made) table = made[1];
			else if (/^\)/.test(line)) table = null;
			comment = [];
		}
	}
	return words;
}
