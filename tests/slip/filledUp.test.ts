import { describe, expect, it } from 'vitest';
import { filledUp } from '$lib/slip/filledUp';

describe('filledUp', () => {
	it('fills a dip to the lower of its two sides', () => {
		expect(filledUp(Float64Array.of(200, 200, 90, 60, 180, 180), 3, 2)).toBe(180);
		expect(filledUp(Float64Array.of(200, 200, 90, 60, 180, 180), 2, 2)).toBe(90);
	});

	it('fills nothing where power falls for good', () => {
		expect(filledUp(Float64Array.of(616, 323, 120, 140, 124, 121), 3, 3)).toBe(140);
		expect(filledUp(Float64Array.of(600, 600, 100, 100, 100, 100), 4, 2)).toBe(100);
	});

	it('is not known where too little beside it is', () => {
		expect(filledUp(Float64Array.of(NaN, 100, NaN), 2, 1)).toBeNaN();
	});
});
