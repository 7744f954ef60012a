import { describe, expect, it } from 'vitest';
import { overrunSteps } from '$lib/slip/overrunSteps';

const overrun = { value: 90, lower: 60, upper: 120 };

describe('overrunSteps', () => {
	it('gives 90 crank degrees in a ratio of 2 as 12 steps of 15 hub degrees, with their limits', () => {
		expect(overrunSteps(overrun, 2, 15)).toEqual({ value: 12, lower: 8, upper: 16 });
	});

	it('gives nothing where the build does not say its step, or no ratio is known', () => {
		expect(overrunSteps(overrun, 2, null)).toBeNull();
		expect(overrunSteps(overrun, 2, 0)).toBeNull();
		expect(overrunSteps(overrun, NaN, 15)).toBeNull();
	});
});
