import { describe, expect, it } from 'vitest';
import { countsInRate } from '$lib/slip/countsInRate';

const event = (kind: 'slip' | 'failed pick-up', value: number, observed = true) => ({
	kind,
	observed,
	overrunCrankDeg: { value, lower: value - 20, upper: value + 20 }
});

describe('countsInRate', () => {
	it('counts a slip from 90 crank degrees on that begins on an observed stretch', () => {
		expect(countsInRate(event('slip', 90))).toBe(true);
		expect(countsInRate(event('slip', 89.9))).toBe(false);
		expect(countsInRate(event('slip', 400, false))).toBe(false);
	});

	it('leaves other kinds to figures of their own', () => {
		expect(countsInRate(event('failed pick-up', 200))).toBe(false);
	});
});
