import { describe, expect, it } from 'vitest';
import { random } from '../../sample-rides/generator/random';
import { addDips, hold, lose, quantise, thin } from '../../sample-rides/generator/sensorFaults';
import {
	pulseTimes,
	senseCadence,
	sensePower,
	senseSpeed,
	totalAt
} from '../../sample-rides/generator/sensors';
import type { Motion } from '../../sample-rides/generator/simulatedRide';

const TURN = 2 * Math.PI;

/** 60 s: 60 rpm and 6 m/s at 180 W for 30 s, then the legs stop and the wheel rolls on. */
function motionThatStops(): Motion {
	const length = 60 * 50 + 1;
	const time = (i: number) => Math.min(30, i / 50);
	return {
		stepS: 1 / 50,
		length,
		crankRad: Float64Array.from({ length }, (_, i) => time(i) * TURN),
		wheelM: Float64Array.from({ length }, (_, i) => (i / 50) * 6),
		groundM: Float64Array.from({ length }, (_, i) => (i / 50) * 6),
		workJ: Float64Array.from({ length }, (_, i) => time(i) * 180),
		virtualM: new Float64Array(length),
		marksS: [],
		shifts: [],
		events: [],
		drivenM: 180,
		confounders: 0
	};
}

const CADENCE = {
	kind: 'rate',
	noise: 0,
	resolutionRpm: 1,
	lagS: 0,
	updateS: 1,
	freezeS: 0,
	spikesPerHour: 0
} as const;
const SPEED = {
	kind: 'rear rate',
	circumferenceM: 2.1,
	noise: 0,
	resolutionMps: 0.001,
	lagS: 0,
	updateS: 1,
	dipsPerHour: 0
} as const;
const POWER = { kind: 'second', noise: 0, scale: 1, lagS: 0, updateS: 1, averageS: 1 } as const;

describe('sensors', () => {
	const motion = motionThatStops();

	it('reads a running total between its samples and holds it at both ends', () => {
		expect(totalAt(motion.groundM, motion, 10.01)).toBeCloseTo(60.06, 9);
		expect(totalAt(motion.groundM, motion, -5)).toBe(0);
		expect(totalAt(motion.groundM, motion, 500)).toBeCloseTo(360, 9);
	});

	it('gives a pulse at each whole turn', () => {
		const times = pulseTimes(motion.wheelM, motion, 3);
		expect(times.length).toBe(120);
		expect(times[0]).toBeCloseTo(0.5, 9);
		expect(times[119]).toBeCloseTo(60, 9);
	});

	it('measures steady riding right with every kind of sensor', () => {
		const chance = random(1);
		for (const kind of ['rear rate', 'rear pulse', 'front rate', 'gps'] as const)
			expect(senseSpeed({ ...SPEED, kind }, motion, 2.1, 60, chance)[20]).toBeCloseTo(6, 2);
		for (const kind of ['rate', 'pulse'] as const)
			expect(senseCadence({ ...CADENCE, kind }, motion, 60, chance)[20]).toBeCloseTo(60, 6);
		for (const kind of ['second', 'turn'] as const)
			expect(sensePower({ ...POWER, kind }, motion, 60, chance)[20]).toBeCloseTo(180, 6);
	});

	it('shows a wrong circumference as a wrong speed', () => {
		const speed = senseSpeed({ ...SPEED, circumferenceM: 2.142 }, motion, 2.1, 60, random(1));
		expect(speed[20]).toBeCloseTo(6 * 1.02, 6);
	});

	it('freezes cadence for two seconds after pedalling stops while power is already gone', () => {
		const cadence = senseCadence({ ...CADENCE, freezeS: 2 }, motion, 60, random(1));
		const power = sensePower(POWER, motion, 60, random(1));
		expect(Array.from(cadence.slice(30, 34)).map(Math.round)).toEqual([60, 60, 60, 0]);
		expect(Array.from(power.slice(30, 33)).map(Math.round)).toEqual([180, 0, 0]);
	});

	it('delays a sensor by its lag', () => {
		const late = sensePower({ ...POWER, lagS: 2 }, motion, 60, random(1));
		expect(Array.from(late.slice(31, 35)).map(Math.round)).toEqual([180, 180, 0, 0]);
	});

	it('lets a slow power meter fade over three seconds', () => {
		const slow = sensePower({ ...POWER, averageS: 3 }, motion, 60, random(1));
		expect(Array.from(slow.slice(30, 34)).map(Math.round)).toEqual([180, 120, 60, 0]);
	});
});

describe('sensorFaults', () => {
	it('lets single samples of speed fall by 14 to 30 per cent', () => {
		const speed = new Float64Array(36_000).fill(8);
		const count = addDips(speed, 6, random(2));
		const fallen = speed.filter((v) => v < 8);
		expect(count).toBe(fallen.length);
		expect(count).toBeGreaterThan(35);
		expect(count).toBeLessThan(85);
		expect(Math.max(...fallen)).toBeLessThanOrEqual(8 * 0.86);
		expect(Math.min(...fallen)).toBeGreaterThanOrEqual(8 * 0.7);
	});

	it('holds a value until the next one is due', () => {
		const values = Float64Array.from([0, 1, 2, 3, 4, 5, 6]);
		hold(values, 3);
		expect(Array.from(values)).toEqual([0, 0, 0, 3, 3, 3, 6]);
	});

	it('rounds to the step of the device and keeps missing values missing', () => {
		const values = Float64Array.from([1.23, NaN, 2.5]);
		quantise(values, 0.5);
		expect(Array.from(values)).toEqual([1, NaN, 2.5]);
	});

	it('takes values away only in stretches', () => {
		const values = new Float64Array(20_000).fill(1);
		lose(values, 4, random(5));
		const missing = values.filter(Number.isNaN).length;
		const begins = values.filter((v, i) => Number.isNaN(v) && !Number.isNaN(values[i - 1])).length;
		expect(begins).toBeGreaterThan(5);
		expect(missing / begins).toBeGreaterThan(5);
	});

	it('leaves out unchanged seconds but never more than five in a row', () => {
		const ticks = Array.from({ length: 60 }, (_, i) => i);
		const flat = new Float64Array(60).fill(5);
		const power = new Float64Array(60).fill(200);
		power[31] = 400;
		const kept = thin(ticks, flat, flat, power);
		expect(kept).toContain(31);
		expect(kept.length).toBeLessThan(16);
		kept.slice(1).forEach((t, i) => expect(t - kept[i]).toBeLessThanOrEqual(6));
	});
});
