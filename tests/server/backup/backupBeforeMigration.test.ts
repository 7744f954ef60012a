import Database from 'better-sqlite3';
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { openLedger } from '$lib/server';
import { migrate } from '$lib/server/ledger/migrate';
import { LEDGER_MIGRATIONS } from '$lib/server/ledger/migrations';
import { freshFolder } from '../testLedger';

const NEWEST = LEDGER_MIGRATIONS[LEDGER_MIGRATIONS.length - 1].number;

/** a folder with a ledger of an older layout */
function oldLedger(layout: number, people: number): string {
	const folder = freshFolder();
	const file = join(folder, 'ledger.sqlite');
	migrate(file, LEDGER_MIGRATIONS.slice(0, layout));
	const database = new Database(file);
	for (let i = 0; i < people; i++)
		database
			.prepare("INSERT INTO person (name, code, role, created_ms) VALUES (?, ?, 'owner', 0)")
			.run(`Person ${i}`, `P${i}`);
	database.close();
	return folder;
}

describe('backupBeforeMigration', () => {
	it.each([1, 9])('keeps a ledger of layout %i as it was, whole and named, before it changes', (layout) => {
		const folder = oldLedger(layout, 2);
		openLedger(folder, { migrate: true, now: () => Date.UTC(2026, 10, 29, 4, 5, 6) }).close();
		const names = readdirSync(join(folder, 'backups'));
		expect(names).toEqual([`ledger-layout-${layout}-before-${NEWEST}-2026-11-29T040506Z.sqlite`]);
		const copy = new Database(join(folder, 'backups', names[0]), { readonly: true });
		expect(copy.pragma('user_version', { simple: true })).toBe(layout);
		expect(copy.pragma('integrity_check', { simple: true })).toBe('ok');
		expect(copy.prepare('SELECT name FROM person ORDER BY id').pluck().all()).toEqual([
			'Person 0',
			'Person 1'
		]);
		copy.close();
		const now = new Database(join(folder, 'ledger.sqlite'), { readonly: true });
		expect(now.pragma('user_version', { simple: true })).toBe(NEWEST);
		now.close();
	});

	it('keeps none of a new ledger, of one in which nobody wrote, and none when nothing changes', () => {
		const folder = freshFolder();
		openLedger(folder, { migrate: true }).close();
		openLedger(folder, { migrate: true }).close();
		expect(existsSync(join(folder, 'backups'))).toBe(false);
		const unused = oldLedger(9, 0);
		openLedger(unused, { migrate: true }).close();
		expect(existsSync(join(unused, 'backups'))).toBe(false);
	});
});
