import { describe, expect, it } from 'vitest';
import type { Bike } from '$lib/drivetrain/bike';
import { driveSignals } from '$lib/drivetrain/driveSignals';
import { secondGrid } from '$lib/drivetrain/secondGrid';
import { analyseRide } from '$lib/slip/analyseRide';
import type { Placed } from '$lib/slip/candidateFeatures';
import { isDroppedChain } from '$lib/slip/isDroppedChain';
import { isFailedPickUp } from '$lib/slip/isFailedPickUp';
import { isTyreSpin } from '$lib/slip/isTyreSpin';
import { rideContext } from '$lib/slip/rideContext';
import { CIRCUMFERENCE_M, putSlip, steadyRecords, toRide, type Records } from './steadyRide';

const AT = 600;
const contextOf = (records: Records) =>
	rideContext(driveSignals(secondGrid(toRide(records), CIRCUMFERENCE_M)));

/** An excess at AT in the gear 46/17. */
const placed = (to = AT): Placed => {
	const logRatio = -Math.log((46 / 17) * CIRCUMFERENCE_M);
	return { from: AT, to, peak: AT, high: logRatio, low: logRatio, carefulDeg: 150, generousDeg: 150 };
};

describe('isFailedPickUp', () => {
	it('is true where the crank stood just before', () => {
		const records = steadyRecords();
		for (let t = AT - 5; t < AT; t++) records.rpm[t] = records.watts[t] = 0;
		expect(isFailedPickUp(contextOf(records), placed(), AT)).toBe(true);
	});

	it('is false where only the slip itself takes the power away, in its second or one record ahead of it', () => {
		const records = steadyRecords();
		records.watts[AT] = 0;
		expect(isFailedPickUp(contextOf(records), placed(), AT)).toBe(false);
		records.watts[AT - 1] = 10;
		expect(isFailedPickUp(contextOf(records), placed(), AT)).toBe(false);
	});

	it('is false after missing records: they are no rest', () => {
		const records = steadyRecords();
		for (let t = AT - 5; t < AT; t++) records.rpm[t] = records.watts[t] = NaN;
		expect(isFailedPickUp(contextOf(records), placed(), AT)).toBe(false);
	});

	it('leaves a slip that takes all the power a slip under load, with its torque', () => {
		const records = steadyRecords();
		putSlip(records, AT, 170);
		records.watts[AT] = 0;
		const [event] = analyseRide(toRide(records), { circumferenceM: CIRCUMFERENCE_M }).events;
		expect(event.kind).toBe('slip');
		expect(event.hubTorqueNm!.value).toBeCloseTo(8.1, 0);
		expect(event.observed).toBe(true);
	});
});

describe('isDroppedChain', () => {
	const dropped = () => {
		const records = steadyRecords();
		for (let t = AT; t < AT + 8; t++) {
			records.rpm[t] = t < AT + 3 ? 150 : 70;
			records.watts[t] = 0;
		}
		for (let t = AT + 8; t < AT + 90; t++) records.rpm[t] = records.watts[t] = 0;
		for (let t = AT; t < AT + 90; t++) records.mps[t] = Math.max(0, 8 - 0.3 * (t - AT));
		return records;
	};

	it('is true where the crank goes on turning without load and the wheel rolls out to a stop', () => {
		expect(isDroppedChain(contextOf(dropped()), placed(AT + 2), 900)).toBe(true);
	});

	it('is false where the rider drives again before the wheel stands', () => {
		const records = dropped();
		for (let t = AT + 12; t < AT + 20; t++) records.watts[t] = 200;
		for (let t = AT + 12; t < AT + 20; t++) records.rpm[t] = 60;
		expect(isDroppedChain(contextOf(records), placed(AT + 2), 900)).toBe(false);
	});

	it('is false where a startled rider stops the cranks, and for less than a turn', () => {
		const records = dropped();
		for (let t = AT + 3; t < AT + 8; t++) records.rpm[t] = 0;
		expect(isDroppedChain(contextOf(records), placed(AT + 2), 900)).toBe(false);
		expect(isDroppedChain(contextOf(dropped()), placed(AT + 2), 300)).toBe(false);
	});
});

describe('isTyreSpin', () => {
	/** Slow and hard: 3 m/s. */
	const climbing = () => {
		const records = steadyRecords();
		for (let t = AT - 30; t < AT + 30; t++) records.mps[t] = 3;
		return records;
	};

	it('is true at high torque and low speed while most of the power goes on', () => {
		const records = climbing();
		expect(isTyreSpin(contextOf(records), placed(), 45)).toBe(true);
	});

	it('is false where the power collapses, at usual torque, at speed, or where the torque is not known', () => {
		const records = climbing();
		expect(isTyreSpin(contextOf(records), placed(), 12)).toBe(false);
		expect(isTyreSpin(contextOf(records), placed(), null)).toBe(false);
		records.watts[AT] = 40;
		expect(isTyreSpin(contextOf(records), placed(), 45)).toBe(false);
		expect(isTyreSpin(contextOf(steadyRecords()), placed(), 45)).toBe(false);
	});
});

describe('a tyre that spins under a sensor at the driven wheel', () => {
	/** 60 rpm in 46/21 at 4.7 m/s and 500 W, about 34 Nm at the hub; wheel and crank jump up by 55 % for a second. */
	const spinning = () => {
		const records = steadyRecords(3);
		const mps = (60 * (46 / 21) * CIRCUMFERENCE_M) / 60;
		for (let t = AT - 60; t < AT + 60; t++) {
			records.rpm[t] = 60 + (t % 2);
			records.mps[t] = (mps * records.rpm[t]) / 60;
			records.watts[t] = 500;
		}
		records.rpm[AT] = 93;
		records.mps[AT] = (mps * 93) / 60;
		return records;
	};
	const BIKE: Bike = { circumferenceM: CIRCUMFERENCE_M, speedSensor: 'rear' };

	it('is reported as a possible tyre spin and counts in no rate', () => {
		const { events } = analyseRide(toRide(spinning()), BIKE);
		expect(events.map(({ kind, startS }) => [kind, startS])).toEqual([['possible tyre spin', AT]]);
	});

	it('is not reported where speed jumps alone, as at a fault of the sensor', () => {
		const records = spinning();
		records.rpm[AT] = 60;
		expect(analyseRide(toRide(records), BIKE).events).toEqual([]);
	});

	it('is not reported where the speed is not that of the driven wheel', () => {
		expect(analyseRide(toRide(spinning()), { ...BIKE, speedSensor: 'front' }).events).toEqual([]);
	});
});
