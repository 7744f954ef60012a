import { describe, expect, it } from 'vitest';
import { analyseRide } from '$lib/slip/analyseRide';
import { findLoggerSlips } from '$lib/slip/findLoggerSlips';
import type { Ride } from '$lib/ride/ride';

const HZ = 50;
const RATIO = 2.5;

interface Table {
	rpm: Float64Array;
	wheel: Float64Array;
	torque: Float64Array;
}

/** A minute at 80 rpm in a ratio of 2.5; torque swings between 6 and 34 Nm twice a crank turn. */
function steadyTable(): Table {
	const length = 60 * HZ;
	const rpm = new Float64Array(length).fill(80);
	const wheel = rpm.map((turns) => turns * RATIO);
	const torque = rpm.map((_, i) => 20 - 14 * Math.cos((2 * Math.PI * 2 * 80 * i) / HZ / 60));
	return { rpm, wheel, torque };
}

function toRide({ rpm, wheel, torque }: Table): Ride {
	const timeS = Float64Array.from(rpm, (_, i) => i / HZ);
	return {
		format: 'logger-csv',
		startedAtMs: 0,
		localOffsetS: null,
		durationS: timeS[timeS.length - 1],
		channels: {
			cadenceRpm: { timeS, value: rpm },
			wheelRpm: { timeS, value: wheel },
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

/** The crank runs 60 rpm ahead for 80 ms: 60 x 6 x 0.08 = 28.8 degrees; torque breaks off. */
function putSlip(table: Table, at: number): void {
	for (let i = at; i < at + 4; i++) {
		table.rpm[i] += 60;
		table.torque[i] = 3;
	}
}

describe('findLoggerSlips', () => {
	it('finds an overrun of 28.8 degrees with its onset, its size and the torque around it', () => {
		const table = steadyTable();
		putSlip(table, 1500);
		const [slip, ...others] = findLoggerSlips(toRide(table));
		expect(others).toEqual([]);
		expect(slip.startS).toBeCloseTo(30, 6);
		expect(slip.overrunCrankDeg).toBeCloseTo(28.8, 1);
		expect(slip.torqueBeforeNm).toBeGreaterThan(30);
		expect(slip.torqueDuringNm).toBe(3);
	});

	it('takes a jump that leaves another ratio behind for a shift', () => {
		const table = steadyTable();
		for (let i = 1500; i < table.rpm.length; i++) table.rpm[i] = 90;
		expect(findLoggerSlips(toRide(table))).toEqual([]);
	});

	it('takes a jump that keeps its torque for a fault of the sensor', () => {
		const table = steadyTable();
		for (let i = 1500; i < 1504; i++) table.rpm[i] += 60;
		expect(findLoggerSlips(toRide(table))).toEqual([]);
	});

	it('finds nothing in a table in which nothing slips', () => {
		expect(findLoggerSlips(toRide(steadyTable()))).toEqual([]);
	});
});

describe('analyseRide of a logger table', () => {
	it('reports at the logger clock, with mean torque in the event and instantaneous torque only in the reasons', () => {
		const table = steadyTable();
		putSlip(table, 1500);
		const analysis = analyseRide(toRide(table), { circumferenceM: 2.1 });
		expect(analysis.events).toHaveLength(1);
		const [event] = analysis.events;
		expect(event.startS).toBeCloseTo(30, 6);
		// mean crank torque 20 Nm / 2.5 x 0.97, over a turn of 37.5 samples
		expect(event.hubTorqueNm!.value).toBeCloseTo(7.76, 0);
		expect(event.reasons.join(' ')).toContain('instantaneous crank torque broke off from 34 to 3 Nm');
		expect(analysis.traces.speedMps).toHaveLength(60);
		expect(analysis.totalM).toBeGreaterThan(200 * 2.1 * 0.95);
	});
});
