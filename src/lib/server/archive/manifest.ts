import { LedgerRefusal } from '../refusal';

export const ARCHIVE_FORMAT = 'slip-ledger archive';
export const ARCHIVE_FORMAT_VERSION = 1;

export interface ManifestTable {
	readonly name: string;
	readonly rows: number;
	readonly bytes: number;
	/** of the table's file */
	readonly sha256: string;
}

export interface ManifestFile {
	readonly sha256: string;
	readonly bytes: number;
	readonly kind: 'source' | 'attachment';
	/** false when it was not asked for, or is not in the store any more */
	readonly included: boolean;
}

/** What is in an archive: written last, read first. */
export interface Manifest {
	readonly format: typeof ARCHIVE_FORMAT;
	readonly formatVersion: number;
	/** number of the ledger's last migration */
	readonly layout: number;
	/** ISO 8601 in UTC */
	readonly madeAt: string;
	/** people's names and weights are in it */
	readonly names: boolean;
	readonly tables: readonly ManifestTable[];
	/** every source and attachment of the ledger, whether its bytes are in the archive or not */
	readonly files: readonly ManifestFile[];
	/** table -> why it is not in the archive */
	readonly leftOut: Readonly<Record<string, string>>;
}

const HASH = /^[0-9a-f]{64}$/;

/**
 * Reads a manifest from its text; nothing in it is believed before it was looked at.
 *
 * @throws LedgerRefusal wrong-value when it is none; newer-ledger when a newer program made it
 */
export function readManifest(text: string): Manifest {
	let manifest: Manifest;
	try {
		manifest = JSON.parse(text) as Manifest;
	} catch {
		throw noArchive('its manifest cannot be read');
	}
	if (manifest?.format !== ARCHIVE_FORMAT) throw noArchive('it does not say that it is one');
	if (!Number.isInteger(manifest.formatVersion) || manifest.formatVersion > ARCHIVE_FORMAT_VERSION)
		throw new LedgerRefusal(
			'newer-ledger',
			'This archive was made by a newer Slip Ledger; nothing was changed. Update the program.'
		);
	const sound =
		Number.isInteger(manifest.layout) &&
		manifest.layout > 0 &&
		Array.isArray(manifest.tables) &&
		manifest.tables.every(isTable) &&
		Array.isArray(manifest.files) &&
		manifest.files.every(isFile);
	if (!sound) throw noArchive('its manifest is damaged');
	return manifest;
}

function isTable(table: ManifestTable): boolean {
	return (
		typeof table?.name === 'string' && isCount(table.rows) && isCount(table.bytes) && HASH.test(table.sha256)
	);
}

function isFile(file: ManifestFile): boolean {
	return (
		HASH.test(file?.sha256) &&
		isCount(file.bytes) &&
		(file.kind === 'source' || file.kind === 'attachment') &&
		typeof file.included === 'boolean'
	);
}

function isCount(value: unknown): boolean {
	return Number.isSafeInteger(value) && (value as number) >= 0;
}

export function noArchive(why: string): LedgerRefusal {
	return new LedgerRefusal(
		'wrong-value',
		`This is no archive of a Slip Ledger: ${why}. Nothing was changed.`
	);
}

/** where a table lies in the archive */
export function tablePath(name: string): string {
	return `tables/${name}.json`;
}

/** where a source or attachment lies in the archive: as in the store */
export function filePath(sha256: string): string {
	return `sources/${sha256.slice(0, 2)}/${sha256}`;
}
