import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { driveSignals } from '$lib/drivetrain/driveSignals';
import { secondGrid } from '$lib/drivetrain/secondGrid';
import { decodeRide } from '$lib/ride/decodeRide';
import { analyseRide } from '$lib/slip/analyseRide';
import type { RideAnalysis } from '$lib/slip/analysis';
import type { ExposureAmount } from '$lib/slip/exposure';
import { hubTorqueBin, HUB_TORQUE_EDGES_NM } from '$lib/slip/hubTorqueBins';
import { markExposures } from '$lib/slip/markExposures';
import { onsetTorque } from '$lib/slip/onsetTorques';
import { rideContext } from '$lib/slip/rideContext';
import { CIRCUMFERENCE_M, gearAt, putSlip, steadyRecords, toRide } from './steadyRide';

const BIKE = { circumferenceM: CIRCUMFERENCE_M };
const sum = (rows: readonly ExposureAmount[], name: keyof ExposureAmount) =>
	rows.reduce((total, row) => total + row[name], 0);
const sample = async (name: string) => {
	const path = fileURLToPath(new URL(`../../sample-rides/${name}`, import.meta.url));
	return decodeRide(new Uint8Array(readFileSync(path)), name);
};

/** Cells and hours each hold the whole ride, no metre twice. */
function expectToAddUp({ exposure, observedM, drivenM, observed }: RideAnalysis): void {
	for (const rows of [exposure.cells, exposure.hours]) {
		expect(sum(rows, 'drivenM')).toBeCloseTo(drivenM, 4);
		expect(sum(rows, 'observedM')).toBeCloseTo(observedM, 4);
		expect(sum(rows, 'observedS')).toBe(observed.reduce((s, { startS, endS }) => s + endS - startS, 0));
	}
	for (const name of ['drivenS', 'drivenTurns', 'observedTurns', 'pickUps', 'observedPickUps'] as const)
		expect(sum(exposure.cells, name)).toBeCloseTo(sum(exposure.hours, name), 6);
	for (const row of [...exposure.cells, ...exposure.hours]) {
		expect(row.observedTurns).toBeLessThanOrEqual(row.drivenTurns + 1e-9);
		expect(row.observedPickUps).toBeLessThanOrEqual(row.pickUps);
	}
	const places = exposure.cells.map(({ torqueFromNm, ratio }) => `${torqueFromNm} ${ratio}`);
	expect(new Set(places).size).toBe(places.length);
}

