import { describe, expect, it } from 'vitest';
import { findLoggerSlips } from '$lib/slip/findLoggerSlips';
import { insertionTest } from '$lib/slip/insertionTest';
import { withLoggerSlips } from '$lib/slip/withLoggerSlips';
import type { SlipToPut } from '$lib/slip/putSlip';
import type { Ride } from '$lib/ride/ride';

const HZ = 50;

/** Ten minutes at 80 rpm in a ratio of 2.5; torque swings between 6 and 34 Nm twice a crank turn. */
function steadyTable(): Ride {
	const timeS = Float64Array.from({ length: 600 * HZ }, (_, i) => i / HZ);
	const rpm = new Float64Array(timeS.length).fill(80);
	const torque = timeS.map((t) => 20 - 14 * Math.cos((2 * Math.PI * 2 * 80 * t) / 60));
	return {
		format: 'logger-csv',
		startedAtMs: 0,
		localOffsetS: null,
		durationS: timeS[timeS.length - 1],
		channels: {
			cadenceRpm: { timeS, value: rpm },
			wheelRpm: { timeS, value: rpm.map((turns) => turns * 2.5) },
			crankTorqueNm: { timeS, value: torque }
		},
		gaps: [],
		pauses: [],
		irregular: false,
		marks: [],
		gearEvents: [],
		sensors: [],
		speedSource: 'wheel',
		trainer: null,
		motorAssisted: null,
		warnings: []
	};
}

const SLIP: SlipToPut = {
	startS: 200.013,
	crankDeg: 60,
	lastsS: 0.3,
	powerLost: 0.9,
	recovery: 1,
	recoversInS: 1,
	cadenceOverS: 1,
	powerOverS: 1,
	cadenceLagS: 0,
	powerLagS: 0
};

describe('withLoggerSlips', () => {
	it('gives the crank the whole angle within the slip and leaves the wheel and the ride as they were', () => {
		const ride = steadyTable();
		const slipped = withLoggerSlips(ride, [SLIP]);
		const gained = slipped.channels.cadenceRpm!.value.map((rpm) => (6 * (rpm - 80)) / HZ);
		expect(gained.reduce((sum, deg) => sum + deg, 0)).toBeCloseTo(60, 0);
		expect(gained.findIndex((deg) => deg > 0)).toBe(Math.ceil(SLIP.startS * HZ));
		expect(gained.slice(Math.ceil(200.313 * HZ)).every((deg) => deg === 0)).toBe(true);
		expect(slipped.channels.wheelRpm).toBe(ride.channels.wheelRpm);
		expect(ride.channels.cadenceRpm!.value.every((rpm) => rpm === 80)).toBe(true);
	});

	it('takes the torque away meanwhile and gives it back within a third of a second', () => {
		const ride = steadyTable();
		const left = withLoggerSlips(ride, [SLIP]).channels.crankTorqueNm!.value.map(
			(torque, i) => torque / ride.channels.crankTorqueNm!.value[i]
		);
		expect(left[Math.round(200.15 * HZ)]).toBeCloseTo(0.1, 6);
		expect(left[Math.round(200.46 * HZ)]).toBeGreaterThan(0.4);
		expect(left[Math.round(200.62 * HZ)]).toBe(1);
	});

	it('is found by the logger’s own detection, its size within a third', () => {
		const [slip, ...others] = findLoggerSlips(withLoggerSlips(steadyTable(), [SLIP]));
		expect(others).toEqual([]);
		expect(slip.startS).toBeCloseTo(200, 0);
		expect(slip.overrunCrankDeg).toBeGreaterThan(40);
		expect(slip.overrunCrankDeg).toBeLessThan(80);
	});
});

describe('insertionTest on a logger table', () => {
	it('puts in sizes down to about one step and finds nearly all of them in a steady table', () => {
		const { put, found, tallies } = insertionTest(steadyTable(), {}, 3);
		expect(put).toBeGreaterThan(10);
		expect(Math.min(...tallies.map(({ sizeCrankDeg }) => sizeCrankDeg))).toBe(8);
		expect(found / put).toBeGreaterThan(0.8);
	});
});
