import { describe, expect, it } from 'vitest';
import { answerRides, installExample, removeExample, SURFACES } from '$lib/server';
import { exampleAnswers } from '$lib/server/example/exampleAnswers';
import { readProgramme } from '$lib/server/example/programmeFile';
import { takeNextImport } from '$lib/server/queue/importQueue';
import { saveImport } from '$lib/server/queue/saveImport';
import { analysedFile, freshLedger, rowsOf } from './testLedger';

describe('exampleAnswers', () => {
	it('speaks of rides of the programme in words that the ledger takes, and leaves some to answer', () => {
		const { folder, programme } = readProgramme();
		const said = exampleAnswers(folder);
		const files = programme.rides.map(({ file }) => file);
		expect([...said.keys()].filter((file) => !files.includes(file))).toEqual([]);
		for (const { surface } of said.values()) expect(SURFACES).toContain(surface);
		const outdoors = programme.rides.filter(({ trainer }) => !trainer).length;
		expect(said.size).toBeGreaterThan(outdoors / 2);
		expect(said.size).toBeLessThan(outdoors);
	});

	it('has none for an example that came without them', () => {
		expect(exampleAnswers('/nowhere').size).toBe(0);
	});
});

describe('installExample', () => {
	it('gives rides what their riders said, and removeExample takes given answers out too', async () => {
		const test = freshLedger();
		await installExample(test.ledger, test.actor);
		const queued = takeNextImport(test.ledger, test.holder)!;
		const rideId = saveImport(test.ledger, test.holder, queued, analysedFile())!;
		expect(rowsOf(test.ledger, 'SELECT file_name, surface, load_kg FROM ride')).toEqual([
			{ file_name: '2026-04-22-w1-r1.fit', surface: 'mixed', load_kg: null }
		]);
		test.ledger.database.prepare('UPDATE ride SET surface = NULL').run();
		answerRides(test.ledger, test.actor, 'surface', [{ rideId, value: 'tarmac' }]);
		test.ledger.database.prepare('INSERT INTO ride_cut VALUES (?, 1, 1, 1)').run(rideId);
		removeExample(test.ledger, test.actor);
		for (const table of ['ride', 'ride_cut', 'ride_part', 'answer_batch_change'])
			expect(rowsOf(test.ledger, `SELECT * FROM ${table}`)).toEqual([]);
	}, 30_000);
});
