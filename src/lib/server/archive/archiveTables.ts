import type Database from 'better-sqlite3';

/**
 * Tables that stay at home, and why: what the machine is doing just now, and what is made again by itself.
 * Every other table of the ledger is in the archive, also one that is added later.
 */
export const LEFT_OUT: Readonly<Record<string, string>> = {
	lease: 'which process works on the ledger just now',
	upload: 'files of which not everything has come yet',
	evidence: 'a counter that tells what was computed before from what is new',
	evidence_ride: 'which rides have changed since something was computed',
	derivation: 'attempts to compute a result again; they are made again where it is missing',
	person_password: 'opens this ledger alone; whoever takes an archive sets passwords of their own',
	access_link: 'links that open this ledger alone',
	session: 'browsers that are in just now',
	access_attempt: 'attempts to come in that failed just now',
	insertion_attempt: 'attempts to put slips into a ride; they are made again where the test is missing'
};

export interface ArchiveColumn {
	readonly name: string;
	readonly type: 'INTEGER' | 'REAL' | 'TEXT' | 'BLOB';
}

export interface ArchiveTable {
	readonly name: string;
	/** in the table's order */
	readonly columns: readonly ArchiveColumn[];
	/** what its rows are ordered by */
	readonly order: readonly string[];
	/** tables that its rows refer to */
	readonly refersTo: readonly string[];
}

interface ColumnInfo {
	name: string;
	type: string;
	pk: number;
	hidden: number;
}

/**
 * The tables of an archive as the database itself tells them, those that are referred to before those that
 * refer.
 *
 * @throws RangeError for a column of a type that the archive has no form for
 */
export function archiveTables(database: Database.Database): ArchiveTable[] {
	const names = database
		.prepare<[], { name: string }>(
			"SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%' ORDER BY name"
		)
		.all()
		.map(({ name }) => name)
		.filter((name) => !Object.hasOwn(LEFT_OUT, name));
	return referredFirst(names.map((name) => readTable(database, name)));
}

function readTable(database: Database.Database, name: string): ArchiveTable {
	const columns = (database.pragma(`table_xinfo(${quoted(name)})`) as ColumnInfo[]).filter(
		({ hidden }) => hidden === 0
	);
	const keys = columns.filter(({ pk }) => pk > 0).sort((a, b) => a.pk - b.pk);
	const foreign = database.pragma(`foreign_key_list(${quoted(name)})`) as { table: string }[];
	return {
		name,
		columns: columns.map((column) => ({ name: column.name, type: typeOf(name, column) })),
		order: keys.length > 0 ? keys.map((key) => key.name) : columns.map((column) => column.name),
		refersTo: [...new Set(foreign.map(({ table }) => table))].sort()
	};
}

function typeOf(table: string, { name, type }: ColumnInfo): ArchiveColumn['type'] {
	if (type === 'INT') return 'INTEGER';
	if (type === 'INTEGER' || type === 'REAL' || type === 'TEXT' || type === 'BLOB') return type;
	throw new RangeError(`column ${table}.${name} is of type ${type}`);
}

/** Each table after those it refers to; tables that refer to each other stay in the order of their names. */
function referredFirst(tables: readonly ArchiveTable[]): ArchiveTable[] {
	const byName = new Map(tables.map((table) => [table.name, table]));
	const placed = new Set<string>();
	const result: ArchiveTable[] = [];
	const place = (table: ArchiveTable) => {
		if (placed.has(table.name)) return;
		placed.add(table.name);
		for (const name of table.refersTo) {
			const other = byName.get(name);
			if (other) place(other);
		}
		result.push(table);
	};
	tables.forEach(place);
	return result;
}

/** A name of the database's own, for SQL. */
export function quoted(name: string): string {
	return `"${name.replaceAll('"', '""')}"`;
}
