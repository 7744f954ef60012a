import { describe, expect, it } from 'vitest';
import { minMaxLevels } from '$lib/charts/minMaxLevels';
import { traceOfWindow } from '$lib/charts/traceOfWindow';

const ramp = Float32Array.from({ length: 18_000 }, (_, i) => i);

describe('minMaxLevels', () => {
	it('keeps a spike of one sample in every level', () => {
		const values = new Float32Array(18_000).fill(80);
		values[12_345] = 190;
		for (const level of minMaxLevels(values).levels) expect(Math.max(...level.high)).toBe(190);
	});

	it('passes over missing values and keeps a group that has none as missing', () => {
		const values = new Float32Array(32).fill(NaN);
		values[1] = 5;
		values[2] = 3;
		const [, , groups] = minMaxLevels(values).levels;
		expect([groups.low[0], groups.high[0]]).toEqual([3, 5]);
		expect(groups.low[1]).toBeNaN();
	});
});

describe('traceOfWindow', () => {
	it('never gives more than about two points a pixel', () => {
		const columns = traceOfWindow(minMaxLevels(ramp), [0, 17_999], 800);
		expect(columns.exact).toBe(false);
		expect(columns.atS.length).toBeLessThanOrEqual(1604);
	});

	it('gives the samples themselves where they fit, with a neighbour on each side', () => {
		const columns = traceOfWindow(minMaxLevels(ramp), [100, 115], 800);
		expect(columns.exact).toBe(true);
		expect([...columns.high]).toEqual(Array.from({ length: columns.high.length }, (_, i) => 99 + i));
		expect(columns.atS[0]).toBe(99);
		expect(columns.atS.at(-1)).toBe(116);
	});

	it('puts a group in the middle of its samples', () => {
		const columns = traceOfWindow(minMaxLevels(ramp), [0, 17_999], 4_500);
		// groups of four samples: seconds 0 to 3 lie around 1.5
		expect(columns.atS[0]).toBe(1.5);
		expect([columns.low[0], columns.high[0]]).toEqual([0, 3]);
	});
});
