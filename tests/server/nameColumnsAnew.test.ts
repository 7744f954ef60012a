import { describe, expect, it } from 'vitest';
import {
	correctRideClock,
	findImport,
	forgetColumns,
	historyOf,
	nameColumns,
	nameColumnsAnew,
	recordVerdict,
	rememberedAnswers,
	rideColumns,
	rideStages,
	rideView
} from '$lib/server';
import type { ColumnMapping } from '$lib/ride/columnMapping';
import { askForColumns } from '$lib/server/columns/askForColumns';
import { sourceColumns } from '$lib/server/columns/sourceColumns';
import { listDerivations, saveDerivation } from '$lib/server/queue/derivations';
import { takeNextImport } from '$lib/server/queue/importQueue';
import { nextInsertion } from '$lib/server/queue/insertionQueue';
import { saveImport } from '$lib/server/queue/saveImport';
import type { AnalysedFile } from '../../src/jobs/analysis/messages';
import {
	analysedFile,
	freshLedger,
	rowsOf,
	slipAt,
	START_MS,
	storeSomething,
	type TestLedger
} from './testLedger';

const WRONG: ColumnMapping = {
	time: { column: 0, unit: 's' },
	crank: { column: 2, as: 'rpm' },
	wheel: { column: 1, as: 'rpm' },
	load: null
};
const RIGHT: ColumnMapping = {
	...WRONG,
	crank: { column: 1, as: 'rpm' },
	wheel: { column: 2, as: 'rpm' }
};
const REFUSAL = { code: 'columns-not-known', sentence: 'Say which is what.', detail: 'columns' };
const table = (from: number, names = 't,a,b') =>
	`${names}\n${Array.from({ length: 30 }, (_, i) => `${from + i},80,240\n`).join('')}`;
const readBy = (columns: ColumnMapping, change: Partial<AnalysedFile> = {}) =>
	analysedFile({
		format: 'logger-csv',
		detail: { gears: [], warnings: [], sensors: [], marksS: [], gaps: [], pauses: [], columns },
		...change
	});

/** A ride of a table that was read by the wrong answer. */
async function misread(test: TestLedger, from = 0, change: Partial<AnalysedFile> = {}): Promise<number> {
	const { ledger, actor, holder } = test;
	const importId = await storeSomething(test, { name: 'table.csv', content: table(from) });
	askForColumns(ledger, takeNextImport(ledger, holder)!, REFUSAL);
	if (findImport(ledger, importId)?.stage === 'asks') nameColumns(ledger, actor, importId, WRONG);
	const queued = takeNextImport(ledger, holder)!;
	return saveImport(
		ledger,
		holder,
		queued,
		readBy(WRONG, { startedAtMs: START_MS + from * 1e6, ...change })
	)!;
}

