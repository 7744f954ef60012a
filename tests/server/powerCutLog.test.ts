import Database from 'better-sqlite3';
import { execFileSync } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { open } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, it, vi } from 'vitest';
import { appendToUpload, createUpload, finishUpload, type Ledger } from '$lib/server';
import { randomNumbers } from '$lib/reliability/randomNumbers';
import { freshFolder, freshLedger } from './testLedger';

/**
 * What a power cut may leave of the ledger's log, tried out: while files are handed in, the log is looked at whenever a
 * wait for the disk begins and ends. What it held when the last one that ended began is on the disk. Of everything
 * written after that any part may be there: some pages or none, in any order, a page by half, the file's length without
 * what is in it. Whatever it is, the ledger must open whole and know each file whose sender was answered before.
 */
vi.mock('node:fs/promises', async (original) => {
	const real = await original<typeof import('node:fs/promises')>();
	return { ...real, open: vi.fn(real.open) };
});

const PAGE = 4096;
const SECTOR = 512;
/** bytes of the log's head */
const HEAD = 32;

/** The moment at which a wait for the disk ends; cut off just before it. */
interface Moment {
	/** surely on the disk: what the log held when the wait before began */
	readonly durable: Buffer;
	/** what the log holds now */
	readonly written: Buffer;
	readonly database: Buffer;
	/** uploads whose senders have been answered */
	readonly answered: readonly string[];
}

/** Read by another process: a file that this one opens and closes would lose it SQLite's locks on the database. */
const bytesOf = (file: string) => execFileSync('cat', [file], { maxBuffer: 2 ** 26 });

async function watched(work: (test: ReturnType<typeof freshLedger>, answered: string[]) => Promise<void>) {
	const real = (await vi.importActual<typeof import('node:fs/promises')>('node:fs/promises')).open;
	const test = freshLedger();
	const file = join(test.ledger.folder, 'ledger.sqlite');
	const moments: Moment[] = [];
	const answered: string[] = [];
	let durable: Buffer | null = null;
	vi.mocked(open).mockImplementation(async (path, ...rest) => {
		const handle = await real(path, ...rest);
		if (path !== `${file}-wal`) return handle;
		const datasync = handle.datasync.bind(handle);
		handle.datasync = async () => {
			const begun = readFileSync(`${file}-wal`);
			await datasync();
			const written = readFileSync(`${file}-wal`);
			if (durable) moments.push({ durable, written, database: bytesOf(file), answered: [...answered] });
			durable = begun;
		};
		return handle;
	});
	await work(test, answered);
	return moments;
}

async function handIn({ ledger, actor }: ReturnType<typeof freshLedger>, answered: string[], size = 3000) {
	const { id } = await createUpload(ledger, actor, { name: 'ride.fit', size });
	await appendToUpload(
		ledger,
		id,
		0,
		(async function* () {
			yield randomBytes(size);
		})()
	);
	await finishUpload(ledger, actor, id);
	answered.push(id);
}

/**
 * What the disk may hold of the log: prefixes and suffixes in whole pages and some random parts. Where the log began anew,
 * SQLite waits for its head to be on the disk before it writes on (wal.c: "an out-of-order write following a WAL restart
 * could result in database corruption"), unless syncing is off, which it never is here: NORMAL or FULL.
 */
