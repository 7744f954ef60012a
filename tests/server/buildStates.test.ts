import { describe, expect, it } from 'vitest';
import {
	buildHardware,
	createWheel,
	fitBuild,
	markReleased,
	overrideBenchCheck,
	putInTest,
	recordBenchCheck,
	takeBuildBackIn,
	withdrawBuild
} from '$lib/server';
import { rowsOf } from './testLedger';
import { at, PASSED, workshop } from './trialBuild';

describe('states of a build', () => {
	it('go from draft over a passed bench check into test, never without', () => {
		const { ledger, actor, buildId, state } = workshop();
		expect(() => putInTest(ledger, actor, buildId, true)).toThrow('only after a bench check');
		recordBenchCheck(ledger, actor, buildId, PASSED);
		expect(state()).toBe('bench-checked');
		expect(() => putInTest(ledger, actor, buildId, false)).toThrow('ends the test');
		putInTest(ledger, actor, buildId, true);
		expect(state()).toBe('in test');
	});

	it('go into test with a written override, which is no check', () => {
		const { ledger, actor, buildId, state } = workshop();
		expect(() => overrideBenchCheck(ledger, actor, buildId, 'because')).toThrow('ten characters');
		overrideBenchCheck(ledger, actor, buildId, 'as found: the rides are to show how it slips');
		expect(state()).toBe('draft');
		putInTest(ledger, actor, buildId, true);
		expect(buildHardware(ledger, buildId)).toMatchObject({
			state: 'in test',
			bench: 'override',
			benchChecks: [{ kind: 'override', by: 'P1', torqueHeld: null }]
		});
	});

	it('fall back to draft when a bench check is not passed, for each of its three reasons', () => {
		for (const failed of [{ torqueHeld: false }, { coastsFreely: false }, { noCreep: false }]) {
			const { ledger, actor, buildId, state } = workshop();
			recordBenchCheck(ledger, actor, buildId, { ...PASSED, at: at(900) });
			putInTest(ledger, actor, buildId, true);
			recordBenchCheck(ledger, actor, buildId, { ...PASSED, ...failed, at: at(901) });
			expect(state()).toBe('draft');
			expect(() => putInTest(ledger, actor, buildId, true)).toThrow('was not passed');
		}
	});

	it('are not moved by a check of an earlier day that is written down later', () => {
		const { ledger, actor, buildId, state } = workshop();
		recordBenchCheck(ledger, actor, buildId, { ...PASSED, at: at(900) });
		recordBenchCheck(ledger, actor, buildId, { ...PASSED, noCreep: false, at: at(800) });
		expect(state()).toBe('bench-checked');
	});

	it('fall back to draft when the hardware is changed: the check was of another hub', () => {
		const { ledger, actor, buildId, state, change, ringB } = workshop();
		recordBenchCheck(ledger, actor, buildId, PASSED);
		change({ notes: 'only words', torques: [{ joint: 'axle cap', wantedNm: 12, recordedNm: 12 }] });
		expect(state()).toBe('bench-checked');
		change({ bill: [{ partId: ringB, quantity: 1 }] });
		expect(buildHardware(ledger, buildId)).toMatchObject({
			state: 'draft',
			bench: null,
			benchChecks: [{ voidReason: 'the hardware was changed' }]
		});
	});

	it('are released by the release record alone, and then the build is closed', () => {
		const { ledger, actor, buildId, state, change } = workshop();
		expect(() => markReleased(ledger, actor, buildId, 'record 1')).toThrow('cannot become released');
		recordBenchCheck(ledger, actor, buildId, PASSED);
		putInTest(ledger, actor, buildId, true);
		markReleased(ledger, actor, buildId, 'record 1');
		expect(state()).toBe('released');
		expect(() => change({ stepHubDeg: 10 })).toThrow('because it is released');
	});

	it('end with a reason, and begin again as a draft without the old checks', () => {
		const { ledger, actor, buildId, state } = workshop();
		recordBenchCheck(ledger, actor, buildId, PASSED);
		expect(() => withdrawBuild(ledger, actor, buildId, ' ')).toThrow('reason');
		withdrawBuild(ledger, actor, buildId, 'the ring cracked on the bench');
		expect(state()).toBe('withdrawn');
		expect(() => withdrawBuild(ledger, actor, buildId, 'again')).toThrow('already');
		expect(() => putInTest(ledger, actor, buildId, true)).toThrow('cannot become');
		const wheelId = createWheel(ledger, actor, { name: 'Wheel A', hub: '' });
		expect(() => fitBuild(ledger, actor, { wheelId, buildId, from: at(0) })).toThrow('is withdrawn');
		fitBuild(ledger, actor, { wheelId, buildId, from: at(0), until: at(5) });
		takeBuildBackIn(ledger, actor, buildId, 'it was the other ring');
		expect(buildHardware(ledger, buildId)).toMatchObject({ state: 'draft', bench: null });
		expect(() => takeBuildBackIn(ledger, actor, buildId, 'again')).toThrow('not withdrawn');
	});

	it('refuse a bench check without a torque, with an absurd one, or in the future', () => {
		const { ledger, actor, buildId } = workshop();
		for (const wrong of [
			{ staticTorqueNm: null },
			{ staticTorqueNm: 0 },
			{ staticTorqueNm: 9000 },
			{ at: at(5000) }
		])
			expect(() => recordBenchCheck(ledger, actor, buildId, { ...PASSED, ...wrong })).toThrow(
				expect.objectContaining({ code: 'wrong-value' })
			);
		expect(rowsOf(ledger, 'SELECT 1 FROM bench_check')).toEqual([]);
	});
});
