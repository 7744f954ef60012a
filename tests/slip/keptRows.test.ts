import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { keptRows } from '../bench/training/keptRows';

describe('keptRows', () => {
	let folder: string;
	beforeEach(() => (folder = mkdtempSync(join(tmpdir(), 'kept-rows-'))));
	afterEach(() => rmSync(folder, { recursive: true }));

	it('gathers once, and gives from the file what was gathered, missing values and all', async () => {
		const file = join(folder, 'rows');
		let gathered = 0;
		const gather = async () => {
			gathered++;
			return [{ rows: [Float64Array.from([1, NaN])], truth: [-1] }];
		};
		const first = await keptRows(file, gather);
		expect(await keptRows(file, gather)).toEqual(first);
		expect(first[0].rows[0][1]).toBeNaN();
		expect(gathered).toBe(1);
	});

	it('gathers every time without a file', async () => {
		let gathered = 0;
		const gather = async () => ++gathered;
		await keptRows(undefined, gather);
		expect(await keptRows(undefined, gather)).toBe(2);
	});
});
