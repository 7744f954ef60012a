import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { findImport, openLedger, retryImport, rideChannels, rideView } from '$lib/server';
import {
	MOST_ATTEMPTS,
	putBack,
	refuseImport,
	requeueAbandoned,
	takeNextImport
} from '$lib/server/queue/importQueue';
import {
	giveLeaseBack,
	keepLease,
	newHolder,
	STALE_AFTER_MS,
	takeLease,
	type LeaseHolder
} from '$lib/server/queue/lease';
import { saveImport } from '$lib/server/queue/saveImport';
import { addRide, analysedFile, freshLedger, rowsOf, slipAt, storeSomething } from './testLedger';

describe('the runner lease', () => {
	it('is held by one at a time and may be handed back', () => {
		const { ledger, holder } = freshLedger();
		const other = newHolder();
		expect(takeLease(ledger, 'runner', other)).toBe(false);
		expect(takeLease(ledger, 'runner', holder)).toBe(true);
		giveLeaseBack(ledger, 'runner', holder);
		expect(takeLease(ledger, 'runner', other)).toBe(true);
		expect(keepLease(ledger, 'runner', holder)).toBe(false);
	});

	it('is taken over when its heartbeat is old, and the old holder learns of it', () => {
		const { ledger, holder, clock } = freshLedger();
		const other = newHolder();
		clock.ms += STALE_AFTER_MS - 1;
		expect(takeLease(ledger, 'runner', other)).toBe(false);
		clock.ms += 2;
		expect(takeLease(ledger, 'runner', other)).toBe(true);
		expect(keepLease(ledger, 'runner', holder)).toBe(false);
	});

	it('stays with a holder that shows its heartbeat', () => {
		const { ledger, holder, clock } = freshLedger();
		for (let i = 0; i < 5; i++) {
			clock.ms += STALE_AFTER_MS / 2;
			expect(keepLease(ledger, 'runner', holder)).toBe(true);
		}
		expect(takeLease(ledger, 'runner', newHolder())).toBe(false);
	});

	it('is taken over at once when the process that holds it is gone', async () => {
		const { ledger, holder } = freshLedger();
		giveLeaseBack(ledger, 'runner', holder);
		const child = spawn(process.execPath, ['-e', 'setTimeout(() => {}, 60000)']);
		const gone: LeaseHolder = { ...newHolder(), pid: child.pid!, processStarted: startOf(child.pid!) };
		takeLease(ledger, 'runner', gone);
		expect(takeLease(ledger, 'runner', holder)).toBe(false);
		child.kill('SIGKILL');
		await once(child, 'exit');
		expect(takeLease(ledger, 'runner', holder)).toBe(true);
	});

	it('is not kept by another process that got the same number later', () => {
		const { ledger, holder } = freshLedger();
		giveLeaseBack(ledger, 'runner', holder);
		takeLease(ledger, 'runner', { ...newHolder(), processStarted: '1' });
		expect(takeLease(ledger, 'runner', holder)).toBe(process.platform === 'linux');
	});

	it('of another machine counts as living as long as its heartbeat is young', () => {
		const { ledger, holder, clock } = freshLedger();
		giveLeaseBack(ledger, 'runner', holder);
		takeLease(ledger, 'runner', { ...newHolder(), machine: 'elsewhere', pid: 999_999_999 });
		expect(takeLease(ledger, 'runner', holder)).toBe(false);
		clock.ms += STALE_AFTER_MS + 1;
		expect(takeLease(ledger, 'runner', holder)).toBe(true);
	});
});

function giveUp({ ledger, holder }: ReturnType<typeof freshLedger>, importId: number): void {
	while (findImport(ledger, importId)?.stage !== 'failed') {
		expect(takeNextImport(ledger, newHolder())?.id).toBe(importId);
		requeueAbandoned(ledger, holder);
	}
}

function startOf(pid: number): string {
	if (process.platform !== 'linux') return '';
	const stat = readFileSync(`/proc/${pid}/stat`, 'latin1');
	return stat.slice(stat.lastIndexOf(')') + 2).split(' ')[19];
}

