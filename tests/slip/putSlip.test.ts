import { describe, expect, it } from 'vitest';
import { drawSlip, putSlip, recordsToChange, withRecords, type SlipToPut } from '$lib/slip/putSlip';
import { seededChance } from '$lib/slip/seededChance';
import { steadyRecords, toRide } from './steadyRide';

const SLIP: SlipToPut = {
	startS: 300.25,
	crankDeg: 90,
	lastsS: 0.4,
	powerLost: 0.8,
	recovery: 0.6,
	recoversInS: 2,
	cadenceOverS: 1,
	powerOverS: 1,
	cadenceLagS: 0,
	powerLagS: 0
};

function changed(slip: Partial<SlipToPut>, rpm = 85) {
	const records = steadyRecords();
	// in halves, so that nothing is rounded
	records.rpm.fill(rpm + 0.5);
	records.watts.fill(200.5);
	const ride = toRide(records);
	const copy = recordsToChange(ride)!;
	putSlip(copy, { ...SLIP, ...slip }, () => 0.5);
	const after = withRecords(ride, copy);
	const gained = after.channels.cadenceRpm!.value.map((value, t) => value - records.rpm[t]);
	const lost = after.channels.powerW!.value.map((value, t) => 1 - value / records.watts[t]);
	return { ride, records, after, gained, lost };
}
const degreesOf = (gainedRpm: Float64Array) => gainedRpm.reduce((sum, rpm) => sum + 6 * rpm, 0);

describe('putSlip', () => {
	it.each([
		{},
		{ crankDeg: 180, lastsS: 1.4 },
		{ startS: 300.9, lastsS: 0.5 },
		{ cadenceOverS: 2 },
		{ cadenceOverS: 3, cadenceLagS: 1 }
	])('gives the crank the whole angle however the sensor spreads it: %j', (slip) => {
		const { gained } = changed(slip);
		expect(degreesOf(gained)).toBeCloseTo(slip.crankDeg ?? 90, 6);
	});

	it('puts it into the seconds of the slip and leaves all others as they were', () => {
		const { gained, lost } = changed({});
		expect(gained.findIndex((rpm) => rpm > 0)).toBe(300);
		expect(gained.filter((rpm) => rpm !== 0)).toHaveLength(1);
		// pressing is back after the second of the slip and two of recovery
		expect(Array.from(lost.subarray(299, 304), (share) => Number(share.toFixed(3)))).toEqual([
			0, 0.64, 0.2, 0.2, 0
		]);
	});

	it('comes late with a late sensor', () => {
		expect(changed({ cadenceLagS: 1 }).gained.findIndex((rpm) => rpm > 0)).toBe(301);
	});

	it('shows less of the loss in a power meter that means over three seconds', () => {
		const most = (slip: Partial<SlipToPut>) => changed(slip).lost.reduce((a, b) => Math.max(a, b), 0);
		expect(most({ powerOverS: 3 })).toBeLessThan(0.45 * most({}));
	});

	it('makes the wheel sag by the drive that it lost, which is little', () => {
		const { ride, after } = changed({});
		const before = ride.channels.speedMps!.value;
		const sag = before.map((mps, t) => mps - after.channels.speedMps!.value[t]);
		// 200 W on 85 kg for 0.4 s at some 10 m/s, of which 80 % are lost: below 0.1 m/s
		expect(Math.max(...sag)).toBeGreaterThan(0.01);
		expect(Math.max(...sag)).toBeLessThan(0.1);
		expect(Math.min(...sag)).toBeGreaterThanOrEqual(0);
	});

	it('shows nothing in a recording that has no record in that second', () => {
		const ride = toRide(steadyRecords());
		const keep = (_: number, t: number) => t % 4 === 2;
		const timeS = ride.channels.cadenceRpm!.timeS.filter(keep);
		const value = ride.channels.cadenceRpm!.value.filter(keep);
		const thin = { ...ride, channels: { ...ride.channels, cadenceRpm: { timeS, value } } };
		const copy = recordsToChange(thin)!;
		putSlip(copy, SLIP, () => 0.5);
		expect(copy.cadence.value).toEqual(value);
	});

	it('keeps whole numbers whole and does not touch the ride that it came from', () => {
		const ride = toRide(steadyRecords());
		const before = Float64Array.from(ride.channels.cadenceRpm!.value);
		const copy = recordsToChange(ride)!;
		putSlip(copy, SLIP, () => 0.5);
		expect(copy.cadence.value.every(Number.isInteger)).toBe(true);
		expect(copy.cadence.value).not.toEqual(before);
		expect(ride.channels.cadenceRpm!.value).toEqual(before);
	});
});

describe('drawSlip', () => {
	it('draws the same slip from the same seed, within its bounds', () => {
		for (let seed = 0; seed < 200; seed++) {
			const slip = drawSlip(10, 120, seededChance(seed), true);
			expect(drawSlip(10, 120, seededChance(seed), true)).toEqual(slip);
			expect(slip.lastsS).toBeGreaterThanOrEqual(0.08);
			expect(slip.lastsS).toBeLessThanOrEqual(1.6);
			expect(slip.powerLost).toBeLessThan(1);
		}
	});
});

describe('seededChance', () => {
	it('is uniform: mean and spread of 100,000 numbers lie within five standard errors', () => {
		const chance = seededChance(20_261_125);
		const n = 100_000;
		let sum = 0;
		let squares = 0;
		for (let k = 0; k < n; k++) {
			const value = chance.next() - 0.5;
			sum += value;
			squares += value * value;
		}
		expect(Math.abs(sum / n)).toBeLessThan(5 * Math.sqrt(1 / 12 / n));
		expect(Math.abs(squares / n - 1 / 12)).toBeLessThan(5 * Math.sqrt(1 / 180 / n));
	});

	it('gives other numbers for another seed', () => {
		const first = Array.from({ length: 50 }, (_, seed) => seededChance(seed).next());
		expect(new Set(first).size).toBe(50);
	});
});
