import { createHash } from 'node:crypto';
import type { Readable } from 'node:stream';
import { StringDecoder } from 'node:string_decoder';
import { LedgerRefusal } from '../refusal';
import type { ArchiveRow } from './archiveRows';
import type { ArchiveTable } from './archiveTables';
import { noArchive, type ManifestTable } from './manifest';
import { readRowLine } from './tableJson';

/** a row of a ledger is far below it: the largest hold a few hundred kB */
const LONGEST_LINE = 64 * 2 ** 20;

/**
 * Reads a table of an archive row by row, and holds it against what the manifest says of it.
 *
 * @param take called with every row, in order
 * @throws LedgerRefusal incomplete when rows, bytes or hash are others; wrong-value when a line is no row
 */
export async function readTable(
	stream: Readable,
	table: ArchiveTable,
	expected: ManifestTable,
	take: (row: ArchiveRow) => void
): Promise<void> {
	const hash = createHash('sha256');
	const text = new StringDecoder('utf8');
	let rest = '';
	let bytes = 0;
	let rows = 0;
	const takeLine = (line: string) => {
		const row = rowOf(table, line);
		if (!row) return;
		rows++;
		take(row);
	};
	for await (const piece of whole(stream)) {
		hash.update(piece);
		bytes += piece.length;
		const lines = (rest + text.write(piece)).split('\n');
		rest = lines.pop() ?? '';
		if (rest.length > LONGEST_LINE) throw noArchive(`a row of ${table.name} is too long`);
		lines.forEach(takeLine);
	}
	if (rest !== '') throw damaged(table.name);
	if (rows !== expected.rows || bytes !== expected.bytes || hash.digest('hex') !== expected.sha256)
		throw damaged(table.name);
}

function rowOf(table: ArchiveTable, line: string): ArchiveRow | null {
	try {
		return readRowLine(table, line);
	} catch {
		throw damaged(table.name);
	}
}

async function* whole(stream: Readable): AsyncGenerator<Buffer> {
	try {
		for await (const piece of stream) yield piece as Buffer;
	} catch (error) {
		if (error instanceof LedgerRefusal) throw error;
		throw noArchive((error as Error).message);
	}
}

function damaged(name: string): LedgerRefusal {
	return new LedgerRefusal(
		'incomplete',
		`The table ${name} in this archive is not what its manifest says (rows, size or SHA-256): it is damaged or was changed. Nothing was taken over.`
	);
}
