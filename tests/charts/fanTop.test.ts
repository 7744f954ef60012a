import { describe, expect, it } from 'vitest';
import { fanTop } from '$lib/charts/fanTop';

const cadence = new Float32Array(100).fill(85);
cadence[41] = 203;
cadence[70] = NaN;

describe('fanTop', () => {
	it('is that of usual riding, from 100 to 160 rpm', () => {
		expect(fanTop(90, [], cadence)).toBe(100);
		expect(fanTop(131, [], cadence)).toBe(131);
		expect(fanTop(240, [], cadence)).toBe(160);
	});

	it('reaches the fastest second of every slip, also beyond the end of the ride', () => {
		const slips = [
			{ startS: 40, endS: 42 },
			{ startS: 69, endS: 71 },
			{ startS: 99, endS: 103 }
		];
		expect(fanTop(90, slips, cadence)).toBe(220);
		expect(fanTop(90, slips.slice(1), cadence)).toBe(100);
	});

	it('leaves room above the fastest, so that its ring does not stand over the names of gears', () => {
		cadence[50] = 199;
		expect(fanTop(90, [{ startS: 50, endS: 50 }], cadence)).toBe(220);
		expect(
			fanTop(
				160,
				[{ startS: 10, endS: 12 }],
				cadence.map(() => 155)
			)
		).toBe(170);
		expect(
			fanTop(
				160,
				[{ startS: 10, endS: 12 }],
				cadence.map(() => 150)
			)
		).toBe(160);
	});
});
