import { describe, expect, it } from 'vitest';
import { randomSlippingSpec } from '../../sample-rides/generator/randomSpecs';
import { recordLogger } from '../../sample-rides/generator/recordLogger';
import { simulateRide } from '../../sample-rides/generator/simulateRide';
import { findLoggerSlips } from '$lib/slip/findLoggerSlips';
import { loggerOverrun } from '$lib/slip/loggerOverrun';

const HZ = 50;
const RATIO = 2.5;

/** Ten seconds at 80 rpm in a ratio of 2.5 with the given leads (rpm) from sample 200 on. */
function tableWith(leads: readonly number[]) {
	const crankRpm = new Float64Array(500).fill(80);
	leads.forEach((lead, i) => (crankRpm[200 + i] += lead));
	return {
		timeS: Float64Array.from(crankRpm, (_, i) => i / HZ),
		crankRpm,
		wheelRpm: new Float64Array(500).fill(80 * RATIO)
	};
}
const overrunOf = (leads: readonly number[]) => loggerOverrun(tableWith(leads), 180, 200, RATIO, 0.003, 2.5)!;

describe('loggerOverrun', () => {
	it('adds up all samples of a clean catch: 20, 40 and 30 rpm ahead for 20 ms each are 10.8 degrees', () => {
		// 6 x 90 rpm x 0.02 s
		expect(overrunOf([20, 40, 30]).crankDeg).toBeCloseTo(10.8, 6);
	});

	it('leaves out the wind-up that dies away over several samples after the catch', () => {
		const { crankDeg, upperDeg, lowerDeg } = overrunOf([20, 40, 60, 20, 8, 4]);
		// 6 x 120 rpm x 0.02 s; with the wind-up it would be 18.2
		expect(crankDeg).toBeCloseTo(14.4, 6);
		expect(upperDeg).toBeGreaterThan(18.2);
		expect(lowerDeg).toBeLessThan(7.2);
	});

	it('gives nothing for a lead that does not end', () => {
		expect(overrunOf(new Array(200).fill(20))).toBeNull();
	});
});

describe('findLoggerSlips on rides of the simulator', () => {
	it('gives sizes between 0.85 and 1.05 of the true ones in the middle, within their limits in three of four', () => {
		const ratios: number[] = [];
		let covered = 0;
		for (const seed of [70003, 70007, 70010]) {
			const any = randomSlippingSpec(seed);
			const spec = { ...any, maxDurationS: 1800, road: { ...any.road, trainer: false } };
			const { motion, truth } = simulateRide(spec, seed);
			const found = findLoggerSlips(recordLogger(spec, motion, seed));
			for (const event of truth.events.filter(({ kind }) => kind === 'slip')) {
				const slip = found.find(({ startS }) => startS >= event.t0 - 0.4 && startS <= event.t1 + 0.2);
				if (!slip) continue;
				ratios.push(slip.overrunCrankDeg / event.crankDeg);
				if (slip.lowerDeg <= event.crankDeg && event.crankDeg <= slip.upperDeg) covered++;
			}
		}
		ratios.sort((a, b) => a - b);
		expect(ratios.length).toBeGreaterThan(8);
		expect(ratios[ratios.length >> 1]).toBeGreaterThan(0.85);
		expect(ratios[ratios.length >> 1]).toBeLessThan(1.05);
		expect(covered / ratios.length).toBeGreaterThanOrEqual(0.75);
	}, 60_000);
});
