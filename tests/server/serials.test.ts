import { describe, expect, it } from 'vitest';
import {
	buildContents,
	createBuild,
	correctFittedPeriod,
	createWheel,
	endFittedPeriod,
	fitBuild,
	partView,
	withdrawFittedPeriod
} from '$lib/server';
import { HOUR_MS, rowsOf, START_MS } from './testLedger';
import { at, workshop } from './trialBuild';

describe('a piece with a serial', () => {
	it('is not written into a build that was on a wheel while another hub held it', () => {
		const test = workshop();
		const { ledger, actor, buildId, change, ringA } = test;
		const [first, second] = ['A', 'B'].map((name) => createWheel(ledger, actor, { name, hub: '' }));
		const other = createBuild(ledger, actor, { name: 'Other', description: '' });
		fitBuild(ledger, actor, { wheelId: first, buildId, from: at(0), until: at(5) });
		fitBuild(ledger, actor, { wheelId: second, buildId: other, from: at(4) });
		const bill = [{ partId: ringA, quantity: 1, serial: '7' }];
		expect(() => change({ bill }, other)).toThrow(
			/^RR-24 with serial 7 is in the build "Trial" as well, which was on A from .+ one piece cannot/
		);
		expect(buildContents(ledger, other)!.bill).toEqual([]);
	});

	it('is not fitted, nor brought by a corrected or withdrawn period, into two hubs at once', () => {
		const { ledger, actor, buildId, change, ringA } = workshop();
		const [first, second] = ['A', 'B'].map((name) => createWheel(ledger, actor, { name, hub: '' }));
		const other = createBuild(ledger, actor, { name: 'Other', description: '' });
		const third = createBuild(ledger, actor, { name: 'Third', description: '' });
		change({ bill: [{ partId: ringA, quantity: 1, serial: '7' }] }, other);
		const clash = expect.objectContaining({ code: 'conflict' });
		fitBuild(ledger, actor, { wheelId: first, buildId, from: at(0) });
		const before = rowsOf(ledger, 'SELECT * FROM fitted_period');
		expect(() => fitBuild(ledger, actor, { wheelId: second, buildId: other, from: at(4) })).toThrow(clash);
		// one build with a serial on two wheels is the same piece twice
		expect(() => fitBuild(ledger, actor, { wheelId: second, buildId, from: at(4) })).toThrow(clash);
		expect(rowsOf(ledger, 'SELECT * FROM fitted_period')).toEqual(before);

		const after = fitBuild(ledger, actor, { wheelId: first, buildId: third, from: at(5) });
		const moved = fitBuild(ledger, actor, { wheelId: second, buildId: other, from: at(6) });
		expect(() => correctFittedPeriod(ledger, actor, moved, { from: at(4) })).toThrow(clash);
		expect(() => withdrawFittedPeriod(ledger, actor, after, 'it was not fitted')).toThrow(clash);
		expect(rowsOf(ledger, `SELECT from_ms FROM fitted_period WHERE id = ${moved}`)).toEqual([
			{ from_ms: START_MS + 6 * HOUR_MS }
		]);
	});

	it('is free again once its hub was taken apart', () => {
		const { ledger, actor, buildId, change, ringA } = workshop();
		const [first, second] = ['A', 'B'].map((name) => createWheel(ledger, actor, { name, hub: '' }));
		const other = createBuild(ledger, actor, { name: 'Other', description: '' });
		const period = fitBuild(ledger, actor, { wheelId: first, buildId, from: at(0) });
		endFittedPeriod(ledger, actor, period, at(4));
		fitBuild(ledger, actor, { wheelId: second, buildId: other, from: at(4) });
		change({ bill: [{ partId: ringA, quantity: 1, serial: '7' }] }, other);
		expect(partView(ledger, ringA)!.uses.map(({ build, serial }) => [build.name, serial])).toEqual([
			['Trial', '7'],
			['Other', '7']
		]);
	});
});