describe('the import queue', () => {
	it('gives out the oldest first, each once', async () => {
		const test = freshLedger();
		const ids = [await storeSomething(test), await storeSomething(test)];
		expect(takeNextImport(test.ledger, test.holder)?.id).toBe(ids[0]);
		expect(takeNextImport(test.ledger, test.holder)?.id).toBe(ids[1]);
		expect(takeNextImport(test.ledger, test.holder)).toBeNull();
	});

	it('does not give out a content while the same content is being read', async () => {
		const test = freshLedger();
		const first = await storeSomething(test, { content: 'the same ride' });
		giveUp(test, first);
		const second = await storeSomething(test, { content: 'the same ride' });
		retryImport(test.ledger, test.actor, first);
		const queued = takeNextImport(test.ledger, test.holder)!;
		expect(queued.id).toBe(first);
		expect(takeNextImport(test.ledger, test.holder)).toBeNull();
		saveImport(test.ledger, test.holder, queued, analysedFile());
		expect(findImport(test.ledger, second)?.stage).toBe('already in the ledger');
	});

	it('puts what a runner left behind back, and gives a file up that broke off too often', async () => {
		const test = freshLedger();
		const importId = await storeSomething(test);
		for (let attempt = 1; attempt <= MOST_ATTEMPTS; attempt++) {
			expect(findImport(test.ledger, importId)?.stage).toBe('waiting');
			takeNextImport(test.ledger, newHolder());
			requeueAbandoned(test.ledger, test.holder);
		}
		expect(findImport(test.ledger, importId)).toMatchObject({
			stage: 'failed',
			sentence: expect.stringContaining('broke off 3 times'),
			detail: expect.stringContaining('ended while it read')
		});
		retryImport(test.ledger, test.actor, importId);
		expect(takeNextImport(test.ledger, test.holder)?.attempts).toBe(1);
	});

	it('keeps the reason of a refusal, also for the same content handed in meanwhile', async () => {
		const test = freshLedger();
		const first = await storeSomething(test, { content: 'no ride' });
		const queued = takeNextImport(test.ledger, test.holder)!;
		const second = await storeSomething(test, { content: 'no ride' });
		refuseImport(test.ledger, queued, { code: 'no-speed', sentence: 'No speed.', detail: 'byte 3' });
		for (const id of [first, second])
			expect(findImport(test.ledger, id)).toMatchObject({
				stage: 'refused',
				sentence: 'No speed.',
				detail: 'byte 3'
			});
	});

	it('reads a refused content again when it is handed in again', async () => {
		const test = freshLedger();
		await storeSomething(test, { content: 'no ride' });
		const queued = takeNextImport(test.ledger, test.holder)!;
		refuseImport(test.ledger, queued, { code: 'no-speed', sentence: 'No speed.', detail: '' });
		const again = await storeSomething(test, { content: 'no ride' });
		expect(findImport(test.ledger, again)?.stage).toBe('waiting');
	});

	it('lets nobody but its runner say what became of a file', async () => {
		const test = freshLedger();
		const importId = await storeSomething(test);
		const lost = takeNextImport(test.ledger, newHolder())!;
		requeueAbandoned(test.ledger, test.holder);
		const mine = takeNextImport(test.ledger, test.holder)!;
		putBack(test.ledger, lost, 'too late');
		refuseImport(test.ledger, lost, { code: 'x', sentence: 'x', detail: 'x' });
		expect(findImport(test.ledger, importId)?.stage).toBe('analysing');
		expect(mine.id).toBe(importId);
	});
});

