import { existsSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { ImportRunner, updateWheel, wheelView } from '$lib/server';
import { bikeFacts } from '$lib/server/queue/bikeFacts';
import { giveLeaseBack } from '$lib/server/queue/lease';
import { addRide, analysedFile, freshLedger, rowsOf, withHardware } from './testLedger';

const runners: ImportRunner[] = [];
afterEach(async () => {
	for (const runner of runners.splice(0)) await runner.stop();
});

/** A child process that answers at once, or waits while a file is there; it echoes what it is told of the bike. */
function fakeChild(folder: string): { entry: string; hold: string } {
	const { channels, signature, ...plain } = analysedFile();
	const hold = join(folder, 'hold');
	const entry = join(folder, 'child.cjs');
	writeFileSync(
		entry,
		`const { existsSync } = require('node:fs');
		const plain = ${JSON.stringify({ ...plain, channels: channels.map((channel) => ({ ...channel, chunks: [] })) })};
		plain.signature = new Uint8Array(${signature.length});
		process.on('disconnect', () => process.exit(0));
		process.on('message', function answer(request) {
			if (existsSync(${JSON.stringify(hold)})) return setTimeout(answer, 10, request);
			const { requestId, kind, bike, seed } = request;
			if (kind === 'analyse')
				process.send({ requestId, kind: 'analysed', file: { ...plain, detail: { ...plain.detail, bike } } });
			else process.send({ requestId, kind: 'inserted', result: { analysisVersion: plain.analysisVersion, seed,
				passes: 1, put: 0, found: 0, observedChangeM: 0, notRun: 'a test', tallies: [], probes: [] } });
		});`
	);
	return { entry, hold };
}

async function until(look: () => boolean): Promise<void> {
	for (let k = 0; k < 500 && !look(); k++) await new Promise((resolve) => setTimeout(resolve, 20));
	expect(look()).toBe(true);
}

describe('the runner', () => {
	it('computes a ride once more whose bike changed while a child worked on it and another one had time', async () => {
		const test = freshLedger();
		const { ledger, holder, actor } = test;
		const { wheelId } = withHardware(test);
		await addRide(test, {}, { wheelId });
		giveLeaseBack(ledger, 'runner', holder);
		const { entry, hold } = fakeChild(ledger.folder);
		const state = (circumferenceM: number) => {
			const { name, hub, facts } = wheelView(ledger, wheelId)!;
			updateWheel(ledger, actor, wheelId, { name, hub, circumferenceM }, facts.rowVersion);
		};
		const facts = () => rowsOf(ledger, 'SELECT bike_facts FROM result')[0].bike_facts;
		writeFileSync(hold, '');
		state(2.2);
		const runner = new ImportRunner(ledger, { entry, children: 2, lookEveryMs: 10 });
		runners.push(runner);
		runner.start();
		await until(() => rowsOf(ledger, 'SELECT 1 FROM derivation').length === 1);
		state(2.1);
		// the second child looks for work meanwhile and must not take the same ride
		await new Promise((resolve) => setTimeout(resolve, 100));
		expect(rowsOf(ledger, 'SELECT attempts FROM derivation')).toEqual([{ attempts: 1 }]);
		rmSync(hold);
		await until(() => facts() === bikeFacts({ circumferenceM: 2.1 }));
		await until(() => rowsOf(ledger, 'SELECT 1 FROM insertion_test').length === 1);
		expect(rowsOf(ledger, 'SELECT 1 FROM derivation')).toEqual([]);
	});

	it('stops also where its ledger cannot be written any more: whoever comes next takes over', async () => {
		const test = freshLedger();
		const { ledger, holder } = test;
		giveLeaseBack(ledger, 'runner', holder);
		const runner = new ImportRunner(ledger, { entry: fakeChild(ledger.folder).entry, lookEveryMs: 10 });
		runner.start();
		await until(() => runner.holding);
		ledger.database.pragma('query_only = ON');
		await runner.stop();
		expect(runner.holding).toBe(false);
		ledger.database.pragma('query_only = OFF');
		expect(rowsOf(ledger, 'SELECT 1 FROM lease')).toHaveLength(1);
	});

	it('does not count attempts that its own stop broke off', async () => {
		const test = freshLedger();
		const { ledger, holder } = test;
		await addRide(test);
		giveLeaseBack(ledger, 'runner', holder);
		const { entry, hold } = fakeChild(ledger.folder);
		writeFileSync(hold, '');
		for (let stop = 0; stop < 5; stop++) {
			const runner = new ImportRunner(ledger, { entry, children: 1, lookEveryMs: 10 });
			runner.start();
			await until(() => rowsOf(ledger, 'SELECT 1 FROM insertion_attempt WHERE attempts = 1').length === 1);
			await runner.stop();
			expect(rowsOf(ledger, 'SELECT attempts FROM insertion_attempt')).toEqual([{ attempts: 0 }]);
		}
		expect(existsSync(hold)).toBe(true);
	});
});
