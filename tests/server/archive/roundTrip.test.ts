import { randomBytes } from 'node:crypto';
import { createWriteStream, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { describe, expect, it } from 'vitest';
import {
	choosePerson,
	createBuild,
	exportArchive,
	installExample,
	programmeRows,
	restoreArchive
} from '$lib/server';
import { freshFolder, rowsOf } from '../testLedger';
import { emptyLedger, exported, hashOf, manifestOf, partsOf, richLedger } from './archiveFixture';

describe('exportArchive and restoreArchive', () => {
	it('give the same ledger again, table by table, byte for byte, with its sources', async () => {
		const test = await richLedger();
		await installExample(test.ledger, test.actor);
		const path = await exported(test, { names: true, sources: true, attachments: true });
		const other = { ledger: emptyLedger() };
		const outcome = await restoreArchive(other.ledger, path);
		const [before, after] = [
			await manifestOf(path),
			await manifestOf(await exported(other, { names: true, sources: true, attachments: true }))
		];
		for (const table of before.tables) expect(after.tables).toContainEqual(table);
		expect(after.files).toEqual(before.files);
		expect(after.files.every(({ included }) => included)).toBe(true);
		expect(outcome).toMatchObject({ names: true, missing: 0, files: before.files.length });
		expect(outcome.rows).toBe(before.tables.reduce((sum, { rows }) => sum + rows, 0));
		for (const { sha256 } of before.files)
			expect(hashOf(readFileSync(join(other.ledger.folder, 'sources', sha256.slice(0, 2), sha256)))).toBe(
				sha256
			);
		expect(programmeRows(other.ledger)).toEqual(programmeRows(test.ledger));
		expect(readdirSync(join(other.ledger.folder, 'incoming'))).toEqual([]);
		// says something about tables with rows only
		expect(before.tables.filter(({ rows }) => rows > 0).length).toBeGreaterThanOrEqual(25);
	}, 60_000);

	it('cover every table of the layout that is not named as state of the machine', async () => {
		const test = await richLedger();
		const all = rowsOf(test.ledger, "SELECT name FROM sqlite_master WHERE type = 'table'").map(
			({ name }) => name as string
		);
		const { tables, leftOut } = await manifestOf(await exported(test));
		expect([...tables.map(({ name }) => name), ...Object.keys(leftOut)].sort()).toEqual(
			all.filter((name) => !name.startsWith('sqlite_')).sort()
		);
	});

	it('hold no names of people unless they are asked for; codes stand in for them and become the names', async () => {
		const test = await richLedger();
		test.ledger.database.prepare('UPDATE person SET weight_kg = 71.5 WHERE id = 1').run();
		const path = await exported(test);
		for (const [name, content] of await partsOf(path))
			expect([name, content.includes('Owner of the test')]).toEqual([name, false]);
		expect(
			(await partsOf(await exported(test, { names: true }))).get('tables/person.json')!.toString()
		).toContain('Owner of the test');
		const other = { ledger: emptyLedger() };
		await restoreArchive(other.ledger, path);
		expect(rowsOf(other.ledger, 'SELECT name, code, weight_kg FROM person WHERE id = 1')).toEqual([
			{ name: 'P1', code: 'P1', weight_kg: null }
		]);
		expect(choosePerson(other.ledger, 'P1')).toMatchObject({ id: 1, role: 'owner' });
	});

	it('list the hash of every source whether its bytes go along or not', async () => {
		const test = await richLedger();
		const { files } = await manifestOf(await exported(test));
		const known = rowsOf(test.ledger, 'SELECT sha256 FROM source ORDER BY sha256').map(
			({ sha256 }) => sha256
		);
		expect(files.map(({ sha256 }) => sha256)).toEqual(known);
		expect(files.some(({ included }) => included)).toBe(false);
		const other = { ledger: emptyLedger() };
		expect(await restoreArchive(other.ledger, await exported(test))).toMatchObject({
			files: 0,
			missing: known.length
		});
		expect(programmeRows(other.ledger)).toEqual(programmeRows(test.ledger));
	});

	it('leave out what only the machine needs: leases, half uploads, who analyses just now', async () => {
		const test = await richLedger();
		test.ledger.database
			.prepare("UPDATE import SET stage = 'analysing', owner = 'x' WHERE file_name = 'waits.fit'")
			.run();
		test.ledger.database
			.prepare(
				"INSERT INTO import (file_name, bytes, stage, actor_id, created_ms, changed_ms) VALUES ('half.fit', 9, 'receiving', 1, 0, 0)"
			)
			.run();
		const imports = (await partsOf(await exported(test))).get('tables/import.json')!.toString();
		expect(imports).not.toContain('half.fit');
		expect(imports).toMatch(/"file_name":"waits.fit"[^\n]*"owner":null[^\n]*"stage":"waiting"/);
	});

	it('take one state of the ledger although others write meanwhile', async () => {
		const test = await richLedger();
		const stream = exportArchive(test.ledger);
		const builds = rowsOf(test.ledger, 'SELECT 1 FROM build').length;
		createBuild(test.ledger, test.actor, { name: 'Written meanwhile', description: '' });
		const path = join(freshFolder(), 'ledger.zip');
		await pipeline(stream, createWriteStream(path));
		expect((await manifestOf(path)).tables.find(({ name }) => name === 'build')!.rows).toBe(builds);
	});

	it('close what they opened when the reader goes away', async () => {
		const test = await richLedger();
		// a table that does not fit into what streams hold back, and does not shrink when packed
		const long = () => JSON.stringify({ text: randomBytes(30_000).toString('base64') });
		for (let row = 0; row < 60; row++)
			test.ledger.database
				.prepare(
					"INSERT INTO trail (at_ms, actor_id, action, subject, subject_id, detail) VALUES (0, 1, '', '', '', ?)"
				)
				.run(long());
		const stream = exportArchive(test.ledger);
		let bytes = 0;
		for await (const piece of stream.iterator({ destroyOnReturn: false })) {
			bytes += (piece as Buffer).length;
			if (bytes > 400_000) break;
		}
		setImmediate(() => stream.destroy());
		await new Promise((resolve) => stream.once('close', resolve));
		await new Promise((resolve) => setTimeout(resolve, 20));
		// an open read transaction would keep the log from being emptied
		createBuild(test.ledger, test.actor, { name: 'After', description: '' });
		expect(test.ledger.database.pragma('wal_checkpoint(TRUNCATE)')).toEqual([
			{ busy: 0, log: 0, checkpointed: 0 }
		]);
	});
});
