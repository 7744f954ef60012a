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
		expect(fanTop(90, slips, cadence)).toBe(210);
		expect(fanTop(90, slips.slice(1), cadence)).toBe(100);
	});
});
