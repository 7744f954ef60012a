import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { serialize } from 'node:v8';
import { afterAll, describe, expect, it } from 'vitest';
import { OBSERVATION_FEATURES } from '$lib/slip/observationFeatures';
import { FOLDS } from '../bench/training/folds';
import { generatedTrials, trialsOfRide, weighed } from '../bench/training/generatedTrials';
import { CIRCUMFERENCE_M, putSlip, steadyRecords, toRide } from './steadyRide';

const folder = mkdtempSync(join(tmpdir(), 'slip-ledger-trials-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const SLIPS = Array.from({ length: 18 }, (_, k) => ({
	t0: 60 + 60 * k,
	t1: 61 + 60 * k,
	kind: 'slip',
	crankDeg: k % 3 === 0 ? 20 : 150
}));

function labelled() {
	const records = steadyRecords();
	for (const { t0, crankDeg } of SLIPS) putSlip(records, t0, crankDeg);
	const bike = { circumferenceM: CIRCUMFERENCE_M };
	return { name: 'made up', group: 'made up', ride: toRide(records), bike, km: 10, events: SLIPS };
}

describe('trialsOfRide', () => {
	it("tells of a ride's own slips which of them were found", () => {
		const { trials } = trialsOfRide(labelled(), true, 1);
		// the small ones are never reported
		expect(trials.map(({ crankDeg }) => crankDeg)).toEqual(Array(12).fill(150));
		expect(trials[0].features).toHaveLength(OBSERVATION_FEATURES.length);
		expect(trials.filter(({ found }) => found).length).toBeGreaterThan(9);
	});

	it('puts slips into a ride that has none', () => {
		const healthy = { ...labelled(), ride: toRide(steadyRecords()), events: [] };
		const { trials } = trialsOfRide(healthy, false, 1);
		expect(trials.length).toBeGreaterThan(20);
		expect(new Set(trials.map(({ found }) => found)).size).toBe(2);
	});
});

describe('weighed', () => {
	it('lets a ride of many slips weigh no more than one of a few', () => {
		const trial = { features: new Float64Array(1), crankDeg: 90, found: true };
		const sum = (count: number) =>
			weighed({ seed: 7, trials: Array(count).fill(trial) }, true).reduce(
				(all, { weight }) => all + weight,
				0
			);
		expect(sum(500)).toBeCloseTo(sum(8), 10);
		expect(sum(2)).toBeCloseTo(sum(8) / 4, 10);
		expect(sum(1)).toBeLessThan(1);
	});
});

describe('generatedTrials', () => {
	it('reads what was gathered before, each ride in one fold', async () => {
		const trial = { features: new Float64Array(1), crankDeg: 90, found: true };
		const rides = (seed: number) => serialize([{ seed, trials: [trial, trial] }]);
		writeFileSync(join(folder, 'trials-slipping'), rides(20_003));
		writeFileSync(join(folder, 'trials-healthy'), rides(30_001));
		const trials = await generatedTrials(folder);
		expect(trials.map(({ fold, labelled }) => [fold, labelled])).toEqual([
			[20_003 % FOLDS.length, true],
			[20_003 % FOLDS.length, true],
			[30_001 % FOLDS.length, false],
			[30_001 % FOLDS.length, false]
		]);
	});
});
