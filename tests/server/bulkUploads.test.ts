import { createHash, randomBytes } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import {
	actorOf,
	appendToUpload,
	cancelUpload,
	choosePerson,
	createUpload,
	importOverview,
	knownFiles,
	listImports,
	resumeUpload,
	uploadOffset
} from '$lib/server';
import { HASHED_PIECE_BYTES } from '$lib/server/store/resumeUpload';
import { addRide, freshLedger, rowsOf, storeSomething } from './testLedger';

const shaOf = (bytes: Uint8Array | string) => createHash('sha256').update(bytes).digest('hex');
async function* from(bytes: Uint8Array) {
	yield bytes;
}

describe('knownFiles', () => {
	it('are those that wait or became rides, not refused ones nor strangers', async () => {
		const test = freshLedger();
		const { database } = test.ledger;
		await addRide(test);
		const ride = database.prepare('SELECT sha256 FROM ride').pluck().get() as string;
		await storeSomething(test, { content: 'waits' });
		const refused = await storeSomething(test, { content: 'refused' });
		database.prepare("UPDATE import SET stage = 'refused' WHERE id = ?").run(refused);
		const asked = [ride, shaOf('waits'), shaOf('refused'), shaOf('never seen')];
		expect(await knownFiles(test.ledger, asked)).toEqual([ride, shaOf('waits')]);
	});

	it('are archives of which everything was taken, not those of which something was refused', async () => {
		const { ledger, actor } = freshLedger();
		const insert = (id: number, stage: string, sha: string | null, archive: number | null) =>
			ledger.database
				.prepare(
					`INSERT INTO import (id, file_name, bytes, stage, archive_sha256, archive_id, member, actor_id,
						created_ms, changed_ms) VALUES (?, 'a', 1, ?, ?, ?, ?, ?, 0, 0)`
				)
				.run(id, stage, sha, archive, archive, actor.personId);
		insert(1, 'unpacked', 'a'.repeat(64), null);
		insert(2, 'left out', null, 1);
		insert(3, 'unpacked', 'b'.repeat(64), null);
		insert(4, 'refused', null, 3);
		insert(5, 'unpacking', 'c'.repeat(64), null);
		const asked = ['a', 'b', 'c', 'd'].map((letter) => letter.repeat(64));
		expect(await knownFiles(ledger, asked)).toEqual([asked[0], asked[2]]);
	});

	it.each([[['x']], [[1]], [['A'.repeat(64)]], [Array.from({ length: 501 }, () => 'a'.repeat(64))]])(
		'refuses what is no list of hashes (%#)',
		async (asked) => {
			await expect(knownFiles(freshLedger().ledger, asked)).rejects.toThrow('SHA-256');
		}
	);
});

