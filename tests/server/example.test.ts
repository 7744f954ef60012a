import { existsSync, mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
	assignRide,
	createWheel,
	exampleState,
	findImport,
	installExample,
	ledgerIsEmpty,
	listPeople,
	listWheels,
	programmeRows,
	recordVerdict,
	removeExample,
	rideChannels,
	rideView,
	startEmpty
} from '$lib/server';
import { takeNextImport } from '$lib/server/queue/importQueue';
import { saveImport } from '$lib/server/queue/saveImport';
import {
	addRide,
	analysedFile,
	freshFolder,
	freshLedger,
	HOUR_MS,
	rowsOf,
	slipAt,
	START_MS,
	storeSomething,
	type TestLedger
} from './testLedger';

const programme = {
	workshop: { name: 'Example', timeZone: 'Europe/Lisbon' },
	riders: [{ code: 'R1', lapsMeanSlips: true }],
	wheels: [{ id: 'W1', name: 'Wheel 1', hub: 'a hub', circumferenceM: 2.2 }],
	builds: [
		{
			id: 'a',
			name: 'Original',
			description: 'as made',
			stepHubDeg: 15,
			parts: [{ part: 'ring', detail: '24' }]
		},
		{ id: 'b', name: 'Retrofit', description: 'new ring', stepHubDeg: 10 }
	],
	fittedPeriods: [
		{ wheel: 'W1', build: 'a', from: new Date(START_MS - HOUR_MS).toISOString(), until: null },
		{ wheel: 'W1', build: 'b', from: new Date(START_MS + 50 * HOUR_MS).toISOString(), until: null }
	],
	rides: [
		{ file: 'one.fit', wheel: 'W1', rider: 'R1', wet: true, trainer: false },
		{ file: 'two.fit', wheel: 'W1', rider: 'R1', wet: false, trainer: true },
		{ file: 'one-again.fit', wheel: 'W1', rider: 'R1', wet: true, trainer: false }
	]
};

beforeEach(() => {
	const folder = join(freshFolder(), 'sample');
	mkdirSync(folder);
	writeFileSync(join(folder, 'programme.json'), JSON.stringify(programme));
	writeFileSync(join(folder, 'one.fit'), 'bytes of one');
	writeFileSync(join(folder, 'one-again.fit'), 'bytes of one');
	writeFileSync(join(folder, 'two.fit'), 'bytes of two');
	process.env.SLIP_LEDGER_EXAMPLE = folder;
});
afterEach(() => {
	delete process.env.SLIP_LEDGER_EXAMPLE;
});

/** what the child process would have made of the queue */
function analyseAll({ ledger, holder }: TestLedger): void {
	for (let day = 0; ; day += 3) {
		const queued = takeNextImport(ledger, holder);
		if (!queued) return;
		const startedAtMs = START_MS + day * 24 * HOUR_MS;
		saveImport(ledger, holder, queued, analysedFile({ startedAtMs, events: [slipAt(100)] }));
	}
}

const TABLES = [
	'wheel',
	'build',
	'fitted_period',
	'ride',
	'result',
	'slip_event',
	'observed_stretch',
	'exposure_cell',
	'exposure_hour',
	'rider_mark',
	'recording_kind',
	'rider_mark_answer',
	'verdict',
	'import',
	'source'
];
const rowCounts = ({ ledger }: TestLedger) =>
	Object.fromEntries(TABLES.map((table) => [table, rowsOf(ledger, `SELECT 1 FROM ${table}`).length]));
const sourceFiles = ({ ledger }: TestLedger) =>
	readdirSync(join(ledger.folder, 'sources'), { recursive: true, withFileTypes: true }).filter((entry) =>
		entry.isFile()
	);

describe('the first start', () => {
	it('offers the example until somebody has chosen or put anything in', async () => {
		const test = freshLedger();
		expect(ledgerIsEmpty(test.ledger)).toBe(true);
		startEmpty(test.ledger, test.actor);
		expect(ledgerIsEmpty(test.ledger)).toBe(false);
		const other = freshLedger();
		await storeSomething(other);
		expect(ledgerIsEmpty(other.ledger)).toBe(false);
	});
});

