import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { backupState, LedgerRefusal, makeBackup, openLedger, restoreBackup, type Ledger } from '$lib/server';
import { listGenerations } from '$lib/server/backup/backupPlaces';
import { sourcePath } from '$lib/server/store/sourceStore';
import {
	addRide,
	freshFolder,
	freshLedger,
	HOUR_MS,
	rowsOf,
	storeSomething,
	withHardware
} from '../testLedger';

const tablesOf = (ledger: Ledger) =>
	Object.fromEntries(
		rowsOf(ledger, "SELECT name FROM sqlite_master WHERE type = 'table' ORDER BY name")
			.map(({ name }) => String(name))
			.filter((name) => !['lease', 'upload', 'evidence', 'evidence_ride', 'setting', 'trail'].includes(name))
			.map((name) => [name, rowsOf(ledger, `SELECT * FROM "${name}"`)])
	);

const codeOf = async (work: Promise<unknown>) => {
	const error = await work.then(
		() => null,
		(thrown: unknown) => thrown
	);
	return error instanceof LedgerRefusal ? error.code : error;
};

async function workshop() {
	const test = freshLedger();
	withHardware(test);
	await addRide(test);
	await addRide(test, { startedAtMs: Date.UTC(2026, 4, 5, 8) });
	return { test, target: join(freshFolder(), 'copies') };
}

/** a ledger in a folder of its own, closed by the caller */
const emptyLedger = () => openLedger(freshFolder(), { migrate: true });

describe('makeBackup', () => {
	it('gives the same ledger and the same files again by restoreBackup', async () => {
		const { test, target } = await workshop();
		const outcome = await makeBackup(test.ledger, test.actor, target);
		expect(outcome).toMatchObject({ sources: 2, added: 2, missing: [], damaged: [], generations: 1 });
		const restored = emptyLedger();
		const got = await restoreBackup(restored, target);
		expect(got).toMatchObject({ files: 2, missing: 0, names: true });
		expect(tablesOf(restored)).toEqual(tablesOf(test.ledger));
		for (const { sha256 } of rowsOf(test.ledger, 'SELECT sha256 FROM source'))
			expect(readFileSync(sourcePath(restored.folder, String(sha256)))).toEqual(
				readFileSync(sourcePath(test.ledger.folder, String(sha256)))
			);
		expect(readdirSync(join(restored.folder, 'incoming'))).toEqual([]);
		restored.close();
	});

	it('copies only what is new the next time, and keeps as many dated ledgers as asked for', async () => {
		const { test, target } = await workshop();
		await makeBackup(test.ledger, test.actor, target);
		await storeSomething(test);
		for (let i = 0; i < 3; i++) {
			test.clock.ms += HOUR_MS;
			const outcome = await makeBackup(test.ledger, test.actor, target, { keep: 2 });
			expect(outcome.added).toBe(i === 0 ? 1 : 0);
		}
		expect(listGenerations(target)).toHaveLength(2);
		expect(readdirSync(join(target, 'ledgers'))).toHaveLength(2);
	});

	it('two within one second are two', async () => {
		const { test, target } = await workshop();
		await makeBackup(test.ledger, test.actor, target);
		await makeBackup(test.ledger, test.actor, target);
		expect(listGenerations(target)[1]).toBe(`${listGenerations(target)[0]}-2`);
	});

	it('is not begun anew by writes of others, and holds the state it began with', async () => {
		const { test, target } = await workshop();
		const other = openLedger(test.ledger.folder, { migrate: false });
		let writes = 0;
		const writing = setInterval(() => {
			other.database.prepare("INSERT OR REPLACE INTO setting VALUES ('workshopName', ?)").run(`${writes++}`);
		}, 1);
		await makeBackup(test.ledger, test.actor, target);
		clearInterval(writing);
		other.close();
		const restored = emptyLedger();
		await restoreBackup(restored, target);
		expect(rowsOf(restored, 'PRAGMA integrity_check')).toEqual([{ integrity_check: 'ok' }]);
		restored.close();
	});

	it('names a source that is missing or damaged, and copies all the others', async () => {
		const { test, target } = await workshop();
		await storeSomething(test);
		const [first, second] = rowsOf(test.ledger, 'SELECT sha256 FROM source ORDER BY sha256').map((row) =>
			String(row.sha256)
		);
		rmSync(sourcePath(test.ledger.folder, first));
		writeFileSync(sourcePath(test.ledger.folder, second), 'something else');
		const outcome = await makeBackup(test.ledger, test.actor, target);
		expect(outcome).toMatchObject({ sources: 1, missing: [first], damaged: [second] });
		expect(existsSync(sourcePath(target, second))).toBe(false);
		const restored = emptyLedger();
		expect(await restoreBackup(restored, target)).toMatchObject({ files: 1, missing: 2 });
		restored.close();
	});

	it('reads again what it holds when asked to, and mends it from the store', async () => {
		const { test, target } = await workshop();
		await makeBackup(test.ledger, test.actor, target);
		const { sha256, bytes } = rowsOf(test.ledger, 'SELECT sha256, bytes FROM source')[0];
		writeFileSync(sourcePath(target, String(sha256)), Buffer.alloc(Number(bytes)));
		expect((await makeBackup(test.ledger, test.actor, target)).added).toBe(0);
		expect((await makeBackup(test.ledger, test.actor, target, { check: true })).added).toBe(1);
	});

	it('refuses a folder within the data folder, and a file in place of a folder', async () => {
		const { test } = await workshop();
		expect(await codeOf(makeBackup(test.ledger, test.actor, join(test.ledger.folder, 'b')))).toBe(
			'wrong-value'
		);
		const file = join(freshFolder(), 'file');
		writeFileSync(file, '');
		expect(await codeOf(makeBackup(test.ledger, test.actor, file))).toBe('folder-not-writable');
	});
});

