import type Database from 'better-sqlite3';
import { statSync } from 'node:fs';
import { join } from 'node:path';
import { hashFile, sourcePath } from '../store/sourceStore';
import { breathe } from './breathe';
import { storedFiles } from './storedFiles';
import { PartFindings } from './verifyReport';

export interface SourceCheckRow {
	readonly sha256: string;
	readonly bytes: number;
	/** when a rider had it erased; null = it must be in the store */
	readonly erasedMs: number | null;
}

/**
 * Every source against its name and its row: present, of that size, with that hash; erased ones gone.
 *
 * @param rows what the ledger says; null when it cannot be read: then each file is held against its name alone
 * @param stillKnown whether a row stands now; a source may go while others are read
 */
export async function checkSources(
	dataFolder: string,
	rows: readonly SourceCheckRow[] | null,
	stillKnown: (sha256: string) => boolean
): Promise<PartFindings> {
	const found = new PartFindings();
	if (rows === null) await checkNames(dataFolder, found);
	for (const { sha256, bytes, erasedMs } of rows ?? []) {
		const startedMs = performance.now();
		found.checked++;
		const path = sourcePath(dataFolder, sha256);
		const size = statSync(path, { throwIfNoEntry: false })?.size;
		if (erasedMs !== null) {
			if (size !== undefined)
				found.damage(sha256, 'It was erased, but its file lies in the store; the next start removes it.');
			continue;
		}
		const wrong = await whatIsWrong(path, sha256, bytes, size);
		if (wrong && stillKnown(sha256)) found.damage(sha256, wrong);
		await breathe(startedMs);
	}
	return found;
}

async function whatIsWrong(
	path: string,
	sha256: string,
	bytes: number,
	size: number | undefined
): Promise<string | null> {
	if (size === undefined)
		return 'Its file is missing from the store; hand the same file in again, or take it from a backup.';
	if (size !== bytes) return `Its file has ${size} bytes instead of ${bytes}.`;
	try {
		return (await hashFile(path)) === sha256 ? null : 'Its file does not have the SHA-256 that names it.';
	} catch (error) {
		return `Its file cannot be read (${(error as NodeJS.ErrnoException).code ?? 'unknown'}).`;
	}
}

async function checkNames(dataFolder: string, found: PartFindings): Promise<void> {
	for (const file of storedFiles(dataFolder)) {
		const sha256 = file.slice(3);
		if (!/^[0-9a-f]{64}$/.test(sha256)) continue;
		const startedMs = performance.now();
		found.checked++;
		const path = join(dataFolder, 'sources', file);
		const wrong = await whatIsWrong(path, sha256, statSync(path).size, statSync(path).size);
		if (wrong) found.damage(sha256, wrong);
		await breathe(startedMs);
	}
}

/** Every source as the ledger has it; null when its table cannot be read. */
export function readSourceRows(database: Database.Database): SourceCheckRow[] | null {
	try {
		const tombstones =
			database.prepare("SELECT 1 FROM sqlite_master WHERE name = 'erased_source'").get() !== undefined;
		return database
			.prepare<[], SourceCheckRow>(
				`SELECT s.sha256, s.bytes, ${
					tombstones ? '(SELECT erased_ms FROM erased_source e WHERE e.sha256 = s.sha256)' : 'NULL'
				} AS erasedMs FROM source s ORDER BY s.sha256`
			)
			.all();
	} catch {
		return null;
	}
}
