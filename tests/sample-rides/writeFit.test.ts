import { describe, expect, it } from 'vitest';
import { decodeRide } from '$lib/ride/decodeRide';
import type { ChannelName, Ride } from '$lib/ride/ride';
import { simulateRide } from '../../sample-rides/generator/simulateRide';
import { writeFit } from '../../sample-rides/generator/writeFit';
import { rideSpecOf } from '../../sample-rides/workshop/rideSpecOf';
import { SCHEDULE } from '../../sample-rides/workshop/schedule';

/** Half a step of what the FIT record can hold, with room for binary fractions. */
const HALF_STEP: Readonly<Partial<Record<ChannelName, number>>> = {
	speedMps: 0.0005001,
	distanceM: 0.005001,
	cadenceRpm: 0.5,
	powerW: 0.5,
	altitudeM: 0.1001,
	temperatureC: 0.5,
	latitudeDeg: 5e-8,
	longitudeDeg: 5e-8
};

function largestDifference(a: Ride, b: Ride, name: ChannelName): number {
	const x = a.channels[name]?.value ?? new Float64Array();
	const y = b.channels[name]?.value ?? new Float64Array();
	if (x.length !== y.length) return Infinity;
	let largest = 0;
	for (let i = 0; i < x.length; i++) {
		if (Number.isNaN(x[i]) !== Number.isNaN(y[i])) return Infinity;
		if (!Number.isNaN(x[i])) largest = Math.max(largest, Math.abs(x[i] - y[i]));
	}
	return largest;
}

describe('writeFit', { timeout: 30_000 }, () => {
	const spec = { ...rideSpecOf(SCHEDULE[8], 170), maxDurationS: 3000 };
	const { ride } = simulateRide(spec, 3);

	it('writes a file from which our decoder reads the same channels, laps, shifts, pauses and sensors', async () => {
		const read = await decodeRide(writeFit(ride), 'written.fit');
		for (const [name, step] of Object.entries(HALF_STEP))
			expect([name, largestDifference(ride, read, name as ChannelName) <= step]).toEqual([name, true]);
		expect(read.startedAtMs).toBe(ride.startedAtMs);
		expect(read.localOffsetS).toBe(ride.localOffsetS);
		expect(read.durationS).toBe(ride.durationS);
		expect(read.marks).toEqual(ride.marks);
		expect(read.marks.length).toBeGreaterThan(0);
		expect(read.gearEvents).toEqual(ride.gearEvents);
		expect(read.gearEvents.length).toBeGreaterThan(20);
		expect(read.pauses).toEqual(ride.pauses);
		expect(read.gaps).toEqual([]);
		expect(read.sensors.map((sensor) => sensor.kind)).toEqual(ride.sensors.map((sensor) => sensor.kind));
		expect(read.warnings).toEqual([]);
	});

	it('gives the same bytes again', () => {
		expect(writeFit(simulateRide(spec, 3).ride)).toEqual(writeFit(ride));
	});

	it('says of a trainer ride that it was ridden indoors', async () => {
		const plan = SCHEDULE.find((candidate) => candidate.surface === 'indoors');
		if (!plan) throw new Error('no trainer ride is planned');
		const indoors = simulateRide({ ...rideSpecOf(plan, 0), maxDurationS: 600 }, 1).ride;
		expect((await decodeRide(writeFit(indoors), 'indoors.fit')).trainer).toBe(true);
	});
});
