import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { openLedger, readiness } from '$lib/server';
import { giveLeaseBack, keepLease } from '$lib/server/queue/lease';
import { freshLedger, storeSomething } from './testLedger';

const ALL_WELL = {
	ready: true,
	runner: true,
	ledgerWritable: true,
	storeWritable: true,
	diskSpace: true,
	queueMoves: true
};

describe('readiness', () => {
	it('is ready with a runner that lives, a ledger and a store that take writes, and room', () => {
		expect(readiness(freshLedger().ledger)).toEqual(ALL_WELL);
	});

	it('is not without a runner, or with one that shows no life', () => {
		const { ledger, holder, clock } = freshLedger();
		clock.ms += 31_000;
		expect(readiness(ledger)).toEqual({ ...ALL_WELL, ready: false, runner: false });
		keepLease(ledger, 'runner', holder);
		expect(readiness(ledger).ready).toBe(true);
		giveLeaseBack(ledger, 'runner', holder);
		expect(readiness(ledger)).toMatchObject({ ready: false, runner: false });
	});

	it('is not when what waits was not touched for longer than a file may take', async () => {
		const test = freshLedger();
		await storeSomething(test);
		expect(readiness(test.ledger).queueMoves).toBe(true);
		test.clock.ms += 11 * 60_000;
		keepLease(test.ledger, 'runner', test.holder);
		expect(readiness(test.ledger)).toEqual({ ...ALL_WELL, ready: false, queueMoves: false });
	});

	it('is not without its store', () => {
		const { ledger } = freshLedger();
		rmSync(join(ledger.folder, 'incoming'), { recursive: true });
		expect(readiness(ledger)).toEqual({ ...ALL_WELL, ready: false, storeWritable: false });
	});

	it('answers at once while another process writes, and changes nothing', () => {
		const { ledger } = freshLedger();
		const other = openLedger(ledger.folder, { migrate: false });
		other.database.exec('BEGIN IMMEDIATE');
		const startedMs = performance.now();
		expect(readiness(ledger)).toEqual(ALL_WELL);
		expect(performance.now() - startedMs).toBeLessThan(1000);
		other.database.exec('ROLLBACK');
		other.close();
		expect(ledger.database.pragma('busy_timeout', { simple: true })).toBe(10_000);
	});
});