describe('a large upload that broke off', () => {
	it('is found by the same person alone, with a hash of each whole piece, and goes on behind the last', async () => {
		const { ledger, actor, clock } = freshLedger();
		const bytes = randomBytes(2 * HASHED_PIECE_BYTES + 70_000);
		const input = { name: 'all.zip', size: bytes.length + 5 };
		const { id } = await createUpload(ledger, actor, input);
		await appendToUpload(ledger, id, 0, from(bytes));
		expect(await resumeUpload(ledger, actor, input)).toBeNull();
		clock.ms += 10_000;
		const other = actorOf(choosePerson(ledger, 'Somebody else'));
		expect(await resumeUpload(ledger, other, input)).toBeNull();
		expect(await resumeUpload(ledger, actor, { ...input, size: 7 })).toBeNull();
		expect(await resumeUpload(ledger, actor, input)).toEqual({
			id,
			pieceBytes: HASHED_PIECE_BYTES,
			pieces: [0, 1].map((i) => shaOf(bytes.subarray(i * HASHED_PIECE_BYTES, (i + 1) * HASHED_PIECE_BYTES)))
		});
		expect(uploadOffset(ledger, id).offset).toBe(2 * HASHED_PIECE_BYTES);
	});

	it('is held by smaller pieces where it is small: a phone on a slow line loses little', async () => {
		const { ledger, actor, clock } = freshLedger();
		const bytes = randomBytes(600_000);
		const input = { name: 'ride.fit', size: 700_000 };
		const { id } = await createUpload(ledger, actor, input);
		await appendToUpload(ledger, id, 0, from(bytes));
		clock.ms += 10_000;
		const piece = 2 ** 18;
		expect(await resumeUpload(ledger, actor, input)).toEqual({
			id,
			pieceBytes: piece,
			pieces: [0, 1].map((i) => shaOf(bytes.subarray(i * piece, (i + 1) * piece)))
		});
		expect(uploadOffset(ledger, id).offset).toBe(2 * piece);
	});

	it('is taken back by its sender alone, and not once it has arrived', async () => {
		const { ledger, actor } = freshLedger();
		const { id } = await createUpload(ledger, actor, { name: 'a.zip', size: 10 });
		const other = actorOf(choosePerson(ledger, 'Somebody else'));
		expect(() => cancelUpload(ledger, other, id)).toThrow('no such upload');
		cancelUpload(ledger, actor, id);
		expect(listImports(ledger, { limit: 9 })).toEqual([]);
		expect(rowsOf(ledger, "SELECT 1 FROM trail WHERE detail LIKE '%gave it up%'")).toHaveLength(1);
		const { id: second } = await createUpload(ledger, actor, { name: 'a.zip', size: 10 });
		ledger.database.prepare('UPDATE upload SET sha256 = ? WHERE id = ?').run('a'.repeat(64), second);
		expect(() => cancelUpload(ledger, actor, second)).toThrow('arrived already');
	});
});

describe('importOverview', () => {
	it('has lines for what wants somebody, numbers for a thousand that went well', async () => {
		const test = freshLedger();
		const { ledger, actor, clock } = test;
		await storeSomething(test, { content: 'one' });
		const add = ledger.database.prepare(
			`INSERT INTO import (file_name, bytes, stage, sha256, sentence, actor_id, created_ms, changed_ms)
			VALUES ('a.fit', 1, ?, ?, 'S.', ?, ?, ?)`
		);
		ledger.database.transaction(() => {
			for (let i = 0; i < 1000; i++) add.run('done', shaOf('one'), actor.personId, clock.ms, clock.ms);
			for (let i = 0; i < 40; i++) add.run('refused', shaOf('one'), actor.personId, clock.ms, clock.ms);
		})();
		const overview = importOverview(ledger);
		expect(overview).toMatchObject({
			more: 20,
			underWay: { waiting: 1, reading: 0, receiving: 0, unpacking: 0 },
			lately: { rides: 1000, known: 0, leftOut: 0, refused: 40 }
		});
		expect(overview.lines).toHaveLength(20);
		expect(new Set(overview.lines.map(({ stage }) => stage))).toEqual(new Set(['refused']));
		expect(overview.settled).toHaveLength(20);
		expect(JSON.stringify(overview).length).toBeLessThan(20_000);
		clock.ms += 15 * 24 * 3_600_000;
		expect(importOverview(ledger)).toMatchObject({ lines: [], more: 0, lately: { rides: 0, refused: 0 } });
	});

	it('does not wait for an upload that broke off, however many newer lines hide it', async () => {
		const { ledger, actor, clock } = freshLedger();
		await createUpload(ledger, actor, { name: 'broke off.fit', size: 10 });
		const add = ledger.database.prepare(
			`INSERT INTO import (file_name, bytes, stage, sentence, actor_id, created_ms, changed_ms)
			VALUES ('a.fit', 1, 'refused', 'S.', ?, ?, ?)`
		);
		for (let i = 0; i < 40; i++) add.run(actor.personId, clock.ms, clock.ms);
		expect(importOverview(ledger).underWay.receiving).toBe(1);
		clock.ms += 61_000;
		expect(importOverview(ledger).lines.some(({ brokeOff }) => brokeOff)).toBe(false);
		expect(importOverview(ledger).underWay.receiving).toBe(0);
	});
});