describe('a ride that was read by wrong columns', () => {
	it('is read anew by the corrected ones; the old answer and what it found stay in the history', async () => {
		const test = freshLedger();
		const { ledger, actor } = test;
		const rideId = await misread(test, 0, { events: [slipAt(100)] });
		expect(listDerivations(ledger)).toEqual([]);
		expect(rideColumns(ledger, rideId)).toMatchObject({ mapping: WRONG, head: { names: ['t', 'a', 'b'] } });
		expect(nameColumnsAnew(ledger, actor, rideId, RIGHT)).toBe(1);
		expect(rideStages(ledger, rideId)?.again).toEqual({ state: 'queued' });
		// until it is read it stands as it was
		expect(rideView(ledger, rideId)?.eventList).toHaveLength(1);
		const [derivation] = listDerivations(ledger);
		expect(derivation).toMatchObject({ rideId, columns: RIGHT });
		saveDerivation(ledger, test.holder, derivation, readBy(RIGHT, { observedM: 11_000 }));
		expect(rideView(ledger, rideId)).toMatchObject({ eventList: [], observedM: 11_000 });
		expect(rideStages(ledger, rideId)?.again).toBeNull();
		expect(listDerivations(ledger)).toEqual([]);
		// slips are put into it as it is read now
		expect(nextInsertion(ledger, [])).toMatchObject({ rideId, columns: RIGHT });
		const [told] = historyOf(ledger, 'ride', rideId);
		expect(told.action).toBe('named the columns anew of');
		expect(JSON.stringify(told)).toMatch(/events before.*"1"/);
		expect(rememberedAnswers(ledger)).toMatchObject([{ mapping: RIGHT, rides: 1, newestRideId: rideId }]);
	});

	it('keeps verdicts on events that are the same, and asks again about those that are others', async () => {
		const test = freshLedger();
		const { ledger, actor, clock } = test;
		const events = [slipAt(100), slipAt(500), slipAt(900)];
		const rideId = await misread(test, 0, { events });
		for (const { id } of rideView(ledger, rideId)!.eventList)
			recordVerdict(ledger, actor, id, { verdict: 'confirmed' });
		nameColumnsAnew(ledger, actor, rideId, RIGHT);
		clock.ms += 1000;
		const twice = { overrunCrankDeg: { value: 240, lower: 200, upper: 280 } };
		const found = [slipAt(101), slipAt(500, twice)];
		saveDerivation(ledger, test.holder, listDerivations(ledger)[0], readBy(RIGHT, { events: found }));
		expect(rideView(ledger, rideId)!.eventList).toMatchObject([
			{ startS: 101, verdict: { verdict: 'confirmed' } },
			{ startS: 500, verdict: null }
		]);
		// nothing is lost: set aside, with what was judged
		expect(
			rowsOf(ledger, 'SELECT overrun_crank_deg AS deg, superseded_ms IS NULL AS stands FROM verdict')
		).toEqual([
			{ deg: 120, stands: 1 },
			{ deg: 120, stands: 0 },
			{ deg: 120, stands: 0 }
		]);
		expect(historyOf(ledger, 'ride', rideId)[0]).toMatchObject({ action: 'set verdicts aside on' });
	});

	it('takes start and length of the new reading, but a start that a person stated stays', async () => {
		const test = freshLedger();
		const { ledger, actor } = test;
		const rideId = await misread(test);
		const stated = await misread(test, 500);
		correctRideClock(ledger, actor, stated, new Date(START_MS + 1000).toISOString());
		for (const id of [rideId, stated]) nameColumnsAnew(ledger, actor, id, RIGHT);
		for (const derivation of listDerivations(ledger))
			saveDerivation(
				ledger,
				test.holder,
				derivation,
				readBy(RIGHT, { startedAtMs: START_MS + 9e6 + derivation.rideId, durationS: 60 })
			);
		expect(
			rowsOf(
				ledger,
				'SELECT started_ms AS startMs, recorded_start_ms AS recordedMs, duration_s AS s FROM ride ORDER BY id'
			)
		).toEqual([
			{ startMs: START_MS + 9e6 + rideId, recordedMs: null, s: 60 },
			{ startMs: START_MS + 1000, recordedMs: START_MS + 9e6 + stated, s: 60 }
		]);
	});

	it('takes others along that were read by the same answer, when asked to', async () => {
		const test = freshLedger();
		const { ledger, actor } = test;
		const [first, second, third] = [await misread(test), await misread(test, 500), await misread(test, 900)];
		expect(nameColumnsAnew(ledger, actor, third, { ...RIGHT, time: { column: 0, unit: 'ms' } })).toBe(1);
		expect(nameColumnsAnew(ledger, actor, first, RIGHT, true)).toBe(2);
		expect(listDerivations(ledger).map(({ rideId, columns }) => [rideId, columns?.time.unit])).toEqual([
			[first, 's'],
			[second, 's'],
			[third, 'ms']
		]);
	});

	it('is not touched by an answer that does not fit or changes nothing, nor one that needs no columns or is split', async () => {
		const test = freshLedger();
		const { ledger, actor } = test;
		const rideId = await misread(test);
		const misfit = { ...RIGHT, wheel: { column: 9, as: 'rpm' as const } };
		expect(() => nameColumnsAnew(ledger, actor, rideId, misfit)).toThrow('in which column');
		expect(() => nameColumnsAnew(ledger, actor, rideId, WRONG)).toThrow('nothing would change');
		expect(() => nameColumnsAnew(ledger, actor, rideId + 1, RIGHT)).toThrow('not read by columns');
		ledger.database.prepare('INSERT INTO ride_cut VALUES (?, ?, 1, 0)').run(rideId, START_MS + 1000);
		expect(() => nameColumnsAnew(ledger, actor, rideId, RIGHT)).toThrow('split');
		expect(listDerivations(ledger)).toEqual([]);
	});

	it('that an older program read is told of its old columns before it is read by others', async () => {
		const test = freshLedger();
		const { ledger, actor } = test;
		const rideId = await misread(test, 0, {
			events: [slipAt(100)],
			detail: { gears: [], warnings: [], sensors: [], marksS: [], gaps: [], pauses: [] }
		});
		recordVerdict(ledger, actor, rideView(ledger, rideId)!.eventList[0].id, { verdict: 'confirmed' });
		nameColumnsAnew(ledger, actor, rideId, RIGHT);
		saveDerivation(ledger, test.holder, listDerivations(ledger)[0], readBy(RIGHT));
		expect(rowsOf(ledger, 'SELECT 1 FROM verdict WHERE superseded_ms IS NULL')).toEqual([]);
	});
});

describe('an answer that is forgotten', () => {
	it('changes no ride; the next file with its header asks', async () => {
		const test = freshLedger();
		const { ledger, actor, holder } = test;
		const rideId = await misread(test);
		const [{ header, names }] = rememberedAnswers(ledger);
		expect(names).toEqual(['t', 'a', 'b']);
		forgetColumns(ledger, actor, header);
		expect(rememberedAnswers(ledger)).toEqual([]);
		expect(listDerivations(ledger)).toEqual([]);
		const { sha256 } = rideColumns(ledger, rideId)!;
		expect(sourceColumns(ledger.database, sha256)).toEqual(WRONG);
		const later = await storeSomething(test, { content: table(900) });
		askForColumns(ledger, takeNextImport(ledger, holder)!, REFUSAL);
		expect(findImport(ledger, later)?.stage).toBe('asks');
		expect(() => forgetColumns(ledger, actor, header)).toThrow('forgotten already');
	});
});
