import Database from 'better-sqlite3';
import { mkdirSync, readFileSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { keepVerify, lastVerify, verifyLedger, type VerifyReport } from '$lib/server';
import { sourcePath } from '$lib/server/store/sourceStore';
import { addRide, freshFolder, freshLedger, rowsOf, storeSomething, withHardware } from '../testLedger';
import type { AnalysedFile } from '../../../src/jobs/analysis/messages';

const AMOUNTS = {
	drivenM: 25_000,
	drivenS: 3000,
	observedM: 20_000,
	observedS: 2400,
	drivenTurns: 4000,
	observedTurns: 3000,
	pickUps: 5,
	observedPickUps: 4
};
/** an exposure that adds up to what the result of the test rides says */
const EXPOSURE: Partial<AnalysedFile> = {
	exposure: {
		cells: [
			{ torqueFromNm: 0, torqueToNm: 4, gear: null, ratio: null, ...AMOUNTS, drivenM: 5000, observedM: 4000 },
			{
				torqueFromNm: 4,
				torqueToNm: 8,
				gear: null,
				ratio: null,
				...AMOUNTS,
				drivenM: 20_000,
				observedM: 16_000
			}
		],
		hours: [{ hour: 0, ...AMOUNTS }],
		marks: []
	}
};

async function workshop() {
	const test = freshLedger();
	withHardware(test);
	await addRide(test, EXPOSURE);
	await addRide(test, { ...EXPOSURE, startedAtMs: Date.UTC(2026, 4, 5, 8) });
	const hashes = rowsOf(test.ledger, 'SELECT sha256 FROM source ORDER BY sha256').map((row) =>
		String(row.sha256)
	);
	return { ...test, folder: test.ledger.folder, hashes };
}

const verify = (folder: string) => verifyLedger(folder, { sample: 0, seed: 'test' });
const partOf = (report: VerifyReport, name: string) => report.parts.find((part) => part.name === name)!;
const damagesOf = (report: VerifyReport) =>
	report.parts.flatMap(({ name, findings }) =>
		findings.filter(({ severity }) => severity === 'damage').map(({ subject }) => `${name}: ${subject}`)
	);

describe('verifyLedger', () => {
	it('says of a whole ledger that it is whole, and what it looked at', async () => {
		const { folder } = await workshop();
		const report = await verify(folder);
		expect(damagesOf(report)).toEqual([]);
		expect(report.whole).toBe(true);
		expect(report.parts.map(({ name, checked }) => [name, checked]).slice(1)).toEqual([
			['traces', 2],
			['files', 2],
			['strays', 2],
			['sums', 2],
			['decisions', 0]
		]);
	});

	it('names exactly the sources that are missing, changed or cut off', async () => {
		const { folder, hashes } = await workshop();
		rmSync(sourcePath(folder, hashes[0]));
		const path = sourcePath(folder, hashes[1]);
		const bytes = readFileSync(path);
		bytes[3] ^= 1;
		writeFileSync(path, bytes);
		const report = await verify(folder);
		expect(damagesOf(report)).toEqual([`files: ${hashes[0]}`, `files: ${hashes[1]}`]);
		expect(report.whole).toBe(false);
		writeFileSync(path, bytes.subarray(1));
		expect(partOf(await verify(folder), 'files').findings[1].sentence).toContain('bytes instead of');
	});

	it.each([
		['UPDATE exposure_cell SET driven_m = driven_m + 1 WHERE ride_id = 1 AND cell = 0', 'ride 1'],
		['UPDATE exposure_hour SET observed_m = 0 WHERE ride_id = 2', 'ride 2'],
		['DELETE FROM exposure_hour WHERE ride_id = 2', 'ride 2'],
		['UPDATE observed_stretch SET end_m = end_m - 5 WHERE ride_id = 1', 'ride 1'],
		['UPDATE result SET observed_m = observed_m * 1.001 WHERE ride_id = 2', 'ride 2']
	])('adds up again what statistics read: %s', async (sql, subject) => {
		const { folder, ledger } = await workshop();
		ledger.database.exec(sql);
		const found = damagesOf(await verify(folder));
		expect(found.length).toBeGreaterThan(0);
		for (const one of found) expect(one).toContain(`sums: ${subject},`);
	});

	it('takes the hash of each signed record anew', async () => {
		const { folder, ledger } = await workshop();
		ledger.database.exec(`INSERT INTO release_criteria VALUES (1, 1, 1, NULL, '{}', 'a test', 1, 0);
			DROP TRIGGER release_decision_is_not_changed`);
		ledger.database
			.prepare(
				`INSERT INTO release_decision (build_id, criteria_id, decision, reason, actor_id, at_ms,
				analysis_version, record, record_sha256) VALUES (1, 1, 'continue', 'goes on', 1, 0, 2, '{"a":1}', ?)`
			)
			.run('015abd7f5cc57a2dd94b7590f04ad8084273905ee33ec5cebeae62276a97f862');
		expect(partOf(await verify(folder), 'decisions')).toMatchObject({ checked: 1, state: 'whole' });
		ledger.database.exec(`UPDATE release_decision SET record = '{"a":2}'`);
		expect(damagesOf(await verify(folder))).toEqual(['decisions: decision 1']);
	});

	it('notes files that nothing names, once they are too old to be on their way', async () => {
		const { folder } = await workshop();
		const stray = 'ab'.padEnd(64, '0');
		const left = join(folder, 'incoming', 'file-left');
		mkdirSync(join(folder, 'sources', 'ab'), { recursive: true });
		writeFileSync(sourcePath(folder, stray), 'x');
		writeFileSync(left, 'x');
		expect(partOf(await verify(folder), 'strays').notes).toBe(0);
		for (const path of [sourcePath(folder, stray), left]) utimesSync(path, 1e9, 1e9);
		const report = await verify(folder);
		expect(partOf(report, 'strays').findings.map(({ subject }) => subject)).toEqual([stray, 'file-left']);
		expect(report.whole).toBe(true);
	});

	it('knows a trace that cannot be unpacked, and notes one that is not there', async () => {
		const { folder, ledger, hashes } = await workshop();
		ledger.channels
			.prepare(
				"UPDATE channel_chunk SET packed = x'00ff' WHERE sha256 = ? AND name = 'speedMps' AND level = 0"
			)
			.run(hashes[0]);
		ledger.channels.prepare('DELETE FROM channel WHERE sha256 = ?').run(hashes[1]);
		const report = await verify(folder);
		expect(partOf(report, 'traces')).toMatchObject({ damages: 1, notes: 1, state: 'damaged' });
		expect(partOf(report, 'sums').state).toBe('whole');
	});

	it('still checks every file against its name when the ledger is no database any more', async () => {
		const { folder, ledger, hashes } = await workshop();
		ledger.close();
		writeFileSync(join(folder, 'ledger.sqlite'), 'nothing of a database');
		rmSync(join(folder, 'ledger.sqlite-wal'), { force: true });
		const bytes = readFileSync(sourcePath(folder, hashes[1]));
		writeFileSync(sourcePath(folder, hashes[1]), bytes.reverse());
		const report = await verify(folder);
		expect(damagesOf(report)).toEqual(['ledger: file', `files: ${hashes[1]}`]);
		expect(partOf(report, 'files').checked).toBe(2);
		expect(partOf(report, 'sums').state).toBe('not checked');
	});

	it('says which tables are whole when a page of another one is damaged', async () => {
		const { folder, ledger } = await workshop();
		for (let i = 0; i < 40; i++)
			ledger.database
				.prepare(
					'INSERT INTO trail (at_ms, actor_id, action, subject, subject_id, detail) VALUES (0, 1, ?, ?, ?, ?)'
				)
				.run('a', 'b', String(i), JSON.stringify({ text: 'x'.repeat(2000) }));
		const root = ledger.database
			.prepare("SELECT rootpage FROM sqlite_master WHERE name = 'trail'")
			.pluck()
			.get();
		const pageBytes = ledger.database.pragma('page_size', { simple: true }) as number;
		ledger.close();
		const file = join(folder, 'ledger.sqlite');
		const bytes = readFileSync(file);
		bytes.fill(0xa5, (Number(root) - 1) * pageBytes, Number(root) * pageBytes);
		writeFileSync(file, bytes);
		const report = await verify(folder);
		const part = partOf(report, 'ledger');
		expect(part.findings.find(({ subject }) => subject === 'trail')?.severity).toBe('damage');
		expect(part.findings.find(({ subject }) => subject === 'ride')).toMatchObject({
			severity: 'note',
			sentence: 'The table ride is whole.'
		});
		expect(partOf(report, 'sums').state).toBe('whole');
		expect(partOf(report, 'files').state).toBe('whole');
	});

	it('finds a row that refers to nothing', async () => {
		const { folder, ledger } = await workshop();
		const raw = new Database(join(ledger.folder, 'ledger.sqlite'));
		raw.pragma('foreign_keys = OFF');
		raw.exec('DELETE FROM ride_signature; UPDATE ride SET rider_id = 999 WHERE id = 1');
		raw.close();
		expect(damagesOf(await verify(folder))).toEqual(['ledger: ride']);
	});

	it('lets others write while it reads: none waits', async () => {
		const test = await workshop();
		for (let i = 0; i < 30; i++) await storeSomething(test);
		let longestMs = 0;
		let writes = 0;
		const timer = setInterval(() => {
			const startedMs = performance.now();
			test.ledger.database
				.prepare("INSERT OR REPLACE INTO setting VALUES ('workshopName', ?)")
				.run(`${writes++}`);
			longestMs = Math.max(longestMs, performance.now() - startedMs);
		}, 2);
		const report = await verify(test.folder);
		clearInterval(timer);
		expect(report.whole).toBe(true);
		expect(writes).toBeGreaterThan(20);
		// a writer that had to wait for a reader would wait for SQLite's timeout of seconds
		expect(longestMs).toBeLessThan(2000);
	});

	it('changes nothing in the folder; the report is kept beside the ledger', async () => {
		const { folder } = await workshop();
		const report = await verify(folder);
		expect(lastVerify(folder)).toBeNull();
		expect(keepVerify(folder, report)).toBe(true);
		expect(lastVerify(folder)).toEqual(report);
		expect(keepVerify(join(freshFolder(), 'nowhere'), report)).toBe(false);
	});
});
