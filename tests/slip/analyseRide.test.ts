import { describe, expect, it } from 'vitest';
import { analyseRide } from '$lib/slip/analyseRide';
import { developmentOf, gearAt, putSlip, steadyRecords, toRide } from './steadyRide';

const AT = 600;

describe('analyseRide', () => {
	it('finds a clean slip of 150 degrees with its onset and a size within the limits it states', () => {
		const records = steadyRecords();
		putSlip(records, AT, 150);
		const { events } = analyseRide(toRide(records));
		expect(events).toHaveLength(1);
		expect(Math.abs(events[0].startS - AT)).toBeLessThanOrEqual(1);
		expect(events[0].overrunCrankDeg.lower).toBeLessThanOrEqual(150);
		expect(events[0].overrunCrankDeg.upper).toBeGreaterThanOrEqual(150);
		expect(events[0].overrunCrankDeg.value).toBeGreaterThan(100);
		expect(events[0].kind).toBe('slip');
	});

	it('gives hub degrees as crank degrees times the ratio of the gear that is in', () => {
		const records = steadyRecords();
		putSlip(records, AT, 150);
		const [event] = analyseRide(toRide(records), { circumferenceM: 2.15 }).events;
		expect(event.gear!.ratio).toBeCloseTo(46 / gearAt(AT), 1);
		expect(event.overrunHubDeg).toBeCloseTo(event.overrunCrankDeg.value * event.gear!.ratio, 6);
	});

	it('takes the torque of the last engaged seconds: 200 W at 85 rpm in 46/17 are about 8.1 Nm at the hub', () => {
		const records = steadyRecords();
		putSlip(records, AT, 150);
		const [event] = analyseRide(toRide(records), { circumferenceM: 2.15 }).events;
		// T_hub = 60 P / (2 pi n) x R/F x 0.97
		expect(event.hubTorqueNm!.lower).toBeLessThan(8.1);
		expect(event.hubTorqueNm!.upper).toBeGreaterThan(8.1);
	});

	it('reports nothing in a ride in which nothing slips', () => {
		for (const seed of [1, 2, 3]) expect(analyseRide(toRide(steadyRecords(seed))).events).toEqual([]);
	});

	it('does not report a missed pulse of the wheel', () => {
		const records = steadyRecords();
		for (const [at, dip] of [
			[300, 0.86],
			[500, 0.78],
			[700, 0.7]
		])
			records.mps[at] *= dip;
		expect(analyseRide(toRide(records)).events).toEqual([]);
	});

	it('does not report a shift that is taken back after four seconds', () => {
		const records = steadyRecords();
		for (let t = AT; t < AT + 4; t++) records.rpm[t] = Math.round(records.rpm[t] * (19 / 17));
		expect(analyseRide(toRide(records)).events).toEqual([]);
	});

	it('does not report a smaller chainring and the sprockets that make up for it', () => {
		const records = steadyRecords();
		[1.44, 1.44, 1.3, 1.16, 1.1].forEach(
			(factor, k) => (records.rpm[AT + k] = Math.round(records.rpm[AT + k] * factor))
		);
		for (let k = 0; k < 5; k++) records.watts[AT + k] *= 0.9;
		expect(analyseRide(toRide(records)).events).toEqual([]);
	});

	it('does not report the normal take-up after coasting', () => {
		const records = steadyRecords();
		for (let t = AT; t < AT + 8; t++) records.rpm[t] = records.watts[t] = 0;
		records.rpm[AT + 8] = 60;
		records.watts[AT + 8] = 90;
		expect(analyseRide(toRide(records)).events).toEqual([]);
	});

	it('does not report cadence that freezes for two seconds when the rider stops pedalling', () => {
		const records = steadyRecords();
		for (let t = AT; t < AT + 10; t++) {
			records.watts[t] = 0;
			records.mps[t] *= 1 - 0.004 * (t - AT);
			records.rpm[t] = t < AT + 2 ? records.rpm[AT - 1] : 0;
		}
		expect(analyseRide(toRide(records)).events).toEqual([]);
	});

	it('does not report a cadence that is counted twice for a second', () => {
		const records = steadyRecords();
		records.rpm[AT] *= 2;
		records.watts[AT] *= 2;
		expect(analyseRide(toRide(records)).events).toEqual([]);
	});

	it('calls most of a steady ride observed, and none of one without power', () => {
		const records = steadyRecords();
		const whole = analyseRide(toRide(records));
		expect(whole.observedM / whole.totalM).toBeGreaterThan(0.8);
		records.watts.fill(NaN);
		const blind = analyseRide(toRide(records));
		expect(blind.observedM).toBe(0);
		expect(blind.warnings.map((warning) => warning.code)).toContain('no-power');
	});

	it('observes nothing with a power meter that renews its value every three seconds, or that means over three', () => {
		const held = steadyRecords();
		for (let t = 0; t < 1200; t++) held.watts[t] = held.watts[t - (t % 3)];
		const mean = steadyRecords();
		const watts = mean.watts.slice();
		for (let t = 2; t < 1200; t++) mean.watts[t] = Math.round((watts[t] + watts[t - 1] + watts[t - 2]) / 3);
		// a rider whose power wanders: without that a mean of independent scatter shows little
		for (let t = 0; t < 1200; t++) mean.watts[t] += Math.round(60 * Math.sin(t / 4));
		for (const records of [held, mean]) {
			const analysis = analyseRide(toRide(records));
			expect(analysis.observedM).toBe(0);
			expect(analysis.warnings.map((warning) => warning.code)).toContain('slow-power');
		}
	});

	it('observes nothing on a trainer or with a motor', () => {
		expect(analyseRide(toRide(steadyRecords(), { trainer: true })).observedM).toBe(0);
		expect(analyseRide(toRide(steadyRecords(), { motorAssisted: true })).observedM).toBe(0);
	});

	it('does not count coasting as observed: without pressing no slip can be seen', () => {
		const records = steadyRecords();
		for (let t = 300; t < 360; t++) records.rpm[t] = records.watts[t] = 0;
		const { observed } = analyseRide(toRide(records));
		expect(observed.some((stretch) => stretch.startS < 359 && stretch.endS > 301)).toBe(false);
	});

	it('decides what is observed without the slips: putting three in changes the distance by less than 2 %', () => {
		const calm = analyseRide(toRide(steadyRecords()));
		const records = steadyRecords();
		for (const at of [333, 610, 905]) putSlip(records, at, 160);
		const slipped = analyseRide(toRide(records));
		expect(slipped.events).toHaveLength(3);
		expect(Math.abs(slipped.observedM - calm.observedM) / calm.observedM).toBeLessThan(0.02);
		expect(slipped.events.every((event) => event.observed)).toBe(true);
	});

	it('gives the same events whenever the ride began', () => {
		const records = steadyRecords();
		putSlip(records, AT, 150);
		const now = analyseRide(toRide(records));
		const later = analyseRide(toRide(records, { startedAtMs: 1_800_000_000_000, localOffsetS: 7200 }));
		expect(later).toEqual(now);
	});

	it('finds the same slip when the ride is cut before it', () => {
		const records = steadyRecords();
		putSlip(records, AT, 170);
		const cut = (values: Float64Array) => values.slice(300);
		const [whole] = analyseRide(toRide(records)).events;
		const [part] = analyseRide(
			toRide({ rpm: cut(records.rpm), mps: cut(records.mps), watts: cut(records.watts) })
		).events;
		expect(part.startS + 300).toBe(whole.startS);
	});

	it('learns the developments that were ridden within 1 %', () => {
		const { gears } = analyseRide(toRide(steadyRecords()));
		for (const sprocket of [13, 15, 17, 19, 21]) {
			const nearest = Math.min(
				...gears.map((gear) => Math.abs(Math.log(gear.developmentM / developmentOf(sprocket))))
			);
			expect(nearest).toBeLessThan(0.01);
		}
	});

	it('fills every trace with one value a second', () => {
		const { traces } = analyseRide(toRide(steadyRecords()));
		for (const values of Object.values(traces)) expect(values).toHaveLength(1200);
	});
});
