import { describe, expect, it } from 'vitest';
import { instantTorqueDomain, widenedDomain } from '$lib/charts/fineDomains';
import { fineLines } from '$lib/charts/fineLines';
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
