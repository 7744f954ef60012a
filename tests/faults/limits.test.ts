import { mkdtempSync, rmSync } from 'node:fs';
import { createReadStream } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
	actorOf,
	choosePerson,
	findImport,
	ImportRunner,
	openLedger,
	storeFile,
	type Actor,
	type ImportView,
	type Ledger
} from '$lib/server';
import { residentBytes } from '$lib/server/queue/residentBytes';
import { builtProgram, smallRides, until } from './program';

const MEGABYTE = 2 ** 20;
// long enough for a child to start and to fill its memory on a machine that does other work
const LIMITS = { wallMs: 6000, residentBytes: 400 * MEGABYTE, checkEveryMs: 50, filesPerChild: 3 };

let folder: string;
let ledger: Ledger;
let actor: Actor;
let runner: ImportRunner;

beforeEach(async () => {
	const entry = join(await builtProgram(), 'entries', 'jobs', 'analyseFile.js');
	process.env.SLIP_LEDGER_TROUBLE = '1';
	folder = mkdtempSync(join(tmpdir(), 'slip-ledger-fault-'));
	ledger = openLedger(folder, { migrate: true });
	actor = actorOf(choosePerson(ledger, 'Tester'));
	runner = new ImportRunner(ledger, { entry, children: 1, limits: LIMITS, lookEveryMs: 50 });
});

afterEach(async () => {
	await runner.stop();
	ledger.close();
	rmSync(folder, { recursive: true, force: true });
	delete process.env.SLIP_LEDGER_TROUBLE;
});

async function queue(content: string): Promise<number> {
	const bytes = Readable.from([Buffer.from(content)]);
	return (await storeFile(ledger, actor, { name: 'bad.fit', bytes })).importId;
}

async function queueGoodRide(): Promise<number> {
	const [file] = smallRides(1);
	return (await storeFile(ledger, actor, { name: 'good.fit', bytes: createReadStream(file) })).importId;
}

async function settled(...ids: number[]): Promise<(ImportView | null)[]> {
	// a busy machine gives a file four times the time allowed
	await until(
		'all files to be settled',
		() => ids.every((id) => !['waiting', 'analysing'].includes(findImport(ledger, id)!.stage)),
		100_000
	);
	return ids.map((id) => findImport(ledger, id));
}

describe('a file that misbehaves', () => {
	it('by taking too long is stopped and refused, and the next file is read', async () => {
		const ids = [await queue('TIME\n'), await queueGoodRide()];
		runner.start();
		const startedMs = performance.now();
		expect(await settled(...ids)).toMatchObject([
			{ stage: 'refused', sentence: expect.stringContaining('took too long') },
			{ stage: 'done' }
		]);
		expect(performance.now() - startedMs).toBeGreaterThan(LIMITS.wallMs);
	});

	it('by taking too much memory is stopped near the limit and refused, and the next file is read', async () => {
		const ids = [await queue('MEMORY\n'), await queueGoodRide()];
		runner.start();
		const [refused, good] = await settled(...ids);
		expect(refused).toMatchObject({
			stage: 'refused',
			sentence: expect.stringContaining('too much memory')
		});
		const stoppedAt = Number(/stopped at (\d+) MB/.exec(refused!.detail ?? '')?.[1]);
		expect(stoppedAt).toBeGreaterThanOrEqual(400);
		expect(stoppedAt).toBeLessThan(700);
		expect(good?.stage).toBe('done');
	});

	it('by ending its process is tried three times and then given up, and the next file is read', async () => {
		const ids = [await queue('CRASH\n'), await queueGoodRide()];
		runner.start();
		expect(await settled(...ids)).toMatchObject([
			{
				stage: 'failed',
				sentence: expect.stringContaining('3 times'),
				detail: expect.stringContaining('SIGKILL')
			},
			{ stage: 'done' }
		]);
	});

	it('by being no ride is refused with a sentence and a detail, and its bytes are kept', async () => {
		const id = await queue('this is no ride');
		runner.start();
		const [refused] = await settled(id);
		expect(refused?.stage).toBe('refused');
		expect(refused?.sentence).toMatch(/\.$/);
		expect(refused?.detail).toContain('bad.fit');
		expect(ledger.database.prepare('SELECT count(*) AS n FROM source').get()).toEqual({ n: 1 });
	});
});

describe('a limit that is set', () => {
	afterEach(() => {
		delete process.env.SLIP_LEDGER_RECORDS;
	});

	it('is the one by which the process that reads files refuses, with the reason', async () => {
		process.env.SLIP_LEDGER_RECORDS = '100';
		const id = await queueGoodRide();
		runner.start();
		expect(await settled(id)).toMatchObject([
			{
				stage: 'refused',
				sentence: expect.stringContaining('larger'),
				detail: expect.stringContaining('100')
			}
		]);
	});
});

describe('a runner that is told to stop', () => {
	it('puts the file it is reading back as if it had not been begun, and hands the lease back', async () => {
		const id = await queue('TIME\n');
		runner.start();
		await until('the file to be read', () => findImport(ledger, id)!.stage === 'analysing');
		await runner.stop();
		expect(findImport(ledger, id)?.stage).toBe('waiting');
		expect(ledger.database.prepare('SELECT attempts FROM import').get()).toEqual({ attempts: 0 });
		expect(ledger.database.prepare('SELECT 1 FROM lease').get()).toBeUndefined();
	});
});

describe('residentBytes', () => {
	it('says how much memory a process holds, and nothing of one that is gone', () => {
		const own = residentBytes(process.pid)!;
		expect(own).toBeGreaterThan(20 * MEGABYTE);
		expect(Math.abs(own - process.memoryUsage().rss)).toBeLessThan(64 * MEGABYTE);
		expect(residentBytes(2 ** 30)).toBeNull();
	});
});