describe('restoreBackup', () => {
	it('refuses a ledger that holds something, a changed ledger and a changed source, and changes nothing', async () => {
		const { test, target } = await workshop();
		const { generation } = await makeBackup(test.ledger, test.actor, target);
		expect(await codeOf(restoreBackup(test.ledger, target))).toBe('conflict');
		const restored = emptyLedger();
		const { sha256, bytes } = rowsOf(test.ledger, 'SELECT sha256, bytes FROM source')[1];
		const source = sourcePath(target, String(sha256));
		const before = readFileSync(source);
		writeFileSync(source, Buffer.alloc(Number(bytes)));
		expect(await codeOf(restoreBackup(restored, target))).toBe('incomplete');
		writeFileSync(source, before);
		const copy = join(generation, 'ledger.sqlite');
		const whole = readFileSync(copy);
		writeFileSync(copy, Buffer.concat([whole.subarray(0, -1), Buffer.from([whole.at(-1)! ^ 1])]));
		expect(await codeOf(restoreBackup(restored, target))).toBe('incomplete');
		expect(rowsOf(restored, 'SELECT 1 FROM ride')).toEqual([]);
		expect(readdirSync(join(restored.folder, 'sources'))).toEqual([]);
		writeFileSync(copy, whole);
		expect(await restoreBackup(restored, generation)).toMatchObject({ files: 2 });
		restored.close();
	});

	it('refuses what is no backup, or one of a newer program', async () => {
		const { test, target } = await workshop();
		const restored = emptyLedger();
		mkdirSync(target);
		expect(await codeOf(restoreBackup(restored, target))).toBe('wrong-value');
		const { generation } = await makeBackup(test.ledger, test.actor, target);
		const manifest = JSON.parse(readFileSync(join(generation, 'manifest.json'), 'utf8')) as object;
		writeFileSync(join(generation, 'manifest.json'), JSON.stringify({ ...manifest, formatVersion: 99 }));
		expect(await codeOf(restoreBackup(restored, target))).toBe('newer-ledger');
		writeFileSync(join(generation, 'manifest.json'), JSON.stringify({ ...manifest, layout: 9999 }));
		expect(await codeOf(restoreBackup(restored, target))).toBe('newer-ledger');
		writeFileSync(
			join(generation, 'manifest.json'),
			JSON.stringify({ ...manifest, sources: [{ sha256: '../x' }] })
		);
		expect(await codeOf(restoreBackup(restored, target))).toBe('wrong-value');
		restored.close();
	});
});

describe('backupState', () => {
	it('reminds when there is something to lose and no backup for longer than the setting', async () => {
		const test = freshLedger();
		expect(backupState(test.ledger)).toMatchObject({ lastAt: null, due: false });
		await addRide(test);
		expect(backupState(test.ledger)).toMatchObject({ lastAt: null, due: true, remindAfterDays: 7 });
		const target = join(freshFolder(), 'copies');
		await makeBackup(test.ledger, test.actor, target);
		expect(backupState(test.ledger)).toMatchObject({ due: false, folder: target });
		test.clock.ms += 7.5 * 24 * HOUR_MS;
		expect(backupState(test.ledger).due).toBe(true);
		test.ledger.database.prepare("INSERT INTO setting VALUES ('backupReminderDays', '30')").run();
		expect(backupState(test.ledger).due).toBe(false);
	});

	it('reminds also when the clock was set far back since the last backup', async () => {
		const test = freshLedger();
		await addRide(test);
		await makeBackup(test.ledger, test.actor, join(freshFolder(), 'copies'));
		test.clock.ms -= 400 * 24 * HOUR_MS;
		expect(backupState(test.ledger).due).toBe(true);
	});
});

it('a backup holds one file a ledger, no log beside it', async () => {
	const { test, target } = await workshop();
	const { generation } = await makeBackup(test.ledger, test.actor, target);
	expect(readdirSync(generation).sort()).toEqual(['ledger.sqlite', 'manifest.json']);
	expect(statSync(join(generation, 'ledger.sqlite')).size).toBeGreaterThan(0);
});
