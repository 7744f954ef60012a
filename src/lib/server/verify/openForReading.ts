import Database from 'better-sqlite3';
import { copyFileSync, existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';

export interface OpenForReading {
	readonly database: Database.Database;
	close(): void;
}

/**
 * Opens a database for reading alone, beside whoever writes. In a folder that cannot be written to, SQLite
 * cannot read a database with a log; then a copy is read.
 *
 * @throws SqliteError when it is no database or cannot be read; Error when there is none
 */
export function openForReading(file: string): OpenForReading {
	if (!existsSync(file)) throw new Error('the file is not there');
	try {
		return readable(file, () => {});
	} catch (error) {
		if (!/^SQLITE_(CANTOPEN|READONLY|IOERR)/.test((error as { code?: string }).code ?? '')) throw error;
	}
	const folder = mkdtempSync(join(tmpdir(), 'slip-ledger-verify-'));
	const remove = () => rmSync(folder, { recursive: true, force: true });
	try {
		const copy = join(folder, basename(file));
		copyFileSync(file, copy);
		if (existsSync(`${file}-wal`)) copyFileSync(`${file}-wal`, `${copy}-wal`);
		return readable(copy, remove);
	} catch (error) {
		remove();
		throw error;
	}
}

function readable(file: string, after: () => void): OpenForReading {
	const database = new Database(file, { readonly: true, timeout: 10_000 });
	try {
		database.prepare('SELECT count(*) FROM sqlite_master').get();
	} catch (error) {
		database.close();
		throw error;
	}
	return {
		database,
		close() {
			database.close();
			after();
		}
	};
}
