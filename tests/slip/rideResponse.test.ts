import { describe, expect, it } from 'vitest';
import { driveSignals } from '$lib/drivetrain/driveSignals';
import { secondGrid } from '$lib/drivetrain/secondGrid';
import { analyseRide } from '$lib/slip/analyseRide';
import { rideContext } from '$lib/slip/rideContext';
import { CIRCUMFERENCE_M, putSlip, steadyRecords, toRide, type Records } from './steadyRide';

function slipping(): Records {
	const records = steadyRecords();
	for (let t = 40; t < 1150; t += 37) putSlip(records, t, 110 + (t % 90));
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
