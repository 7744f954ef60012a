import Database from 'better-sqlite3';
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { migrate, versionOf } from '$lib/server/ledger/migrate';

const STEPS = [{ number: 1, sql: 'CREATE TABLE thing (id INTEGER PRIMARY KEY) STRICT' }];
/** a process that has the new file open, as everyone has who starts at the same time, and waits for it */
const OTHER = `
	const Database = require(${JSON.stringify(createRequire(import.meta.url).resolve('better-sqlite3'))});
	const database = new Database(process.argv[1], { timeout: 3000 });
	database.pragma('journal_mode = WAL');
	database.pragma('user_version');
	process.stdout.write('open');
	setTimeout(() => {
		database.pragma('locking_mode = EXCLUSIVE');
		database.exec('BEGIN EXCLUSIVE; COMMIT');
		database.exec(${JSON.stringify(STEPS[0].sql)});
		database.pragma('user_version = 1');
		database.close();
	}, 200);
`;

let folder: string;
beforeEach(() => (folder = mkdtempSync(join(tmpdir(), 'slip-ledger-migrate-'))));
afterEach(() => rmSync(folder, { recursive: true, force: true }));

describe('migrate', () => {
	it('lets one of two processes that start at once go first instead of keeping each other out', async () => {
		const file = join(folder, 'ledger.sqlite');
		const other = spawn(process.execPath, ['-e', OTHER, file], { stdio: ['ignore', 'pipe', 'pipe'] });
		const left = new Promise((resolve) => other.once('close', resolve));
		await new Promise((resolve) => other.stdout.once('data', resolve));
		migrate(file, STEPS);
		expect(await left).toBe(0);
		const database = new Database(file, { readonly: true });
		expect(versionOf(database)).toBe(1);
		database.close();
	});
});
