import { describe, expect, it } from 'vitest';
import { sideMean } from '$lib/slip/sideMean';

describe('sideMean', () => {
	it('leaves out the second itself and the gap on each side', () => {
		const values = Float64Array.of(1, 2, 3, 100, 5, 6, 7);
		expect(sideMean(values, 3, 1)[3]).toBe((1 + 2 + 6 + 7) / 4);
	});

	it('takes the second in without a gap, and leaves out what is missing', () => {
		expect(sideMean(Float64Array.of(1, NaN, 3), 1, 0)[1]).toBe(2);
		expect(sideMean(Float64Array.of(NaN), 1, 0)[0]).toBeNaN();
	});
});
