import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import type { ExposureAmount, RideExposure } from '$lib/slip/exposure';
import { ANALYSIS_VERSION } from '$lib/slip/analysisVersion';
import { rideView } from '$lib/server';
import { listDerivations, saveDerivation } from '$lib/server/queue/derivations';
import { analyseBytes } from '../../src/jobs/analysis/analyseBytes';
import { addRide, analysedFile, freshLedger, rowsOf, withHardware } from './testLedger';

const amount = (drivenM: number): ExposureAmount => ({
	drivenM,
	drivenS: drivenM / 8,
	observedM: drivenM / 2,
	observedS: drivenM / 16,
	drivenTurns: drivenM / 5,
	observedTurns: drivenM / 10,
	pickUps: 3,
	observedPickUps: 1
});
const exposure: RideExposure = {
	cells: [
		{ torqueFromNm: 8, torqueToNm: 12, gear: '46/17', ratio: 46 / 17, ...amount(1000) },
		{ torqueFromNm: 60, torqueToNm: null, gear: '46/17', ratio: 46 / 17, ...amount(20) },
		{ torqueFromNm: null, torqueToNm: null, gear: null, ratio: null, ...amount(50) }
	],
	hours: [
		{ hour: 0, ...amount(800) },
		{ hour: 2, ...amount(270) }
	],
	marks: [
		{ timeS: 70.5, observed: true },
		{ timeS: 90, observed: false }
	]
};

describe('the exposure of a ride', () => {
	it('is stored with its result: open and unknown torques stay what they are', async () => {
		const test = freshLedger();
		withHardware(test);
		await addRide(test, { exposure, recording: { speedFrom: 'position', rhythm: 'irregularly' } });
		expect(
			rowsOf(test.ledger, 'SELECT torque_from_nm, torque_to_nm, gear, driven_m, pick_ups FROM exposure_cell')
		).toEqual([
			{ torque_from_nm: 8, torque_to_nm: 12, gear: '46/17', driven_m: 1000, pick_ups: 3 },
			{ torque_from_nm: 60, torque_to_nm: null, gear: '46/17', driven_m: 20, pick_ups: 3 },
			{ torque_from_nm: null, torque_to_nm: null, gear: null, driven_m: 50, pick_ups: 3 }
		]);
		expect(rowsOf(test.ledger, 'SELECT hour, observed_turns FROM exposure_hour')).toEqual([
			{ hour: 0, observed_turns: 80 },
			{ hour: 2, observed_turns: 27 }
		]);
		expect(rowsOf(test.ledger, 'SELECT time_s, observed FROM rider_mark')).toEqual([
			{ time_s: 70.5, observed: 1 },
			{ time_s: 90, observed: 0 }
		]);
		expect(rowsOf(test.ledger, 'SELECT speed_from, rhythm FROM recording_kind')).toEqual([
			{ speed_from: 'position', rhythm: 'irregularly' }
		]);
	});

	it('adds up in the ledger to the distances of the result, for a real file', async () => {
		const name = '2026-06-30-w2-r3.fit';
		const path = fileURLToPath(new URL(`../../sample-rides/${name}`, import.meta.url));
		const file = await analyseBytes(new Uint8Array(readFileSync(path)), name);
		const test = freshLedger();
		withHardware(test);
		await addRide(test, file);
		for (const table of ['exposure_cell', 'exposure_hour']) {
			const [sums] = rowsOf(
				test.ledger,
				`SELECT sum(driven_m) AS drivenM, sum(observed_m) AS observedM FROM ${table}`
			);
			expect(sums.drivenM).toBeCloseTo(file.drivenM, 4);
			expect(sums.observedM).toBeCloseTo(file.observedM, 4);
		}
		expect(file.recording).toEqual({ speedFrom: 'wheel', rhythm: 'each second' });
	});

	it('comes with every analysis version and leaves that of another version alone', async () => {
		const test = freshLedger();
		withHardware(test);
		const rideId = await addRide(test, { exposure, analysisVersion: ANALYSIS_VERSION - 1 });
		const [derivation] = listDerivations(test.ledger);
		expect(derivation.rideId).toBe(rideId);
		saveDerivation(test.ledger, test.holder, derivation, analysedFile({ exposure }));
		expect(
			rowsOf(test.ledger, 'SELECT version, count(*) AS cells FROM exposure_cell GROUP BY version')
		).toEqual([
			{ version: ANALYSIS_VERSION - 1, cells: 3 },
			{ version: ANALYSIS_VERSION, cells: 3 }
		]);
	});

	it('is written with the whole ride or not at all', async () => {
		const test = freshLedger();
		withHardware(test);
		const twice = [exposure.hours[0], exposure.hours[0]];
		await expect(addRide(test, { exposure: { ...exposure, hours: twice } })).rejects.toThrow(/UNIQUE/);
		for (const table of ['ride', 'result', 'exposure_cell', 'exposure_hour', 'rider_mark'])
			expect(rowsOf(test.ledger, `SELECT 1 FROM ${table}`)).toEqual([]);
		expect(rideView(test.ledger, 1)).toBeNull();
	});
});
