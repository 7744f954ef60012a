import Database from 'better-sqlite3';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { LedgerRefusal, openLedger } from '$lib/server';
import { migrate, versionOf } from '$lib/server/ledger/migrate';
import { CHANNEL_MIGRATIONS, LEDGER_MIGRATIONS } from '$lib/server/ledger/migrations';
import { freshFolder, freshLedger } from './testLedger';

const refusalOf = (action: () => unknown): LedgerRefusal => {
	try {
		action();
	} catch (error) {
		if (error instanceof LedgerRefusal) return error;
		throw error;
	}
	throw new Error('nothing was refused');
};

describe('openLedger', () => {
	it('makes folder, databases and layout when told to migrate', () => {
		const folder = join(freshFolder(), 'new', 'deep');
		const ledger = openLedger(folder, { migrate: true });
		expect(versionOf(ledger.database)).toBe(LEDGER_MIGRATIONS.at(-1)!.number);
		expect(versionOf(ledger.channels)).toBe(CHANNEL_MIGRATIONS.at(-1)!.number);
		expect(ledger.database.pragma('journal_mode', { simple: true })).toBe('wal');
		expect(ledger.database.pragma('foreign_keys', { simple: true })).toBe(1);
		ledger.close();
	});

	it('refuses a folder without a ledger when not told to migrate', () => {
		expect(refusalOf(() => openLedger(freshFolder(), { migrate: false })).code).toBe('ledger-not-migrated');
	});

	it('refuses a ledger of a newer layout and changes nothing', () => {
		const { ledger } = freshLedger();
		ledger.database.pragma('user_version = 9999');
		const before = ledger.database.pragma('data_version', { simple: true });
		const refusal = refusalOf(() => openLedger(ledger.folder, { migrate: true }));
		expect(refusal.code).toBe('newer-ledger');
		expect(refusal.sentence).toContain('nothing was changed');
		expect(ledger.database.pragma('data_version', { simple: true })).toBe(before);
	});

	it('refuses a folder that cannot be used, in one sentence', () => {
		const file = join(freshFolder(), 'a-file');
		writeFileSync(file, '');
		const refusal = refusalOf(() => openLedger(file, { migrate: true }));
		expect(refusal.code).toBe('folder-not-writable');
		expect(refusal.sentence).not.toContain('\n');
	});

	it('lets several processes have the same ledger open', () => {
		const { ledger, actor } = freshLedger();
		const other = openLedger(ledger.folder, { migrate: true });
		expect(other.database.prepare('SELECT name FROM person').get()).toEqual({ name: actor.name });
		other.close();
	});
});

describe('migrate', () => {
	const first = { number: 1, sql: 'CREATE TABLE a (x INTEGER) STRICT' };
	const second = { number: 2, sql: 'CREATE TABLE b (x INTEGER) STRICT; INSERT INTO b VALUES (1)' };

	it('adds only the steps that are missing', () => {
		const file = join(freshFolder(), 'm.sqlite');
		migrate(file, [first]);
		migrate(file, [first, second]);
		migrate(file, [first, second]);
		const database = new Database(file);
		expect(database.prepare('SELECT count(*) AS n FROM b').get()).toEqual({ n: 1 });
		database.close();
	});

	it('leaves nothing of a step that fails', () => {
		const file = join(freshFolder(), 'm.sqlite');
		const broken = { number: 2, sql: 'CREATE TABLE b (x INTEGER) STRICT; INSERT INTO nowhere VALUES (1)' };
		expect(() => migrate(file, [first, broken])).toThrow('nowhere');
		const database = new Database(file);
		expect(versionOf(database)).toBe(1);
		expect(database.prepare("SELECT 1 FROM sqlite_master WHERE name = 'b'").get()).toBeUndefined();
		database.close();
	});

	it('refuses to change the layout while somebody else has the file open, and does it afterwards', () => {
		const file = join(freshFolder(), 'm.sqlite');
		migrate(file, [first]);
		const other = new Database(file);
		other.prepare('SELECT count(*) FROM a').get();
		expect(refusalOf(() => migrate(file, [first, second], 100)).code).toBe('ledger-in-use');
		expect(versionOf(other)).toBe(1);
		other.close();
		migrate(file, [first, second], 100);
	});

	it('numbers its shipped steps 1, 2, 3 without a gap', () => {
		for (const steps of [LEDGER_MIGRATIONS, CHANNEL_MIGRATIONS])
			expect(steps.map((step) => step.number)).toEqual(steps.map((_, index) => index + 1));
	});
});

describe('the layout', () => {
	it('never lets the trail be changed or removed', () => {
		const { ledger } = freshLedger();
		expect(() => ledger.database.exec("UPDATE trail SET action = 'x'")).toThrow('never changed');
		expect(() => ledger.database.exec('DELETE FROM trail')).toThrow('never removed');
	});

	it('has only strict tables, so that no column takes a value of the wrong kind', () => {
		const { ledger } = freshLedger();
		for (const database of [ledger.database, ledger.channels]) {
			const loose = database
				.prepare(
					"SELECT name FROM pragma_table_list WHERE type = 'table' AND strict = 0 AND name NOT LIKE 'sqlite_%'"
				)
				.all();
			expect(loose).toEqual([]);
		}
	});
});
