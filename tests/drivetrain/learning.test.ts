import { describe, expect, it } from 'vitest';
import { driveSignals } from '$lib/drivetrain/driveSignals';
import { followRatios } from '$lib/drivetrain/followRatios';
import { learnLag } from '$lib/drivetrain/learnLag';
import { learnRatios } from '$lib/drivetrain/learnRatios';
import { learnRecordedRatios } from '$lib/drivetrain/learnRecordedRatios';
import { nameGears } from '$lib/drivetrain/nameGears';
import { secondGrid } from '$lib/drivetrain/secondGrid';
import { CIRCUMFERENCE_M, developmentOf, gearAt, steadyRecords, toRide } from '../slip/steadyRide';

const gridOf = (records = steadyRecords(), more = {}) => secondGrid(toRide(records, more), CIRCUMFERENCE_M);

describe('secondGrid', () => {
	it('fills speed over missing records but never cadence: a spike between two records was not recorded', () => {
		const records = steadyRecords();
		records.mps.fill(NaN, 100, 104);
		records.rpm.fill(NaN, 100, 104);
		const grid = gridOf(records);
		expect(grid.speedMps[101]).toBeGreaterThan(1);
		expect(grid.cadenceRpm[101]).toBeNaN();
	});

	it('takes distance from the sum of speed where none was recorded', () => {
		const ride = toRide(steadyRecords());
		const grid = secondGrid(
			{ ...ride, channels: { ...ride.channels, distanceM: undefined } },
			CIRCUMFERENCE_M
		);
		const sum = ride.channels.speedMps!.value.reduce((total, mps) => total + mps, 0);
		expect(grid.distanceM[grid.seconds - 1]).toBeCloseTo(sum, 6);
	});

	it('numbers recorded gears and notes the seconds of the shifts', () => {
		const gear = (timeS: number, rearTeeth: number) => ({
			timeS,
			frontIndex: 1,
			rearIndex: rearTeeth,
			frontTeeth: 46,
			rearTeeth
		});
		const grid = gridOf(steadyRecords(), { gearEvents: [gear(0, 13), gear(240, 15), gear(300, 13)] });
		expect([grid.gearCode[10], grid.gearCode[250], grid.gearCode[310]]).toEqual([0, 1, 0]);
		expect(grid.shiftS).toEqual([240, 300]);
	});
});

describe('learnLag', () => {
	it.each([-1, 0, 1, 2])('finds that speed lags cadence by %i s', (lagS) => {
		const records = steadyRecords();
		// a brisk swing of cadence, so that a lag can be seen at all
		for (let t = 0; t < 1200; t++) {
			const turning = 85 + 12 * Math.sin(t / 3);
			records.rpm[t] = Math.round(turning);
			records.mps[t] = (turning * developmentOf(gearAt(t))) / 60;
		}
		const shifted = records.mps.map((_, t) => records.mps[Math.max(0, Math.min(1199, t - lagS))]);
		expect(learnLag(gridOf({ ...records, mps: shifted }))).toBe(lagS);
	});
});

describe('learnRatios, followRatios and nameGears', () => {
	const signals = driveSignals(gridOf());
	const ratios = learnRatios(signals);

	it('learn the five developments of the ride within half a per cent', () => {
		expect(ratios).toHaveLength(5);
		for (const sprocket of [13, 15, 17, 19, 21]) {
			const off = ratios.map((ratio) => Math.abs(ratio.logRatio + Math.log(developmentOf(sprocket))));
			expect(Math.min(...off)).toBeLessThan(0.005);
		}
	});

	it('follow the gear that is in, also through a second that fits none', () => {
		const records = steadyRecords();
		records.rpm[600] = 120;
		const path = followRatios(driveSignals(gridOf(records)), ratios);
		for (const t of [100, 300, 599, 600, 601, 800, 1100]) {
			expect(Math.exp(-ratios[path[t]].logRatio)).toBeCloseTo(developmentOf(gearAt(t)), 1);
		}
	});

	it('name stated gears, and correct a circumference that is 3 % off', () => {
		const named = nameGears(ratios, {
			chainrings: [46],
			cassette: [13, 15, 17, 19, 21],
			circumferenceM: 2.15 * 1.03
		});
		expect(named.fitted).toBe(true);
		expect(named.gears.map((gear) => gear.label).sort()).toEqual([
			'46/13',
			'46/15',
			'46/17',
			'46/19',
			'46/21'
		]);
		expect(named.circumferenceM).toBeGreaterThan(2.12);
		expect(named.circumferenceM).toBeLessThan(2.18);
	});

	it('say when stated gears do not explain the ride, and keep the ratios that were ridden', () => {
		const named = nameGears(ratios, { chainrings: [32], cassette: [42, 51], circumferenceM: 2.15 });
		expect(named.fitted).toBe(false);
		expect(named.gears[0].chainring).toBeNull();
		expect(named.gears[0].label).toMatch(/^\d\.\d\d:1$/);
	});
});

describe('learnRecordedRatios', () => {
	it('learns the ratio of a gear code from the ride, not from its tooth counts, clear of shifts', () => {
		const gearEvents = [0, 240, 480].map((timeS, i) => ({
			timeS: Math.max(0, timeS - 2),
			frontIndex: 1,
			rearIndex: i + 1,
			frontTeeth: 50,
			rearTeeth: [11, 12, 13][i]
		}));
		const recorded = learnRecordedRatios(driveSignals(gridOf(steadyRecords(1, 700), { gearEvents })));
		expect(Math.exp(-recorded[1])).toBeCloseTo(developmentOf(15), 1);
		expect(Math.exp(-recorded[2])).toBeCloseTo(developmentOf(17), 1);
	});
});
