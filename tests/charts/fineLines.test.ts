import { describe, expect, it } from 'vitest';
import { instantTorqueDomain, widenedDomain } from '$lib/charts/fineDomains';
import { fineGained } from '$lib/charts/fineGained';
import { fineLines, type FineLines } from '$lib/charts/fineLines';
import { readChannels } from '$lib/charts/readChannels';
import { traceOfWindow } from '$lib/charts/traceOfWindow';
import { channelBytes } from '$lib/server/rides/channelBytes';

const f32 = (...values: number[]) => Float32Array.from(values);

describe('fineLines', () => {
	const read = (size: number) =>
		fineLines(
			readChannels(
				channelBytes(
					{
						length: 3,
						channels: [
							{ name: 'crankRpm.low', values: f32(70, NaN, 72) },
							{ name: 'crankRpm.high', values: f32(90, NaN, 95) },
							{ name: 'wheelMps.low', values: f32(5, 6, 7) },
							{ name: 'wheelMps.high', values: f32(10, 6, 7) }
						]
					},
					{ sampleS: 0.005, size, fromS: 100 }
				).buffer
			)
		)!;

	it('puts each group in the middle of its values, from where the stretch begins', () => {
		const lines = read(4);
		expect(lines.coversS).toEqual([100, 100.06]);
		const shown = traceOfWindow(lines.cadenceRpm!, [100, 100.06], 100);
		expect(shown.exact).toBe(false);
		expect([...shown.atS]).toEqual([100.0075, 100.0275, 100.0475].map((at) => expect.closeTo(at, 9)));
		expect([...shown.low]).toEqual([70, NaN, 72]);
		// a window that begins later leaves out what lies before it
		expect(traceOfWindow(lines.cadenceRpm!, [100.05, 100.06], 100).low.length).toBeLessThan(3);
	});

	it('gives speed in km/h and leaves out what was not recorded', () => {
		const lines = read(1);
		expect(lines.speedKmh!.levels[0].high[0]).toBe(36);
		expect(lines.crankTorqueNm).toBeUndefined();
		expect(traceOfWindow(lines.speedKmh!, [100, 100.01], 100).exact).toBe(true);
	});
});

describe('fineGained', () => {
	const RATE = 100;
	/** 80 rpm engaged; the crank is ahead from 12.4 to 12.7 s */
	const line = (value: (timeS: number) => number) => {
		const values = Float32Array.from({ length: 20 * RATE }, (_, i) => value(i / RATE));
		return { stepS: 1 / RATE, fromS: 0, levels: [{ size: 1, low: values, high: values }] };
	};
	const fine: FineLines = {
		coversS: [0, 20],
		groupS: 1 / RATE,
		cadenceRpm: line((timeS) => (timeS >= 12.395 && timeS < 12.695 ? 160 : 80)),
		engagedCadenceRpm: line(() => 80)
	};
	const counted = Float32Array.from({ length: 20 }, (_, second) => (second < 12 ? 0 : 144));

	it('stands the step where the crank ran ahead, and as high as was counted', () => {
		const gained = fineGained(counted, fine, [10, 15])!;
		const at = (timeS: number) => gained.levels[0].high[Math.round((timeS - gained.fromS!) / gained.stepS)];
		expect([11, 12, 12.39].map(at)).toEqual([0, 0, 0]);
		expect(at(12.55)).toBeGreaterThan(60);
		expect(at(12.55)).toBeLessThan(84);
		expect([12.71, 13, 14.9].map(at)).toEqual([144, 144, 144]);
	});

	it('is as counted at the end of each second, and spreads evenly what the logger does not explain', () => {
		const rising = Float32Array.from({ length: 20 }, (_, second) => -10 * second);
		const gained = fineGained(rising, fine, [3, 9])!;
		const at = (timeS: number) => gained.levels[0].high[Math.round((timeS - gained.fromS!) / gained.stepS)];
		for (const second of [4, 5, 6]) expect(at(second + 1)).toBeCloseTo(rising[second], 3);
		expect(at(5.5)).toBeCloseTo((rising[4] + rising[5]) / 2, 3);
	});

	it('says nothing where it is not known, nor where the lines are too coarse', () => {
		const unknown = counted.map((value, second) => (second === 11 ? NaN : value));
		const gained = fineGained(unknown, fine, [10, 15])!;
		expect(gained.levels[0].high.some(Number.isNaN)).toBe(true);
		expect(fineGained(counted, { ...fine, groupS: 2 }, [10, 15])).toBeNull();
		expect(fineGained(counted, { ...fine, cadenceRpm: undefined }, [10, 15])).toBeNull();
	});
});

describe('scales of lines at their own rate', () => {
	it('hold what is in view, nought and a little room', () => {
		expect(instantTorqueDomain({ low: [NaN, -3], high: [NaN, 41] })).toEqual([-20, 60]);
		expect(instantTorqueDomain({ low: [], high: [] })).toEqual([0, 40]);
	});

	it('never become narrower than for whole seconds', () => {
		expect(widenedDomain([60, 100], { low: [71], high: [142] })).toEqual([60, 150]);
		expect(widenedDomain([60, 100], { low: [NaN], high: [NaN] })).toEqual([60, 100]);
	});
});
