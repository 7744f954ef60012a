import { createHash } from 'node:crypto';
import Database from 'better-sqlite3';
import { existsSync, mkdirSync, readdirSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import {
	appendToUpload,
	archiveLines,
	createUpload,
	eraseRider,
	findImport,
	finishUpload,
	recoverUploads,
	retryImport,
	setSettings,
	uploadOffset
} from '$lib/server';
import { migrate } from '$lib/server/ledger/migrate';
import { LEDGER_MIGRATIONS } from '$lib/server/ledger/migrations';
import { newHolder, takeLease } from '$lib/server/queue/lease';
import { archivePath } from '$lib/server/store/archivePlace';
import { sourcePath } from '$lib/server/store/sourceStore';
import {
	finishArchive,
	recordedMembers,
	releaseArchive,
	takeNextArchive
} from '$lib/server/unpack/archiveQueue';
import { recordMember } from '$lib/server/unpack/recordMember';
import type { MemberOutcome } from '../../src/jobs/unpack/messages';
import { zipBytes } from '../jobs/unpack/zipBytes';
import { freshFolder, freshLedger, rowsOf, storeSomething, type TestLedger } from './testLedger';

const ZIP = zipBytes([{ name: 'a.csv', content: 'x' }]);
const shaOf = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');

async function* from(...pieces: Uint8Array[]) {
	for (const piece of pieces) yield piece;
}

/** an archive that arrived under the name given */
async function uploaded({ ledger, actor }: TestLedger, bytes: Uint8Array = ZIP, name = 'rides.zip') {
	const { id } = await createUpload(ledger, actor, { name, size: bytes.length, hints: { wet: true } });
	await appendToUpload(ledger, id, 0, from(bytes));
	return id;
}

/** the archive as the runner of this test has taken it */
async function taken(test: TestLedger) {
	const id = await uploaded(test);
	const { importId } = await finishUpload(test.ledger, test.actor, id);
	return { importId, archive: takeNextArchive(test.ledger, test.holder)! };
}

/** a file as the child process leaves it */
function written({ ledger }: TestLedger, content: string): MemberOutcome {
	const path = join(ledger.folder, 'incoming', `archive-1-${content}`);
	writeFileSync(path, content);
	return { kind: 'written', path, sha256: shaOf(Buffer.from(content)), bytes: content.length };
}

const facts = (member: number, name: string) => ({ member, name, bytes: 4 });

describe('an archive that arrives', () => {
	it('is told by its bytes, waits to be unpacked and is no source', async () => {
		const test = freshLedger();
		const { ledger, actor } = test;
		const id = await uploaded(test, ZIP, 'really a ride.fit');
		const { importId } = await finishUpload(ledger, actor, id);
		expect(await finishUpload(ledger, actor, id)).toEqual({ importId });
		expect(findImport(ledger, importId)).toMatchObject({ stage: 'unpacking', isArchive: true });
		expect(existsSync(archivePath(ledger.folder, shaOf(ZIP)))).toBe(true);
		expect(readdirSync(join(ledger.folder, 'incoming'))).toEqual([]);
		expect(rowsOf(ledger, 'SELECT * FROM source')).toEqual([]);
		expect(rowsOf(ledger, "SELECT 1 FROM trail WHERE action = 'handed in an archive'")).toHaveLength(1);
	});

	it('from the terminal waits likewise', async () => {
		const test = freshLedger();
		const importId = await storeSomething(test, { name: 'x', content: ZIP.toString('latin1') });
		expect(findImport(test.ledger, importId)?.stage).toBe('unpacking');
		expect(readdirSync(join(test.ledger.folder, 'incoming'))).toEqual([]);
	});

	it('may be larger than a ride; what only bears its name may not, and is not kept', async () => {
		const test = freshLedger();
		const { ledger, actor } = test;
		setSettings(ledger, actor, { uploadLimitMegabytes: 1 });
		const large = Buffer.alloc(2 ** 20 + 1, 1);
		await expect(uploaded(test, large, 'ride.fit')).rejects.toMatchObject({ code: 'too-large' });
		const fake = await uploaded(test, large);
		await expect(finishUpload(ledger, actor, fake)).rejects.toMatchObject({ code: 'too-large' });
		expect(() => uploadOffset(ledger, fake)).toThrow('no such upload');
		large.set(ZIP);
		await finishUpload(ledger, actor, await uploaded(test, large));
		expect(rowsOf(ledger, 'SELECT stage FROM import')).toEqual([{ stage: 'unpacking' }]);
	});

	it('that was moved but not written down is found after a restart', async () => {
		const test = freshLedger();
		const { ledger } = test;
		const id = await uploaded(test);
		ledger.database.prepare('UPDATE upload SET sha256 = ? WHERE id = ?').run(shaOf(ZIP), id);
		await recoverUploads(ledger);
		expect(rowsOf(ledger, 'SELECT stage, archive_sha256 AS sha FROM import')).toEqual([
			{ stage: 'unpacking', sha: shaOf(ZIP) }
		]);
		expect(existsSync(archivePath(ledger.folder, shaOf(ZIP)))).toBe(true);
	});
});

describe('a file of an archive', () => {
	it('is queued with what was said of the archive, once, and may be known already', async () => {
		const test = freshLedger();
		const { ledger, holder, actor } = test;
		await storeSomething(test, { content: 'same' });
		const { archive } = await taken(test);
		const record = (member: number, name: string, content: string) =>
			recordMember(ledger, holder, actor, archive, facts(member, name), written(test, content));
		expect(await record(0, 'spring/tour/a.fit', 'ride')).toBe(true);
		expect(await record(0, 'spring/tour/a.fit', 'ride')).toBe(true);
		expect(await record(1, 'b.fit', 'same')).toBe(true);
		expect(
			rowsOf(ledger, 'SELECT file_name, folder, stage, hints FROM import WHERE archive_id IS NOT NULL')
		).toEqual([
			{ file_name: 'a.fit', folder: 'spring/tour', stage: 'waiting', hints: '{"wet":true}' },
			{ file_name: 'b.fit', folder: null, stage: 'already in the ledger', hints: '{"wet":true}' }
		]);
		expect(existsSync(sourcePath(ledger.folder, shaOf(Buffer.from('ride'))))).toBe(true);
		expect(readdirSync(join(ledger.folder, 'incoming'))).toEqual([]);
		expect(recordedMembers(ledger, archive.id)).toEqual([0, 1]);
	});

	it('that is refused or left out has a line with the reason, and its name is cleaned', async () => {
		const test = freshLedger();
		const { ledger, holder, actor } = test;
		const { archive, importId } = await taken(test);
		const refusal = { code: 'member-locked', sentence: 'Locked.', detail: 'encrypted' };
		const name = `a/b/c/<i>d</i>/e/\u202E${'x'.repeat(4000)}.fit`;
		await recordMember(ledger, holder, actor, archive, facts(0, name), { kind: 'refused', refusal });
		await recordMember(ledger, holder, actor, archive, facts(1, 'cat.jpg'), {
			kind: 'left out',
			sentence: 'No.'
		});
		const lines = archiveLines(ledger, importId);
		expect(lines.map(({ importId: id }) => findImport(ledger, id))).toMatchObject([
			{ stage: 'refused', sentence: 'Locked.', detail: 'encrypted', archiveId: importId },
			{ stage: 'left out', sentence: 'No.' }
		]);
		expect(lines[0].name).toMatch(/^…\/c\/id\/i\/e\/x+\.fit$/);
		expect(lines[0].name.length).toBeLessThan(400);
		expect(findImport(ledger, importId)?.sentence).toBe(
			'0 files taken out, 1 left out because they are no rides, 1 refused so far.'
		);
		expect(() => retryImport(ledger, actor, lines[0].importId)).toThrow('tried again');
	});

	it('is not written down by a runner that has lost its lease or the archive', async () => {
		const test = freshLedger();
		const { ledger, actor } = test;
		const { archive } = await taken(test);
		const write = () =>
			recordMember(ledger, test.holder, actor, archive, facts(0, 'a.fit'), written(test, 'ride'));
		takeNextArchive(ledger, newHolder());
		expect(await write()).toBe(false);
		const { archive: again } = { archive: takeNextArchive(ledger, test.holder)! };
		ledger.database.exec('DELETE FROM lease');
		takeLease(ledger, 'runner', newHolder());
		expect(await recordMember(ledger, test.holder, actor, again, facts(0, 'a'), written(test, 'b'))).toBe(
			false
		);
		expect(rowsOf(ledger, 'SELECT 1 FROM import WHERE archive_id IS NOT NULL')).toEqual([]);
	});
});

describe('an archive that is unpacked', () => {
	it('loses its bytes when all is written down, unless another row needs them', async () => {
		const test = freshLedger();
		const { ledger } = test;
		const first = await taken(test);
		await finishUpload(ledger, test.actor, await uploaded(test));
		await finishArchive(ledger, first.archive, null);
		expect(findImport(ledger, first.importId)).toMatchObject({ stage: 'unpacked', detail: null });
		expect(existsSync(archivePath(ledger.folder, shaOf(ZIP)))).toBe(true);
		await finishArchive(ledger, takeNextArchive(ledger, test.holder)!, {
			code: 'archive-damaged',
			sentence: 'Damaged.',
			detail: 'no list'
		});
		expect(existsSync(archivePath(ledger.folder, shaOf(ZIP)))).toBe(false);
		expect(takeNextArchive(ledger, test.holder)).toBeNull();
	});

	it('is given up after three attempts without a step forward, is kept and can be tried again', async () => {
		const test = freshLedger();
		const { ledger, holder, actor } = test;
		const { importId } = await taken(test);
		takeNextArchive(ledger, holder);
		const third = takeNextArchive(ledger, holder)!;
		await recordMember(ledger, holder, actor, third, facts(0, 'a.fit'), {
			kind: 'left out',
			sentence: 'No.'
		});
		releaseArchive(ledger, third);
		expect([1, 2, 3].map(() => takeNextArchive(ledger, holder)?.id)).toEqual([importId, importId, importId]);
		expect(takeNextArchive(ledger, holder)).toBeNull();
		expect(findImport(ledger, importId)).toMatchObject({ stage: 'failed' });
		expect(existsSync(archivePath(ledger.folder, shaOf(ZIP)))).toBe(true);
		retryImport(ledger, actor, importId);
		expect(takeNextArchive(ledger, holder)?.id).toBe(importId);
	});

	it('leaves nothing behind where its last step was cut short', async () => {
		const test = freshLedger();
		const { ledger, clock } = test;
		const { archive } = await taken(test);
		const stray = archivePath(ledger.folder, 'a'.repeat(64));
		for (const path of [stray, archivePath(ledger.folder, archive.sha256)]) {
			mkdirSync(join(ledger.folder, 'archives'), { recursive: true });
			writeFileSync(path, ZIP);
			utimesSync(path, 1, 1);
		}
		clock.ms += 1000;
		await recoverUploads(ledger);
		expect(readdirSync(join(ledger.folder, 'archives'))).toEqual([archive.sha256]);
	});

	it('loses its name and its folders with the files of an erased rider', async () => {
		const test = freshLedger();
		const { ledger, holder, actor } = test;
		const { archive } = await taken(test);
		await recordMember(ledger, holder, actor, archive, facts(0, 'Anna/a.fit'), written(test, 'ride'));
		await recordMember(ledger, holder, actor, archive, facts(1, 'Anna/b.jpg'), {
			kind: 'left out',
			sentence: 'No.'
		});
		await finishArchive(ledger, archive, null);
		ledger.database.exec("UPDATE import SET stage = 'refused' WHERE stage = 'waiting'");
		eraseRider(ledger, actor, { personId: actor.personId, reason: 'asked for' });
		const left = JSON.stringify(rowsOf(ledger, 'SELECT file_name, folder, detail FROM import, trail'));
		for (const word of ['rides.zip', 'Anna', 'a.fit', 'b.jpg']) expect(left).not.toContain(word);
	});
});

describe('the change of layout', () => {
	it('keeps imports and uploads that are under way', () => {
		const file = join(freshFolder(), 'ledger.sqlite');
		migrate(
			file,
			LEDGER_MIGRATIONS.filter(({ number }) => number <= 12)
		);
		const old = new Database(file);
		old.exec(`INSERT INTO person (id, name, code, role, created_ms) VALUES (1, 'S', 'P1', 'owner', 0);
			INSERT INTO source VALUES ('${'a'.repeat(64)}', 5, 'a.fit', 0, 1);
			INSERT INTO import (id, file_name, bytes, stage, sha256, actor_id, created_ms, changed_ms)
			VALUES (1, 'a.fit', 5, 'failed', '${'a'.repeat(64)}', 1, 7, 8);
			INSERT INTO import (id, file_name, bytes, stage, actor_id, created_ms, changed_ms)
			VALUES (2, 'b.fit', 5, 'receiving', 1, 7, 8);
			INSERT INTO upload (id, import_id, size, touched_ms) VALUES ('u', 2, 5, 9)`);
		old.close();
		migrate(file, LEDGER_MIGRATIONS);
		const database = new Database(file);
		expect(database.prepare('SELECT id, file_name, stage, changed_ms FROM import').raw().all()).toEqual([
			[1, 'a.fit', 'failed', 8],
			[2, 'b.fit', 'receiving', 8]
		]);
		expect(database.prepare('SELECT id, import_id, touched_ms FROM upload').raw().all()).toEqual([
			['u', 2, 9]
		]);
		expect(database.pragma('foreign_key_check')).toEqual([]);
		database.close();
	});
});