describe('saveImport', () => {
	it('makes ride, result, events, stretches and traces visible together', async () => {
		const test = freshLedger();
		const rideId = await addRide(test, { events: [slipAt(100)] });
		const ride = rideView(test.ledger, rideId)!;
		expect(ride.eventList).toHaveLength(1);
		expect(ride.observedStretches).toEqual([{ startS: 0, endS: 2400, startM: 0, endM: 20_000 }]);
		const traces = rideChannels(test.ledger, rideId)!;
		expect(traces.length).toBe(3601);
		expect(traces.channels.map(({ name }) => name)).toEqual(['cadenceRpm', 'speedMps']);
		expect(traces.channels[1].values[0]).toBeCloseTo(
			Math.round((8 + Math.sin((((ride.id && Date.parse(ride.startedAt)) / 1000) % 997) / 40)) * 1000) / 1000,
			5
		);
	});

	it('leaves nothing of a result that cannot be stored as a whole', async () => {
		const test = freshLedger();
		await storeSomething(test);
		const queued = takeNextImport(test.ledger, test.holder)!;
		const broken = analysedFile({ events: [slipAt(1), slipAt(2, { strength: NaN })] });
		expect(() => saveImport(test.ledger, test.holder, queued, broken)).toThrow('strength');
		for (const table of ['ride', 'result', 'slip_event', 'observed_stretch'])
			expect(rowsOf(test.ledger, `SELECT 1 FROM ${table}`)).toEqual([]);
		expect(findImport(test.ledger, queued.id)?.stage).toBe('analysing');
	});

	it('writes nothing for a runner that has lost its lease meanwhile', async () => {
		const test = freshLedger();
		await storeSomething(test);
		const queued = takeNextImport(test.ledger, test.holder)!;
		test.clock.ms += STALE_AFTER_MS + 1;
		const other = newHolder();
		takeLease(test.ledger, 'runner', other);
		requeueAbandoned(test.ledger, other);
		expect(saveImport(test.ledger, test.holder, queued, analysedFile())).toBeNull();
		expect(rowsOf(test.ledger, 'SELECT 1 FROM ride')).toEqual([]);
		const taken = takeNextImport(test.ledger, other)!;
		expect(saveImport(test.ledger, other, taken, analysedFile())).not.toBeNull();
		expect(rowsOf(test.ledger, 'SELECT 1 FROM ride')).toHaveLength(1);
	});

	it('overwrites traces that an attempt left which broke off before the ledger knew the ride', async () => {
		const test = freshLedger();
		await storeSomething(test);
		const queued = takeNextImport(test.ledger, test.holder)!;
		const broken = analysedFile({ events: [slipAt(2, { strength: NaN })] });
		expect(() => saveImport(test.ledger, test.holder, queued, broken)).toThrow();
		const rideId = saveImport(test.ledger, test.holder, queued, analysedFile());
		expect(rideChannels(test.ledger, rideId!)?.channels).toHaveLength(2);
	});

	it('gives the ride to imports of the same content that came meanwhile', async () => {
		const test = freshLedger();
		await storeSomething(test, { content: 'a ride' });
		const queued = takeNextImport(test.ledger, test.holder)!;
		const second = await storeSomething(test, { content: 'a ride' });
		const rideId = saveImport(test.ledger, test.holder, queued, analysedFile());
		expect(findImport(test.ledger, second)).toMatchObject({ stage: 'already in the ledger', rideId });
		const third = await storeSomething(test, { content: 'a ride' });
		expect(findImport(test.ledger, third)).toMatchObject({ stage: 'already in the ledger', rideId });
		expect(rowsOf(test.ledger, 'SELECT 1 FROM ride')).toHaveLength(1);
	});

	it('settles other imports of the same content that wait or have failed', async () => {
		const test = freshLedger();
		const ids = [
			await storeSomething(test, { content: 'a ride' }),
			await storeSomething(test, { content: 'a ride' })
		];
		test.ledger.database.exec("UPDATE import SET stage = 'failed' WHERE id = 1");
		const third = await storeSomething(test, { content: 'a ride' });
		test.ledger.database.exec("UPDATE import SET stage = 'waiting' WHERE id = 2");
		const queued = takeNextImport(test.ledger, test.holder)!;
		const rideId = saveImport(test.ledger, test.holder, queued, analysedFile());
		const stages = [...ids, third].map((id) => findImport(test.ledger, id));
		expect(stages.filter((known) => known?.stage === 'done')).toHaveLength(1);
		expect(stages.filter((known) => known?.stage === 'already in the ledger')).toHaveLength(2);
		expect(stages.every((known) => known?.rideId === rideId)).toBe(true);
	});

	it('is seen by another process that has the ledger open', async () => {
		const test = freshLedger();
		const other = openLedger(test.ledger.folder, { migrate: false });
		const rideId = await addRide(test);
		expect(rideView(other, rideId)?.totalM).toBe(30_000);
		other.close();
	});
});
