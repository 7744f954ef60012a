import Database from 'better-sqlite3';
import { expect, it, vi } from 'vitest';
import { keepStatements } from '$lib/server/ledger/keepStatements';

function database() {
	const own = new Database(':memory:');
	own.exec(
		"CREATE TABLE part (id INTEGER PRIMARY KEY, name TEXT); INSERT INTO part (name) VALUES ('ring'), ('pawl')"
	);
	const prepare = vi.spyOn(own, 'prepare');
	keepStatements(own);
	return { own, prepare };
}

const ALL = 'SELECT id, name FROM part ORDER BY id';

it('reads the same SQL once, and another one anew', () => {
	const { own, prepare } = database();
	for (let time = 0; time < 5; time++) expect(own.prepare(ALL).all()).toHaveLength(2);
	expect(prepare).toHaveBeenCalledTimes(1);
	expect(own.prepare('SELECT count(*) AS n FROM part').get()).toEqual({ n: 2 });
	expect(prepare).toHaveBeenCalledTimes(2);
});

it('keeps apart who wants one column and who wants rows, also while both hold the statement', () => {
	const { own } = database();
	const ids = own.prepare(ALL).pluck();
	const rows = own.prepare(ALL);
	expect(ids.all()).toEqual([1, 2]);
	expect(rows.get()).toEqual({ id: 1, name: 'ring' });
	expect(ids.get()).toBe(1);
	expect(rows.all()).toEqual([
		{ id: 1, name: 'ring' },
		{ id: 2, name: 'pawl' }
	]);
});

it('lets the same SQL be asked while it is read row by row', () => {
	const { own } = database();
	const seen = [];
	for (const row of own.prepare(ALL).iterate()) seen.push([row, own.prepare(ALL).all().length]);
	expect(seen).toEqual([
		[{ id: 1, name: 'ring' }, 2],
		[{ id: 2, name: 'pawl' }, 2]
	]);
});

it('sees columns that were added since, and writes what it is given each time', () => {
	const { own } = database();
	const all = 'SELECT * FROM part ORDER BY id';
	expect(Object.keys(own.prepare(all).get() as object)).toEqual(['id', 'name']);
	own.exec('ALTER TABLE part ADD COLUMN batch TEXT');
	expect(Object.keys(own.prepare(all).get() as object)).toEqual(['id', 'name', 'batch']);
	const add = 'INSERT INTO part (name, batch) VALUES (@name, @batch)';
	for (const batch of ['A', 'B']) own.prepare(add).run({ name: 'spring', batch });
	expect(own.prepare('SELECT batch FROM part WHERE name = ? ORDER BY id').pluck().all('spring')).toEqual([
		'A',
		'B'
	]);
});

it('lets go what was used longest ago, so that made-up SQL does not fill the memory', () => {
	const { own, prepare } = database();
	own.prepare(ALL).all();
	for (let made = 0; made < 400; made++) own.prepare(`SELECT ${made}`).get();
	prepare.mockClear();
	own.prepare(ALL).all();
	own.prepare('SELECT 399').get();
	expect(prepare.mock.calls).toEqual([[ALL]]);
});
