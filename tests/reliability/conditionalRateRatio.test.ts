import { describe, expect, it } from 'vitest';
import { conditionalRateRatio } from '$lib/reliability/conditionalRateRatio';

describe('conditionalRateRatio', () => {
	it('says nothing when neither series had an event', () => {
		const got = conditionalRateRatio({ countA: 0, exposureA: 10, countB: 0, exposureB: 20 }, 0.95);
		expect(got).toEqual({ ratio: NaN, lower: 0, upper: Infinity, pValue: 1 });
	});

	it('says nothing when a series has no exposure', () => {
		const got = conditionalRateRatio({ countA: 3, exposureA: 10, countB: 0, exposureB: 0 }, 0.95);
		expect(got).toEqual({ ratio: NaN, lower: 0, upper: Infinity, pValue: 1 });
	});

	it('turns over when the series change places', () => {
		const one = conditionalRateRatio({ countA: 7, exposureA: 310, countB: 12, exposureB: 205 }, 0.9);
		const other = conditionalRateRatio({ countA: 12, exposureA: 205, countB: 7, exposureB: 310 }, 0.9);
		expect(one.lower).toBeCloseTo(1 / other.upper, 10);
		expect(one.upper).toBeCloseTo(1 / other.lower, 10);
		expect(one.pValue).toBeCloseTo(other.pValue, 10);
	});

	it('has limits that leave out 1 exactly when the p-value is below what confidence leaves', () => {
		for (let a = 0; a <= 12; a++)
			for (let b = 0; b <= 12; b++) {
				if (a + b === 0) continue;
				const got = conditionalRateRatio({ countA: a, exposureA: 130, countB: b, exposureB: 90 }, 0.95);
				expect(got.lower > 1 || got.upper < 1, `${a} and ${b}`).toBe(got.pValue < 0.05);
			}
	});

	it('gives a bound instead of a number when the second series had no event', () => {
		const got = conditionalRateRatio({ countA: 5, exposureA: 100, countB: 0, exposureB: 100 }, 0.95);
		expect(got.ratio).toBe(Infinity);
		expect(got.lower).toBeGreaterThan(0);
		expect(got.upper).toBe(Infinity);
	});
});
