import type Database from 'better-sqlite3';
import { createHash } from 'node:crypto';
import { createReadStream, existsSync } from 'node:fs';
import { Readable } from 'node:stream';
import { versionOf } from '../ledger/migrate';
import type { Ledger } from '../ledger/openLedger';
import { sourcePath } from '../store/sourceStore';
import { archiveReadme } from './archiveReadme';
import { archiveRows } from './archiveRows';
import { archiveTables, LEFT_OUT, type ArchiveTable } from './archiveTables';
import { describeTables } from './describeTables';
import {
	ARCHIVE_FORMAT,
	ARCHIVE_FORMAT_VERSION,
	filePath,
	tablePath,
	type Manifest,
	type ManifestFile,
	type ManifestTable
} from './manifest';
import { snapshot } from './snapshot';
import { tableJson } from './tableJson';
import { writeZip, type ZipPart } from './writeZip';

export interface ExportOptions {
	/** ride files too */
	readonly sources?: boolean;
	/** photos and drawings too */
	readonly attachments?: boolean;
	/** people's names and weights too; else codes stand in for names */
	readonly names?: boolean;
}

/**
 * The whole ledger as one zip file, as it is at this moment, piece by piece: tables as canonical JSON,
 * hashes of every source and attachment, their bytes where they are asked for.
 *
 * @returns a stream; it fails where the disk does
 */
export function exportArchive(ledger: Ledger, options: ExportOptions = {}): Readable {
	const database = snapshot(ledger);
	try {
		return streamOf(ledger, database, options);
	} catch (error) {
		database.close();
		throw error;
	}
}

function streamOf(ledger: Ledger, database: Database.Database, options: ExportOptions): Readable {
	const names = options.names === true;
	const made = new Date(ledger.now());
	const tables = archiveTables(database);
	const files = filesOf(ledger, database, options);
	const written: ManifestTable[] = [];
	const manifest = (): Manifest => ({
		format: ARCHIVE_FORMAT,
		formatVersion: ARCHIVE_FORMAT_VERSION,
		layout: versionOf(database),
		madeAt: made.toISOString(),
		names,
		tables: written,
		files,
		leftOut: LEFT_OUT
	});
	const readme = () => archiveReadme(describeTables(tables), { names });
	const parts: ZipPart[] = [
		{ path: 'README.txt', open: () => textPart(readme()) },
		...tables.map((table) => ({
			path: tablePath(table.name),
			open: () => Readable.from(measured(database, table, names, written), { objectMode: false })
		})),
		...files
			.filter(({ included }) => included)
			.map(({ sha256, kind }) => ({
				path: filePath(sha256),
				// photos are compressed already
				compress: kind === 'source',
				open: () => createReadStream(sourcePath(ledger.folder, sha256))
			})),
		{ path: 'manifest.json', open: () => textPart(`${JSON.stringify(manifest(), null, '\t')}\n`) }
	];
	return writeZip(parts, made, () => database.close());
}

export function textPart(text: string): Readable {
	return Readable.from([Buffer.from(text)], { objectMode: false });
}

/** A table's bytes, counted and hashed on their way. */
function* measured(
	database: Database.Database,
	table: ArchiveTable,
	names: boolean,
	written: ManifestTable[]
): Generator<Buffer> {
	const hash = createHash('sha256');
	let bytes = 0;
	let rows = 0;
	function* counted() {
		for (const row of archiveRows(database, table, names)) {
			rows++;
			yield row;
		}
	}
	for (const piece of tableJson(table, counted())) {
		hash.update(piece);
		bytes += piece.length;
		yield piece;
	}
	written.push({ name: table.name, rows, bytes, sha256: hash.digest('hex') });
}

function filesOf(ledger: Ledger, database: Database.Database, options: ExportOptions): ManifestFile[] {
	const rows = database
		.prepare<[], { sha256: string; bytes: number; kind: ManifestFile['kind'] }>(
			`SELECT s.sha256, s.bytes, CASE WHEN EXISTS (SELECT 1 FROM attachment a WHERE a.sha256 = s.sha256)
				AND NOT EXISTS (SELECT 1 FROM import i WHERE i.sha256 = s.sha256)
				THEN 'attachment' ELSE 'source' END AS kind
			FROM source s ORDER BY s.sha256`
		)
		.all();
	return rows.map(({ sha256, bytes, kind }) => {
		const wanted = kind === 'source' ? options.sources : options.attachments;
		return {
			sha256,
			bytes,
			kind,
			included: wanted === true && existsSync(sourcePath(ledger.folder, sha256))
		};
	});
}
