import { describe, expect, it } from 'vitest';
import { valuesAt } from '$lib/ride/valuesAt';

const channel = (timeS: number[], value: number[]) => ({
	timeS: Float64Array.from(timeS),
	value: Float64Array.from(value)
});

describe('valuesAt', () => {
	it('goes straight from value to value and keeps those that stand there', () => {
		const at = valuesAt(channel([0, 1, 2], [10, 20, 0]), Float64Array.of(0, 0.25, 1, 1.5, 2));
		expect(Array.from(at)).toEqual([10, 12.5, 20, 10, 0]);
	});

	it('makes nothing up outside, across a hole, or beside a missing value', () => {
		const holed = channel([0, 1, 2, 3, 9, 10], [1, 1, NaN, 1, 1, 1]);
		const at = valuesAt(holed, Float64Array.of(-1, 0.5, 1.5, 2.5, 5, 9.5, 11));
		expect(Array.from(at)).toEqual([NaN, 1, NaN, NaN, NaN, 1, NaN]);
		expect(Array.from(valuesAt(channel([], []), Float64Array.of(1)))).toEqual([NaN]);
	});
});
