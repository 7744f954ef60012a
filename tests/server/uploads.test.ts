import { createHash, randomBytes } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, utimesSync, writeFileSync } from 'node:fs';
import { open } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import {
	appendToUpload,
	createUpload,
	findImport,
	finishUpload,
	listImports,
	recoverUploads,
	removeBrokenUpload,
	setSettings,
	uploadOffset
} from '$lib/server';
import { sourcePath, writeAll } from '$lib/server/store/sourceStore';
import { freshLedger, rowsOf, storeSomething, type TestLedger } from './testLedger';

const bytes = randomBytes(5000);
const sha256 = createHash('sha256').update(bytes).digest('hex');

async function* from(...pieces: Uint8Array[]) {
	for (const piece of pieces) yield piece;
}

async function announced({ ledger, actor }: TestLedger, size = bytes.length) {
	return (await createUpload(ledger, actor, { name: 'a/b\\ride.fit', size })).id;
}

describe('an upload', () => {
	it('takes a file in pieces, stores it under its hash and queues it', async () => {
		const test = freshLedger();
		const { ledger, actor } = test;
		const id = await announced(test);
		const first = await appendToUpload(
			ledger,
			id,
			0,
			from(bytes.subarray(0, 1000), bytes.subarray(1000, 1500))
		);
		expect(first).toEqual({ offset: 1500 });
		expect(uploadOffset(ledger, id)).toEqual({ offset: 1500, size: 5000 });
		await appendToUpload(ledger, id, 1500, from(bytes.subarray(1500)));
		const { importId } = await finishUpload(ledger, actor, id);
		expect(findImport(ledger, importId)).toMatchObject({
			fileName: 'ride.fit',
			bytes: 5000,
			stage: 'waiting'
		});
		expect(readFileSync(sourcePath(ledger.folder, sha256)).equals(bytes)).toBe(true);
		expect(readdirSync(join(ledger.folder, 'incoming'))).toEqual([]);
	});

	it('may be finished twice and stands in the queue once', async () => {
		const test = freshLedger();
		const { ledger, actor } = test;
		const id = await announced(test);
		await appendToUpload(ledger, id, 0, from(bytes));
		const once = await finishUpload(ledger, actor, id);
		expect(await finishUpload(ledger, actor, id)).toEqual(once);
		expect(rowsOf(ledger, 'SELECT id FROM import')).toHaveLength(1);
		expect(uploadOffset(ledger, id).offset).toBe(5000);
	});

	it('keeps what came before a broken connection and goes on from there', async () => {
		const test = freshLedger();
		const { ledger } = test;
		const id = await announced(test);
		async function* breaking() {
			yield bytes.subarray(0, 700);
			throw new Error('connection lost');
		}
		await expect(appendToUpload(ledger, id, 0, breaking())).rejects.toThrow('connection lost');
		expect(uploadOffset(ledger, id).offset).toBe(700);
		expect(await appendToUpload(ledger, id, 700, from(bytes.subarray(700)))).toEqual({ offset: 5000 });
	});

	it('says after a minute without a byte that it broke off, not while bytes come slowly', async () => {
		const test = freshLedger();
		const { ledger, clock } = test;
		const id = await announced(test);
		const view = () => listImports(ledger, { limit: 1 })[0];
		async function* slowly() {
			for (const from of [0, 100, 200]) {
				clock.ms += 40_000;
				yield bytes.subarray(from, from + 100);
				expect(view()).toMatchObject({ stage: 'receiving', brokeOff: false, sentence: null });
			}
		}
		await appendToUpload(ledger, id, 0, slowly());
		clock.ms += 59_000;
		expect(view().brokeOff).toBe(false);
		clock.ms += 2_000;
		expect(view()).toMatchObject({ brokeOff: true, sentence: expect.stringContaining('broke off') });
		// the page that is still open may go on with it
		await appendToUpload(ledger, id, 300, from(bytes.subarray(300)));
		expect(view().brokeOff).toBe(false);
	});

	it('that broke off is removed by a person or by choosing the file again, and by nothing else', async () => {
		const test = freshLedger();
		const { ledger, actor, clock } = test;
		const id = await announced(test);
		await appendToUpload(ledger, id, 0, from(bytes.subarray(0, 10)));
		const [{ id: importId }] = listImports(ledger, { limit: 1 });
		expect(() => removeBrokenUpload(ledger, actor, importId)).toThrow('broke off');
		await announced(test);
		expect(listImports(ledger, { limit: 9 })).toHaveLength(2);
		clock.ms += 61_000;
		removeBrokenUpload(ledger, actor, importId);
		expect(() => uploadOffset(ledger, id)).toThrow('begin it again');
		await announced(test, 77);
		expect(listImports(ledger, { limit: 9 })).toHaveLength(2);
		const again = await announced(test);
		expect(listImports(ledger, { limit: 9 }).map(({ bytes }) => bytes)).toEqual([5000, 77]);
		expect(readdirSync(join(ledger.folder, 'incoming'))).toContain(again);
		expect(readdirSync(join(ledger.folder, 'incoming'))).toHaveLength(2);
		expect(rowsOf(ledger, "SELECT 1 FROM trail WHERE action = 'removed'")).toHaveLength(2);
	});

	it('says that bytes came once a second at most: a file that comes whole in less costs no such write', async () => {
		const test = freshLedger();
		const { ledger, clock } = test;
		const id = await announced(test);
		const at = () => rowsOf(ledger, 'SELECT touched_ms FROM upload')[0].touched_ms;
		const begun = clock.ms;
		clock.ms += 900;
		await appendToUpload(ledger, id, 0, from(bytes.subarray(0, 1000)));
		expect(at()).toBe(begun);
		clock.ms += 200;
		await appendToUpload(ledger, id, 1000, from(bytes.subarray(1000, 2000)));
		expect(at()).toBe(clock.ms);
		clock.ms -= 3_600_000;
		await appendToUpload(ledger, id, 2000, from(bytes.subarray(2000)));
		expect(at()).toBe(clock.ms);
	});

	it('refuses a piece at another offset and says where it must begin', async () => {
		const test = freshLedger();
		const id = await announced(test);
		await appendToUpload(test.ledger, id, 0, from(bytes.subarray(0, 10)));
		await expect(appendToUpload(test.ledger, id, 0, from(bytes))).rejects.toMatchObject({
			code: 'wrong-offset',
			sentence: expect.stringContaining('byte 10')
		});
	});

	it('refuses a second writer while one is writing', async () => {
		const test = freshLedger();
		const id = await announced(test);
		let go = () => {};
		const gate = new Promise<void>((resolve) => (go = resolve));
		async function* slow() {
			yield bytes.subarray(0, 10);
			await gate;
		}
		const writing = appendToUpload(test.ledger, id, 0, slow());
		await expect(appendToUpload(test.ledger, id, 0, from(bytes))).rejects.toMatchObject({
			code: 'conflict'
		});
		go();
		expect(await writing).toEqual({ offset: 10 });
	});

	it('refuses more bytes than announced, files over the limit and empty files', async () => {
		const test = freshLedger();
		const id = await announced(test, 100);
		await expect(appendToUpload(test.ledger, id, 0, from(bytes))).rejects.toMatchObject({
			code: 'too-large'
		});
		setSettings(test.ledger, test.actor, { uploadLimitMegabytes: 1 });
		await expect(announced(test, 2 ** 20 + 1)).rejects.toMatchObject({ code: 'too-large' });
		await expect(announced(test, 0)).rejects.toMatchObject({ code: 'wrong-value' });
		await expect(storeSomething(test, { content: 'x'.repeat(2 ** 20 + 1) })).rejects.toMatchObject({
			code: 'too-large'
		});
		expect(readdirSync(join(test.ledger.folder, 'incoming'))).toEqual([id]);
	});

	it('is not finished while bytes are missing', async () => {
		const test = freshLedger();
		const id = await announced(test);
		await appendToUpload(test.ledger, id, 0, from(bytes.subarray(0, 4999)));
		await expect(finishUpload(test.ledger, test.actor, id)).rejects.toMatchObject({
			code: 'incomplete',
			sentence: '1 bytes are still missing.'
		});
		expect(rowsOf(test.ledger, 'SELECT stage FROM import')).toEqual([{ stage: 'receiving' }]);
	});

	it.each(['../../etc/passwd', '', 'g'.repeat(32)])('knows no upload called %j', async (id) => {
		const { ledger } = freshLedger();
		await expect(appendToUpload(ledger, id, 0, from(bytes))).rejects.toMatchObject({ code: 'not-found' });
	});

	it('that was hashed but not recorded goes on after a restart', async () => {
		const test = freshLedger();
		const { ledger } = test;
		const id = await announced(test);
		await appendToUpload(ledger, id, 0, from(bytes));
		ledger.database.prepare('UPDATE upload SET sha256 = ? WHERE id = ?').run(sha256, id);
		await recoverUploads(ledger);
		expect(rowsOf(ledger, 'SELECT stage, sha256 FROM import')).toEqual([{ stage: 'waiting', sha256 }]);
		expect(existsSync(sourcePath(ledger.folder, sha256))).toBe(true);
	});

	it('that nobody went on with for two days is cleared away, a younger one is not', async () => {
		const test = freshLedger();
		const { ledger, clock } = test;
		const old = await announced(test);
		clock.ms += 47 * 3_600_000;
		const young = await announced(test);
		const stray = join(ledger.folder, 'incoming', 'file-stray');
		writeFileSync(stray, 'half a copy');
		utimesSync(stray, 1, 1);
		clock.ms += 2 * 3_600_000;
		await recoverUploads(ledger);
		expect(readdirSync(join(ledger.folder, 'incoming'))).toEqual([young]);
		expect(() => uploadOffset(ledger, old)).toThrow('no such upload');
	});
});

describe.runIf(existsSync('/dev/full'))('a full disk', () => {
	it('is said in one sentence', async () => {
		const full = await open('/dev/full', 'r+');
		await expect(writeAll(full, bytes)).rejects.toMatchObject({ code: 'disk-full' });
		await full.close();
	});
});

describe('the same file', () => {
	it('handed in again while it waits is in the ledger already and stored once', async () => {
		const test = freshLedger();
		const first = await storeSomething(test, { content: 'one ride' });
		const second = await storeSomething(test, { content: 'one ride', name: 'other name.fit' });
		expect(findImport(test.ledger, first)?.stage).toBe('waiting');
		expect(findImport(test.ledger, second)).toMatchObject({
			stage: 'already in the ledger',
			fileName: 'other name.fit'
		});
		expect(rowsOf(test.ledger, 'SELECT sha256 FROM source')).toHaveLength(1);
	});
});
