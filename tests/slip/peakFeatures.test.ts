import { describe, expect, it } from 'vitest';
import { driveSignals } from '$lib/drivetrain/driveSignals';
import { secondGrid } from '$lib/drivetrain/secondGrid';
import type { Ride } from '$lib/ride/ride';
import { placeCandidate } from '$lib/slip/candidateFeatures';
import { peakFeatures, PEAK_FEATURES } from '$lib/slip/peakFeatures';
import { rideContext } from '$lib/slip/rideContext';
import { CIRCUMFERENCE_M, putSlip, steadyRecords, toRide, type Records } from './steadyRide';

const AT_S = 600;

function featuresAt(records: Records, more: Partial<Ride> = {}) {
	const context = rideContext(driveSignals(secondGrid(toRide(records, more), CIRCUMFERENCE_M)));
	const candidate = context.candidates.find(({ from, to }) => from <= AT_S + 1 && to >= AT_S)!;
	const out: number[] = [];
	peakFeatures(context, placeCandidate(context, candidate), out);
	expect(out).toHaveLength(PEAK_FEATURES.length);
	return (name: string) => out[PEAK_FEATURES.indexOf(name)];
}

describe('peakFeatures', () => {
	it('measures a slip against both sides, and sees power and torque fall and come back', () => {
		const records = steadyRecords();
		putSlip(records, AT_S, 150);
		const feature = featuresAt(records);
		// the first second holds 70 % of the angle
		expect(feature('deg of a peak of three seconds')).toBeGreaterThan(0.7 * 150 - 15);
		expect(feature('deg of a peak of three seconds')).toBeLessThan(0.7 * 150 + 25);
		expect(feature('power dip at peak')).toBeGreaterThan(0.4);
		expect(feature('deepest power dip near')).toBeGreaterThan(0.4);
		expect(feature('deepest torque dip near')).toBeGreaterThan(feature('power dip at peak'));
	});

	it('sees no dip in a cadence spike after which the rider presses less for good', () => {
		const records = steadyRecords();
		records.rpm[AT_S] += 20;
		for (let t = AT_S - 1; t < 1200; t++) records.watts[t] *= 0.4;
		const feature = featuresAt(records);
		expect(feature('deg of a peak of one second')).toBeGreaterThan(90);
		expect(feature('power dip at peak')).toBeLessThan(0.15);
	});

	it('explains an excursion by a gear that was recorded seconds before it', () => {
		const records = steadyRecords();
		// 19 teeth instead of 17 for two seconds, recorded three seconds early
		for (const t of [AT_S, AT_S + 1]) records.rpm[t] = Math.round(records.rpm[t] * (19 / 17));
		const gear = (timeS: number, rearTeeth: number) => ({
			timeS,
			frontIndex: 1,
			frontTeeth: 46,
			rearIndex: rearTeeth,
			rearTeeth
		});
		const gearEvents = [
			gear(0, 13),
			gear(238, 15),
			gear(478, 17),
			gear(AT_S - 3, 19),
			gear(AT_S - 1, 17),
			gear(718, 19),
			gear(958, 21)
		];
		const feature = featuresAt(records, { gearEvents });
		expect(feature('deg of a peak of three seconds')).toBeGreaterThan(45);
		expect(feature('highest recorded ratio near against engaged')).toBeCloseTo(Math.log(19 / 17), 1);
		expect(feature('peak second against recorded ratios near')).toBeLessThan(15);
		expect(featuresAt(records)('peak second against recorded ratios near')).toBeNaN();
	});
});