function* leftOvers(moment: Pick<Moment, 'durable' | 'written'>, random: number, seed: number) {
	const { written } = moment;
	const durable = Buffer.from(moment.durable);
	yield moment.durable;
	written.copy(durable, 0, 0, HEAD);
	const changed: number[] = [];
	for (let at = 0; at < written.length; at += PAGE)
		if (!same(durable, written, at, at + PAGE)) changed.push(at);
	const grown = (length: number) => Buffer.concat([durable], Math.max(durable.length, length));
	const take = (into: Buffer, from: number, bytes: number) => {
		if (from < written.length) written.copy(into, from, from, from + bytes);
	};
	// a log of thousands of pages would be tried for minutes
	const step = Math.max(1, Math.ceil(changed.length / 24));
	for (let some = 0; some <= changed.length; some += step) {
		const first = changed.slice(0, some);
		const cut = grown((first.at(-1) ?? -PAGE) + PAGE);
		for (const at of first) take(cut, at, PAGE);
		yield cut.subarray(0, Math.max(durable.length, Math.min(cut.length, written.length)));
		// the file has grown, its bytes have not come
		const zeros = grown(written.length);
		for (const at of first) take(zeros, at, PAGE);
		yield zeros;
		const last = grown(written.length);
		for (const at of changed.slice(some)) take(last, at, PAGE);
		yield last;
	}
	const draw = randomNumbers(seed);
	for (let i = 0; i < random; i++) {
		const torn = grown(written.length);
		const share = draw.next();
		for (const page of changed)
			for (let at = page; at < page + PAGE; at += SECTOR) if (draw.next() < share) take(torn, at, SECTOR);
		yield torn;
	}
}

const same = (a: Buffer, b: Buffer, from: number, to: number) =>
	a.subarray(from, to).equals(b.subarray(from, to));

/** Opens what the disk holds as the next start does; how many of these uploads the ledger knows as handed in. */
function known(folder: string, database: Buffer, log: Buffer, ids: readonly string[]): number {
	const file = join(folder, 'ledger.sqlite');
	writeFileSync(file, database);
	writeFileSync(`${file}-wal`, log);
	const opened = new Database(file);
	try {
		// nothing of this copy is kept
		opened.pragma('synchronous = OFF');
		expect(opened.pragma('quick_check', { simple: true })).toBe('ok');
		return opened
			.prepare<[string], number>(
				`SELECT count(*) FROM upload u JOIN import i ON i.id = u.import_id JOIN source s ON s.sha256 = u.sha256
				WHERE u.finished = 1 AND i.stage = 'waiting' AND u.id IN (SELECT value FROM json_each(?))`
			)
			.pluck()
			.get(JSON.stringify(ids))!;
	} finally {
		opened.close();
	}
}

function tryAll(moments: readonly Moment[]): number {
	const folder = freshFolder();
	let tried = 0;
	moments.forEach((moment, place) => {
		const { answered, database } = moment;
		for (const log of leftOvers(moment, 12, 100 + place)) {
			tried++;
			expect(known(folder, database, log, answered)).toBe(answered.length);
		}
	});
	return tried;
}

it('whatever a power cut leaves of the log, files whose senders were answered are there and the ledger is whole', async () => {
	const moments = await watched(async (test, answered) => {
		for (let round = 0; round < 3; round++) await Promise.all([1, 2, 3].map(() => handIn(test, answered)));
		await handIn(test, answered);
	});
	expect(moments.length).toBeGreaterThan(5);
	expect(moments.at(-1)!.answered.length).toBeGreaterThanOrEqual(9);
	expect(tryAll(moments)).toBeGreaterThan(200);
	// without that wait for the disk the same cuts lose files: the check would see it
	const folder = freshFolder();
	const lost = moments.map(({ answered, database }, place) => {
		const before = moments[place - 1];
		return before ? answered.length - known(folder, database, before.durable, answered) : 0;
	});
	expect(Math.max(...lost)).toBeGreaterThan(0);
}, 120_000);

it('the same where the log was folded into the ledger in between and is written from its beginning again', async () => {
	const fold = ({ folder }: Ledger) => {
		const database = new Database(join(folder, 'ledger.sqlite'));
		database.pragma('synchronous = NORMAL');
		database.pragma('wal_checkpoint(PASSIVE)');
		database.close();
	};
	const moments = await watched(async (test, answered) => {
		for (let round = 0; round < 3; round++) {
			await Promise.all([1, 2].map(() => handIn(test, answered)));
			fold(test.ledger);
		}
		await handIn(test, answered);
	});
	// the log began anew: its salt, bytes 16 to 23 of its head, is another one
	const salts = new Set(moments.map(({ written }) => written.subarray(16, 24).toString('hex')));
	expect(salts.size).toBeGreaterThan(1);
	expect(tryAll(moments)).toBeGreaterThan(100);
}, 120_000);
