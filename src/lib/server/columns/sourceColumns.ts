import type { ColumnMapping } from '$lib/ride/columnMapping';
import type Database from 'better-sqlite3';

/** By which columns a file is read; null = nobody has named them, or its format needs none. */
export function sourceColumns(database: Database.Database, sha256: string): ColumnMapping | null {
	const mapping = database
		.prepare<[string], string>('SELECT mapping FROM source_columns WHERE sha256 = ?')
		.pluck()
		.get(sha256);
	return mapping === undefined ? null : (JSON.parse(mapping) as ColumnMapping);
}

/** By which columns every file that has been named some is read. */
export function allSourceColumns(database: Database.Database): ReadonlyMap<string, ColumnMapping> {
	const rows = database
		.prepare<[], { sha256: string; mapping: string }>('SELECT sha256, mapping FROM source_columns')
		.all();
	return new Map(rows.map(({ sha256, mapping }) => [sha256, JSON.parse(mapping) as ColumnMapping]));
}

/** The mapping that a person gave for files with this header; null = none. */
export function rememberedColumns(database: Database.Database, header: string): ColumnMapping | null {
	const mapping = database
		.prepare<[string], string>('SELECT mapping FROM column_mapping WHERE header = ?')
		.pluck()
		.get(header);
	return mapping === undefined ? null : (JSON.parse(mapping) as ColumnMapping);
}