describe('rideExposure', () => {
	it('adds up to the driven and observed distance of a made-up ride with rests and slips', () => {
		for (const seed of [1, 2, 3]) {
			const records = steadyRecords(seed);
			for (const at of [200, 460, 800])
				for (let t = at; t < at + 20; t++) records.watts[t] = records.rpm[t] = 0;
			for (let t = 900; t < 930; t++) records.rpm[t] = records.watts[t] = records.mps[t] = 0;
			putSlip(records, 600, 150);
			expectToAddUp(analyseRide(toRide(records), BIKE));
		}
	});

	it('adds up to the driven and observed distance of two rides of the example workshop', async () => {
		for (const name of ['2026-06-30-w2-r3.fit', '2026-07-12-w1-r1.fit']) {
			const analysis = analyseRide(await sample(name));
			expect(analysis.observedM).toBeGreaterThan(1000);
			expectToAddUp(analysis);
		}
	});

	it('files 200 W at 85 rpm in 46/17 with the other seconds at 8.1 Nm, in that gear', () => {
		const { exposure } = analyseRide(toRide(steadyRecords()), BIKE);
		const inGear = exposure.cells.filter(({ ratio }) => ratio && Math.abs(ratio - 46 / gearAt(600)) < 0.03);
		const there = inGear.filter(({ torqueFromNm }) => torqueFromNm === 8 || torqueFromNm === 4);
		expect(sum(inGear, 'drivenS')).toBeGreaterThan(230);
		// 8.1 Nm lies beside the edge of 8 Nm, so both bins have some
		expect(sum(there, 'drivenS') / sum(inGear, 'drivenS')).toBeGreaterThan(0.98);
	});

	it('files a slip and the second in which it began at the same torque', () => {
		const records = steadyRecords();
		putSlip(records, 600, 150);
		const ride = toRide(records);
		const [event] = analyseRide(ride, BIKE).events;
		const context = rideContext(driveSignals(secondGrid(ride, CIRCUMFERENCE_M)), BIKE);
		expect(onsetTorque(context, event.startS, 'crank')).toBe(event.hubTorqueNm!.value);
		// power measured at the hub has no chain losses before it: 3 % more
		expect(onsetTorque(context, event.startS, 'hub')).toBeCloseTo(event.hubTorqueNm!.value / 0.97, 9);
	});

	it('counts the turns of the crank under drive: 20 min at 85 rpm are 1700', () => {
		const { exposure } = analyseRide(toRide(steadyRecords()), BIKE);
		expect(Math.abs(sum(exposure.cells, 'drivenTurns') - 1700)).toBeLessThan(25);
	});

	it('counts one pick-up for each rest, and files what follows it as not known, never as a low torque', () => {
		const records = steadyRecords();
		const rests = [200, 460, 800];
		for (const at of rests) for (let t = at; t < at + 20; t++) records.watts[t] = records.rpm[t] = 0;
		const { exposure } = analyseRide(toRide(records), BIKE);
		const unknown = exposure.cells.filter(({ torqueFromNm }) => torqueFromNm === null);
		expect(sum(exposure.cells, 'pickUps')).toBe(rests.length);
		expect(sum(unknown, 'pickUps')).toBe(rests.length);
		expect(sum(unknown, 'drivenS')).toBeGreaterThanOrEqual(rests.length);
	});

	it('counts no pick-up after missing records: what was before is not known', () => {
		const records = steadyRecords();
		for (let t = 500; t < 530; t++) records.rpm[t] = NaN;
		expect(sum(analyseRide(toRide(records), BIKE).exposure.cells, 'pickUps')).toBe(0);
	});

	it('knows no torque of a ride without power, and still its distance', () => {
		const records = steadyRecords();
		records.watts.fill(NaN);
		const analysis = analyseRide(toRide(records), BIKE);
		expect(analysis.drivenM).toBeGreaterThan(5000);
		expect(analysis.exposure.cells.map(({ torqueFromNm }) => torqueFromNm)).toEqual(
			analysis.exposure.cells.map(() => null)
		);
		expectToAddUp(analysis);
	});

	it('splits a ride by the hours of its clock', () => {
		const { exposure } = analyseRide(toRide(steadyRecords(1, 4000)), BIKE);
		expect(exposure.hours.map(({ hour }) => hour)).toEqual([0, 1]);
		expect(exposure.hours[1].drivenS).toBeLessThanOrEqual(400);
		expect(exposure.hours[1].drivenS).toBeGreaterThan(390);
	});

	it('says of each lap whether a slip just before it would have been seen', () => {
		const records = steadyRecords();
		for (let t = 700; t < 740; t++) records.watts[t] = records.rpm[t] = 0;
		const { exposure } = analyseRide(toRide(records, { marks: [{ timeS: 600 }, { timeS: 739 }] }), BIKE);
		expect(exposure.marks).toEqual([
			{ timeS: 600, observed: true },
			{ timeS: 739, observed: false }
		]);
	});
});

describe('markExposures', () => {
	it('asks only the driven seconds of the 15 s before a lap: riders coast before they press', () => {
		const driven = new Uint8Array(100).fill(1, 0, 50);
		const seen = new Uint8Array(100).fill(1, 0, 46);
		// driven 45 to 49, of which one second was observed; driven 40 to 49, of which six were
		expect(markExposures([60, 55, 90], driven, seen)).toEqual([
			{ timeS: 60, observed: false },
			{ timeS: 55, observed: true },
			{ timeS: 90, observed: false }
		]);
	});

	it('takes a lap outside the records for not observed', () => {
		expect(markExposures([-5, 400], new Uint8Array(10).fill(1), new Uint8Array(10).fill(1))).toEqual([
			{ timeS: -5, observed: false },
			{ timeS: 400, observed: false }
		]);
	});
});

describe('hubTorqueBin', () => {
	it('puts an edge into the bin above it and has no upper end', () => {
		HUB_TORQUE_EDGES_NM.forEach((edge, bin) => {
			expect(hubTorqueBin(edge)).toBe(bin);
			if (bin > 0) expect(hubTorqueBin(edge - 1e-9)).toBe(bin - 1);
		});
		expect(hubTorqueBin(500)).toBe(HUB_TORQUE_EDGES_NM.length - 1);
	});

	it('has no bin for what is not known', () => {
		expect(hubTorqueBin(NaN)).toBe(-1);
	});
});