describe('installExample', () => {
	it('sets up hardware and riders at once and queues the files', async () => {
		const test = freshLedger();
		await installExample(test.ledger, test.actor);
		expect(exampleState(test.ledger)).toEqual({ installed: true, ridesReady: 1, ridesTotal: 3 });
		expect(programmeRows(test.ledger)).toMatchObject([
			{ name: 'Original', description: 'as made Ring: 24.', example: true, state: 'in test' },
			{ name: 'Retrofit', example: true }
		]);
		expect(listPeople(test.ledger).map(({ code }) => code)).toEqual(['P1', 'R1']);
		analyseAll(test);
		expect(exampleState(test.ledger)).toEqual({ installed: true, ridesReady: 3, ridesTotal: 3 });
		expect(programmeRows(test.ledger)[0]).toMatchObject({ rides: 1, totalM: 30_000 });
		expect(rideView(test.ledger, 1)).toMatchObject({
			wet: true,
			rider: { code: 'R1' },
			wheel: { name: 'Wheel 1' },
			example: true
		});
		expect(rideView(test.ledger, 2)!.stateReason).toBe('ridden on an indoor trainer');
	});

	it('refuses to be installed twice', async () => {
		const test = freshLedger();
		await installExample(test.ledger, test.actor);
		const before = rowCounts(test);
		await expect(installExample(test.ledger, test.actor)).rejects.toMatchObject({ code: 'conflict' });
		expect(rowCounts(test)).toEqual(before);
	});

	it("gives way to the workshop's own names", async () => {
		const test = freshLedger();
		createWheel(test.ledger, test.actor, { name: 'wheel 1', hub: '' });
		await installExample(test.ledger, test.actor);
		expect(listWheels(test.ledger).map(({ name }) => name)).toEqual(['wheel 1', 'Wheel 1 (example)']);
	});
});

describe('removeExample', () => {
	it('takes everything of it out: rows, results, verdicts, traces and files', async () => {
		const test = freshLedger();
		await installExample(test.ledger, test.actor);
		analyseAll(test);
		const [event] = rideView(test.ledger, 1)!.eventList;
		recordVerdict(test.ledger, test.actor, event.id, { verdict: 'confirmed' });
		removeExample(test.ledger, test.actor);
		expect(Object.values(rowCounts(test))).toEqual(TABLES.map(() => 0));
		expect(sourceFiles(test)).toEqual([]);
		expect(rowsOf(test.ledger, 'SELECT code FROM person')).toEqual([{ code: 'P1' }]);
		expect(test.ledger.channels.prepare('SELECT 1 FROM channel_chunk').all()).toEqual([]);
		expect(ledgerIsEmpty(test.ledger)).toBe(false);
		expect(exampleState(test.ledger).installed).toBe(false);
		await installExample(test.ledger, test.actor);
		expect(exampleState(test.ledger).ridesTotal).toBe(3);
	});

	it('works while its files are still waiting or being analysed', async () => {
		const test = freshLedger();
		await installExample(test.ledger, test.actor);
		const queued = takeNextImport(test.ledger, test.holder)!;
		removeExample(test.ledger, test.actor);
		expect(saveImport(test.ledger, test.holder, queued, analysedFile())).toBeNull();
		expect(rowsOf(test.ledger, 'SELECT 1 FROM ride')).toEqual([]);
		expect(test.ledger.channels.prepare('SELECT 1 FROM channel').all()).toEqual([]);
	});

	it("keeps the workshop's own rides, which need an answer when they stood on the example", async () => {
		const test = freshLedger();
		await installExample(test.ledger, test.actor);
		analyseAll(test);
		const own = await addRide(test, { startedAtMs: START_MS + 20 * 24 * HOUR_MS });
		assignRide(test.ledger, test.actor, own, { wheelId: listWheels(test.ledger)[0].id });
		removeExample(test.ledger, test.actor);
		expect(rideView(test.ledger, own)).toMatchObject({ wheel: null, state: 'needs an answer' });
		expect(rideChannels(test.ledger, own)).not.toBeNull();
	});

	it('reads a file of the example again that the workshop handed in itself', async () => {
		const test = freshLedger();
		await installExample(test.ledger, test.actor);
		analyseAll(test);
		const own = await storeSomething(test, { content: 'bytes of one' });
		expect(findImport(test.ledger, own)?.stage).toBe('already in the ledger');
		removeExample(test.ledger, test.actor);
		expect(findImport(test.ledger, own)?.stage).toBe('waiting');
		expect(sourceFiles(test)).toHaveLength(1);
		analyseAll(test);
		expect(rowsOf(test.ledger, 'SELECT example FROM ride')).toEqual([{ example: 0 }]);
	});

	it('leaves in the trail that it was there and went', async () => {
		const test = freshLedger();
		await installExample(test.ledger, test.actor);
		removeExample(test.ledger, test.actor);
		const actions = rowsOf(test.ledger, "SELECT action FROM trail WHERE subject = 'example'");
		expect(actions).toEqual([{ action: 'installed' }, { action: 'removed' }]);
		expect(existsSync(test.ledger.folder)).toBe(true);
	});
});
