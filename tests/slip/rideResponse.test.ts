import { describe, expect, it } from 'vitest';
import { driveSignals } from '$lib/drivetrain/driveSignals';
import { secondGrid } from '$lib/drivetrain/secondGrid';
import { analyseRide } from '$lib/slip/analyseRide';
import { rideContext } from '$lib/slip/rideContext';
import { isCadenceHeld, isPowerSlow } from '$lib/slip/rideResponse';
import { random } from '../../sample-rides/generator/random';
import { CIRCUMFERENCE_M, putSlip, steadyRecords, toRide, type Records } from './steadyRide';

function slipping(everyS = 37): Records {
	const records = steadyRecords();
	for (let t = 40; t < 1150; t += everyS) putSlip(records, t, 110 + (t % 90));
	return records;
}
const contextOf = (records: Records) =>
	rideContext(driveSignals(secondGrid(toRide(records), CIRCUMFERENCE_M)));

describe('rideResponse', () => {
	it('says the same of a ride with and without slips', () => {
		const without = contextOf(steadyRecords()).response;
		const slips = contextOf(slipping()).response;
		expect(slips.power).toBeCloseTo(without.power, 1);
		expect(slips.cadence).toBeCloseTo(without.cadence, 1);
		expect(slips.powerHeld).toBeCloseTo(without.powerHeld, 2);
		expect(slips.powerScatter).toBeCloseTo(without.powerScatter, 2);
		expect(without.powerScatter).toBeGreaterThan(0.03);
	});

	it('finds a power meter slow that shows the mean of three seconds', () => {
		const records = steadyRecords();
		const watts = records.watts.slice();
		for (let t = 2; t < watts.length; t++) records.watts[t] = (watts[t] + watts[t - 1] + watts[t - 2]) / 3;
		expect(contextOf(records).response.power).toBeGreaterThan(
			contextOf(steadyRecords()).response.power + 0.3
		);
	});
});

/** Every 40 s the rider stops pedalling for eight; `overS`: each value is a mean over so many seconds, with 6 % scatter. */
function stopping(overS: number, slips: boolean): Records {
	const records = slips ? slipping(90) : steadyRecords();
	const chance = random(3);
	const pressed = records.watts.slice();
	for (let t = 30; t < pressed.length; t++) if (t % 40 < 8) pressed[t] = records.rpm[t] = 0;
	for (let t = overS; t < pressed.length; t++) {
		const mean = pressed.subarray(t - overS + 1, t + 1).reduce((sum, watts) => sum + watts, 0) / overS;
		records.watts[t] = Math.round(mean * (1 + chance.normal(0, 0.06)));
	}
	return records;
}

describe('isPowerSlow', () => {
	it.each([false, true])('tells by how power falls where pedalling stops, slips or not: %s', (slips) => {
		const slow = contextOf(stopping(3, slips)).response;
		// the scatter hides the mean over three seconds from the correlation of changes
		expect(slow.power).toBeLessThan(0.3);
		expect(slow.falls).toBeGreaterThan(20);
		expect(slow.quickFalls).toBeLessThan(2);
		expect(isPowerSlow(slow)).toBe(true);
		const prompt = contextOf(stopping(1, slips)).response;
		expect(prompt.quickFalls).toBe(prompt.falls);
		expect(isPowerSlow(prompt)).toBe(false);
	});

	it('says nothing of a ride with few falls, nor of a gentle rider', () => {
		const response = { power: 0, cadence: 0, powerHeld: 0, cadenceRuns: 0.7, powerScatter: 0.05 };
		expect(isPowerSlow({ ...response, falls: 12, quickFalls: 0 })).toBe(false);
		expect(isPowerSlow({ ...response, falls: 20, quickFalls: 0 })).toBe(true);
		expect(isPowerSlow({ ...response, falls: 40, quickFalls: 5 })).toBe(false);
		expect(isPowerSlow({ ...response, falls: 300, quickFalls: 30 })).toBe(false);
		expect(isPowerSlow({ ...response, falls: 300, quickFalls: 12 })).toBe(true);
	});
});

describe('isCadenceHeld', () => {
	it('tells a cadence that is renewed every second from one that is held for two, slips or not', () => {
		for (const records of [steadyRecords(), slipping()]) {
			expect(isCadenceHeld(contextOf(records).response)).toBe(false);
			for (let t = 1; t < records.rpm.length; t += 2) records.rpm[t] = records.rpm[t - 1];
			const analysis = analyseRide(toRide(records), {});
			expect(isCadenceHeld(contextOf(records).response)).toBe(true);
			expect(analysis.observedM).toBe(0);
			expect(analysis.warnings.map(({ code }) => code)).toContain('held-cadence');
		}
	});
});

describe('rideDips', () => {
	it('says the same of a ride with and without slips', () => {
		const without = contextOf(steadyRecords()).dips;
		const slips = contextOf(slipping()).dips;
		expect(slips.cadence).toBeCloseTo(without.cadence, 2);
		expect(slips.ratio).toBeCloseTo(without.ratio, 2);
	});

	it('rises where cadence drops for a second now and then', () => {
		const records = steadyRecords();
		for (let t = 20; t < 1180; t += 40) records.rpm[t] = Math.round(0.8 * records.rpm[t]);
		expect(contextOf(records).dips.cadence).toBeGreaterThan(0.1);
		expect(contextOf(steadyRecords()).dips.cadence).toBeLessThan(0.05);
	});
});

describe('analyseRide, observed distance', () => {
	it('does not depend on the slips of the ride', () => {
		const without = analyseRide(toRide(steadyRecords()), {}).observedM;
		const slips = analyseRide(toRide(slipping()), {}).observedM;
		expect(without).toBeGreaterThan(1000);
		expect(Math.abs(slips - without)).toBeLessThan(0.03 * without);
	});
});
