import { describe, expect, it } from 'vitest';
import { fileAnswers, fileAnswersCsv } from '$lib/server';
import { importOverview } from '$lib/server/queue/importOverview';
import { freshLedger, type TestLedger } from './testLedger';

/** An archive with more files than a list shows: every other one refused, one with a formula for a name. */
function withArchive(test: TestLedger, files: number): number {
	return test.ledger.database.transaction(() => addArchive(test, files))();
}

function addArchive({ ledger, actor }: TestLedger, files: number): number {
	const { database } = ledger;
	const add = database.prepare(
		`INSERT INTO import (file_name, bytes, stage, sentence, technical, archive_id, member, archive_sha256, actor_id,
			created_ms, changed_ms) VALUES (@name, 5, @stage, @sentence, 'line 7', @archive, @member, @sha256, @actor, @now, @now)`
	);
	const row = {
		sentence: null,
		archive: null,
		member: null,
		sha256: null,
		actor: actor.personId,
		now: ledger.now()
	};
	const archive = Number(
		add.run({ ...row, name: 'rides.zip', stage: 'unpacked', sha256: 'a'.repeat(64) }).lastInsertRowid
	);
	for (let i = 0; i < files; i++)
		add.run({
			...row,
			name: i === 1 ? '=1+1,"x".fit' : `${i}.fit`,
			stage: i % 2 === 0 ? 'left out' : 'refused',
			sentence: `Reason ${i}.`,
			archive,
			member: i
		});
	add.run({ ...row, name: 'alone.fit', stage: 'refused', sentence: 'By itself.' });
	return archive;
}

describe('what became of files', () => {
	it('is told of every one of them, a page at a time, where the overview only counts', () => {
		const test = freshLedger();
		const archiveId = withArchive(test, 250);
		expect(importOverview(test.ledger).more).toBeGreaterThan(100);
		const page = (number: number) => fileAnswers(test.ledger, { archiveId, page: number, pageSize: 100 });
		const seen = [1, 2, 3].flatMap((number) => page(number).lines.map(({ fileName }) => fileName));
		expect(new Set(seen).size).toBe(251);
		expect(page(1)).toMatchObject({ total: 251, archive: 'rides.zip' });
		expect(page(4).lines).toEqual([]);
		expect(fileAnswers(test.ledger, { page: 1, pageSize: 100 })).toMatchObject({ total: 252, archive: null });
		expect(fileAnswers(test.ledger, { archiveId: archiveId + 1, page: 1, pageSize: 10 }).archive).toBeNull();
	});

	it('can be of those that became no ride alone', () => {
		const test = freshLedger();
		const archiveId = withArchive(test, 10);
		test.ledger.database.exec("UPDATE import SET stage = 'receiving' WHERE file_name = '4.fit'");
		const { lines, total } = fileAnswers(test.ledger, {
			archiveId,
			onlyNotRead: true,
			page: 1,
			pageSize: 100
		});
		expect(total).toBe(9);
		expect(lines.map(({ fileName }) => fileName)).not.toContain('4.fit');
	});

	it('as a table holds one line a file, and no formula', () => {
		const test = freshLedger();
		withArchive(test, 2500);
		const csv = [...fileAnswersCsv(test.ledger, { onlyNotRead: true })];
		// in pieces, so that a long list is never held as one text
		expect(csv.length).toBeGreaterThan(3);
		const lines = csv.join('').split('\r\n').slice(0, -1);
		expect(lines[0]).toBe('file,folder,bytes,what_became_of_it,why,detail,ride,at_utc');
		expect(lines).toHaveLength(2502);
		expect(lines[1]).toMatch(/^alone\.fit,,5,refused,By itself\.,line 7,,2026-/);
		expect(lines.find((line) => line.includes('1+1'))).toMatch(/^"'=1\+1,""x""\.fit",/);
	});
});
