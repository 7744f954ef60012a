import { describe, expect, it } from 'vitest';
import { poissonRateLimits } from '$lib/reliability/poissonRateLimits';

/** P(X <= count) for a Poisson mean, summed term by term: the naive reference */
function poissonDistribution(count: number, mean: number): number {
	let term = Math.exp(-mean);
	let sum = term;
	for (let i = 1; i <= count; i++) sum += term *= mean / i;
	return sum;
}

describe('poissonRateLimits', () => {
	it('leaves exactly half of the rest in each tail (naive Poisson sum as the reference)', () => {
		for (const count of [1, 2, 5, 17, 60]) {
			const { lower, upper } = poissonRateLimits(count, 1, 0.9);
			expect(1 - poissonDistribution(count - 1, lower)).toBeCloseTo(0.05, 10);
			expect(poissonDistribution(count, upper)).toBeCloseTo(0.05, 10);
		}
	});

	it('gives a lower limit of exactly 0 and an upper bound above 0 for no events', () => {
		const got = poissonRateLimits(0, 250, 0.95);
		expect(got.lower).toBe(0);
		expect(got.upper).toBeCloseTo(-Math.log(0.025) / 250, 12);
	});

	it('says that nothing was learned without exposure', () => {
		expect(poissonRateLimits(0, 0, 0.95)).toEqual({ rate: NaN, lower: 0, upper: Infinity });
	});

	it('scales with the exposure', () => {
		const per = poissonRateLimits(4, 1, 0.95);
		const scaled = poissonRateLimits(4, 10, 0.95);
		expect(scaled.lower).toBeCloseTo(per.lower / 10, 12);
		expect(scaled.upper).toBeCloseTo(per.upper / 10, 12);
	});

	it('approaches the normal limits for many events', () => {
		const { lower, upper } = poissonRateLimits(1_000_000, 1, 0.95);
		expect(lower).toBeCloseTo(1_000_000 - 1960, -1);
		expect(upper).toBeCloseTo(1_000_000 + 1960, -1);
	});

	it('refuses what is no count, exposure or confidence and names it', () => {
		expect(() => poissonRateLimits(-1, 1, 0.95)).toThrow(/count .* -1/);
		expect(() => poissonRateLimits(1.5, 1, 0.95)).toThrow(/count .* 1\.5/);
		expect(() => poissonRateLimits(1, NaN, 0.95)).toThrow(/exposure .* NaN/);
		expect(() => poissonRateLimits(1, 1, 95)).toThrow(/confidence .* 95/);
	});
});
