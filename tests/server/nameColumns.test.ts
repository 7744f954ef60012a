import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { columnQuestion, findImport, nameColumns } from '$lib/server';
import type { ColumnMapping } from '$lib/ride/columnMapping';
import { askForColumns } from '$lib/server/columns/askForColumns';
import { headOfSource } from '$lib/server/columns/headOfSource';
import { sourceColumns } from '$lib/server/columns/sourceColumns';
import { takeNextImport } from '$lib/server/queue/importQueue';
import { storeFile } from '$lib/server';
import { freshLedger, rowsOf, storeSomething, type TestLedger } from './testLedger';

const MAPPING: ColumnMapping = {
	time: { column: 0, unit: 's' },
	crank: { column: 1, as: 'rpm' },
	wheel: { column: 2, as: 'rpm' },
	load: null
};
const REFUSAL = { code: 'columns-not-known', sentence: 'Say which is what.', detail: 'columns' };
const rows = (from: number) => Array.from({ length: 30 }, (_, i) => `${from + i},80,240\n`).join('');

/** a table that was read once and asks */
async function asks(test: TestLedger, content: string): Promise<number> {
	const id = await storeSomething(test, { name: 'table.csv', content });
	askForColumns(test.ledger, takeNextImport(test.ledger, test.holder)!, REFUSAL);
	return id;
}

describe('a table whose columns are not known', () => {
	it('is kept and asks; the answer holds for all that wait with the same header', async () => {
		const test = freshLedger();
		const { ledger, actor } = test;
		const first = await asks(test, `t,a,b\n${rows(0)}`);
		const second = await asks(test, `T,A,B\n${rows(100)}`);
		const other = await asks(test, `t;a;b\n${rows(0).replaceAll(',', ';')}`);
		expect(findImport(ledger, first)).toMatchObject({ stage: 'asks', sentence: 'Say which is what.' });
		expect(columnQuestion(ledger, first)).toMatchObject({
			others: 1,
			mapping: null,
			head: { names: ['t', 'a', 'b'] }
		});
		expect(nameColumns(ledger, actor, first, MAPPING)).toBe(2);
		expect([first, second, other].map((id) => findImport(ledger, id)?.stage)).toEqual([
			'waiting',
			'waiting',
			'asks'
		]);
		const { sha256 } = takeNextImport(ledger, test.holder)!;
		expect(sourceColumns(ledger.database, sha256)).toEqual(MAPPING);
		expect(rowsOf(ledger, "SELECT 1 FROM trail WHERE action = 'named the columns'")).toHaveLength(1);
	});

	it('of a header that was named before waits to be read by that answer, and asks when it does not fit', async () => {
		const test = freshLedger();
		const { ledger, actor, holder } = test;
		nameColumns(ledger, actor, await asks(test, `t,a,b\n${rows(0)}`), MAPPING);
		takeNextImport(ledger, holder);
		const later = await asks(test, `t,a,b\n${rows(500)}`);
		expect(findImport(ledger, later)?.stage).toBe('waiting');
		askForColumns(ledger, takeNextImport(ledger, holder)!, REFUSAL);
		expect(findImport(ledger, later)?.stage).toBe('asks');
		expect(columnQuestion(ledger, later).mapping).toEqual(MAPPING);
	});

	it('keeps the answer by which a file was read when another is given for later ones', async () => {
		const test = freshLedger();
		const { ledger, actor, holder } = test;
		nameColumns(ledger, actor, await asks(test, `t,a,b\n${rows(0)}`), MAPPING);
		const { sha256 } = takeNextImport(ledger, holder)!;
		const wrong = await asks(test, `t,a,b\n${rows(500)}`);
		askForColumns(ledger, takeNextImport(ledger, holder)!, REFUSAL);
		const other: ColumnMapping = {
			...MAPPING,
			crank: { column: 2, as: 'rpm' },
			wheel: { column: 1, as: 'rpm' }
		};
		nameColumns(ledger, actor, wrong, other);
		expect(sourceColumns(ledger.database, sha256)).toEqual(MAPPING);
		expect(sourceColumns(ledger.database, takeNextImport(ledger, holder)!.sha256)).toEqual(other);
	});

	it('refuses an answer that does not fit, and a file that does not ask', async () => {
		const test = freshLedger();
		const { ledger, actor } = test;
		const id = await asks(test, `t,a,b\n${rows(0)}`);
		const twice: ColumnMapping = { ...MAPPING, wheel: { column: 1, as: 'rpm' } };
		expect(() => nameColumns(ledger, actor, id, twice)).toThrow('one thing only');
		expect(findImport(ledger, id)?.stage).toBe('asks');
		nameColumns(ledger, actor, id, MAPPING);
		expect(() => nameColumns(ledger, actor, id, MAPPING)).toThrow('does not ask');
	});

	it('shows the head of a packed table too, and none of a file that is none', async () => {
		const test = freshLedger();
		async function* packed() {
			yield gzipSync(`t,a,b\n${rows(0)}`);
		}
		await storeFile(test.ledger, test.actor, { name: 'a.csv.gz', bytes: packed() });
		await storeSomething(test, { content: 'no table' });
		const hashes = rowsOf(test.ledger, 'SELECT sha256 FROM import ORDER BY id').map(({ sha256 }) =>
			String(sha256)
		);
		expect(headOfSource(test.ledger.folder, hashes[0])?.names).toEqual(['t', 'a', 'b']);
		expect(headOfSource(test.ledger.folder, hashes[1])).toBeNull();
		expect(headOfSource(test.ledger.folder, 'f'.repeat(64))).toBeNull();
	});
});
