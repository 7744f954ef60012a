import { describe, expect, it } from 'vitest';
import { rideStripData } from '$lib/charts/rideStripData';
import { DRIVE_STATES } from '$lib/slip/analysis';
import { courseTable } from '../../src/routes/builds/[id]/release/courseTable';
import { fanTable } from '../../src/routes/rides/[id]/fanTable';
import { slipSizesTable, workedTable } from '../../src/routes/method/methodTables';
import { stripTable } from '../../src/routes/rides/[id]/stripTable';
import { curveTable, shareTable } from '../../src/routes/storyTables';
import { happeningsTable } from '../../src/routes/wheels/[id]/happeningsTable';
import { wearTable } from '../../src/routes/wheels/[id]/inspections/wearTable';

const f32 = (...values: number[]) => Float32Array.from(values);
const DRIVING = DRIVE_STATES.indexOf('driving');
const data = rideStripData({
	length: 3,
	traces: {
		state: f32(DRIVING, DRIVING, NaN),
		speedMps: f32(5, 6, NaN),
		cadenceRpm: f32(80, 0, NaN),
		distanceM: f32(0, 5, 11)
	}
});

describe('tables behind the drawings of a ride', () => {
	it('give every second that is shown, empty where a value is not known', () => {
		const { columns, rows } = stripTable(data, data.raw.gained, [0.5, 9]);
		const [first, second] = [...rows].map((row) =>
			Object.fromEntries(row.map((cell, i) => [columns[i], cell]))
		);
		expect(first).toMatchObject({
			time_s: 1,
			distance_m: 5,
			drive: 'driving',
			speed_kmh: 21.6,
			power_w: null
		});
		expect(second).toMatchObject({ time_s: 2, drive: null, cadence_rpm: null });
		expect([...rows]).toHaveLength(2);
	});

	it('give the dots of the fan and nothing that is not drawn', () => {
		expect([...fanTable(data, () => true, [0, 2]).rows]).toEqual([[0, 18, 80]]);
	});
});

describe('courseTable', () => {
	it('gives the lines of the plan at each slip and where the test has come to', () => {
		const { rows } = courseTable({
			slipsAtM: [100_000],
			observedM: 400_000,
			slopePerThousandKm: 5,
			passIntercept: -1.5,
			failIntercept: 2,
			allowedAtEnd: 2
		});
		expect([...rows]).toEqual([
			[0, 0, 2, null],
			[100, 1, 2.5, null],
			[400, 1, 3, 0.5]
		]);
	});
});

describe('wearTable and happeningsTable', () => {
	it('name the unit in the column and leave empty what has no length', () => {
		const points = [{ distanceM: 1500, mean: 1.25, repeats: 3, range: 0.02, beforeRunIn: true }] as never;
		expect(wearTable({ points, unit: 'mm' })).toEqual({
			columns: ['distance_km', 'mean_mm', 'repeats', 'range_mm', 'before_run_in'],
			rows: [[1.5, 1.25, 3, 0.02, 'yes']]
		});
		const service = {
			key: 's',
			what: 'service',
			href: null,
			atM: 900,
			at: '2026-05-01T08:00:00Z',
			lengthM: null,
			observedM: null
		};
		expect([...happeningsTable([service]).rows]).toEqual([
			['service', 0.9, '2026-05-01T08:00:00Z', null, null]
		]);
	});
});

describe('tables behind the small charts of a build', () => {
	it('give the observed share, empty before anything was ridden', () => {
		expect([...shareTable({ name: 'A', observedM: 61_000, totalM: 100_000 }).rows]).toEqual([
			['A', 61, 100, 0.61]
		]);
		expect([...shareTable({ name: 'A', observedM: 0, totalM: 0 }).rows]).toEqual([['A', 0, 0, null]]);
	});

	it('give the steps of the curve and where it ends', () => {
		const curve = [
			{ atM: 50_000, value: 1 },
			{ atM: 90_000, value: 1.5 }
		];
		expect([...curveTable('A', { curve, endM: 200_000 } as never).rows]).toEqual([
			['A', 50, 1],
			['A', 90, 1.5],
			['A', 200, 1.5]
		]);
	});
});

describe('tables behind the figures of the method page', () => {
	it('give a column for each size of slip', () => {
		const sizes = [
			{ crankDeg: 45, cadenceRpm: [84, 90] },
			{ crankDeg: 90, cadenceRpm: [84, 97] }
		];
		const { columns, rows } = slipSizesTable({ engagedRpm: 84, sizes, chances: [], atTheLimit: 0.7 });
		expect(columns.slice(2)).toEqual(['cadence_rpm_with_45_crank_deg', 'cadence_rpm_with_90_crank_deg']);
		expect([...rows]).toEqual([
			[0, 84, 84, 84],
			[1, 84, 90, 97]
		]);
	});

	it('give what was gained only where it counts', () => {
		const at = { cadenceRpm: 90, engagedRpm: 84, powerW: NaN, gainedDeg: 36 };
		const seconds = [
			{ ...at, second: 9, counted: false },
			{ ...at, second: 10, counted: true }
		];
		expect([...workedTable({ seconds, event: { startS: 10 } } as never).rows]).toEqual([
			[-1, 90, 84, null, null],
			[0, 90, 84, null, 36]
		]);
	});
});
