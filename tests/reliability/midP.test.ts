import { describe, expect, it } from 'vitest';
import { conditionalRateRatio } from '$lib/reliability/conditionalRateRatio';
import { conditionalRateRatioMidP } from '$lib/reliability/conditionalRateRatioMidP';
import { poissonRateLimits } from '$lib/reliability/poissonRateLimits';
import { poissonRateMidPLimits } from '$lib/reliability/poissonRateMidPLimits';
import { randomNumbers } from '$lib/reliability/randomNumbers';

/** P(X < count) + P(X = count) / 2 for a Poisson mean, term by term: the naive reference */
function poissonMidP(count: number, mean: number): number {
	let term = Math.exp(-mean);
	let sum = count === 0 ? term / 2 : term;
	for (let i = 1; i <= count; i++) sum += (term *= mean / i) * (i === count ? 0.5 : 1);
	return sum;
}

/** the same for a binomial count of n with this share */
function binomialMidP(count: number, n: number, share: number): number {
	let sum = 0;
	for (let i = 0, ways = 1; i <= count; ways = (ways * (n - i)) / (i + 1), i++)
		sum += ways * share ** i * (1 - share) ** (n - i) * (i === count ? 0.5 : 1);
	return sum;
}

describe('poissonRateMidPLimits', () => {
	it('leaves half of the rest in each tail, counting half of the count itself (naive sum)', () => {
		for (const count of [1, 2, 7, 40]) {
			const { lower, upper } = poissonRateMidPLimits(count, 1, 0.9);
			expect(poissonMidP(count, upper)).toBeCloseTo(0.05, 10);
			expect(poissonMidP(count, lower)).toBeCloseTo(0.95, 10);
		}
	});

	it('lies inside the exact limits on seeded counts and scales with the exposure', () => {
		const draw = randomNumbers(9);
		for (let i = 0; i < 40; i++) {
			const count = 1 + draw.poisson(6);
			const exposure = 10 + 500 * draw.next();
			const exact = poissonRateLimits(count, exposure, 0.95);
			const mid = poissonRateMidPLimits(count, exposure, 0.95);
			expect(mid.lower).toBeGreaterThan(exact.lower);
			expect(mid.upper).toBeLessThan(exact.upper);
			expect(mid.upper * exposure).toBeCloseTo(poissonRateMidPLimits(count, 1, 0.95).upper, 9);
		}
	});

	it('gives the rule of three and a lower limit of exactly 0 for no events, and nothing without exposure', () => {
		const none = poissonRateMidPLimits(0, 300, 0.95);
		expect(none.lower).toBe(0);
		expect(none.upper).toBeCloseTo(-Math.log(0.05) / 300, 12);
		expect(poissonRateMidPLimits(0, 0, 0.95)).toEqual({ rate: NaN, lower: 0, upper: Infinity });
	});
});

describe('conditionalRateRatioMidP', () => {
	it('leaves half of the rest in each tail of the binomial (naive sum, seeded counts)', () => {
		const draw = randomNumbers(4);
		for (let i = 0; i < 25; i++) {
			const [a, b] = [1 + draw.below(9), 1 + draw.below(9)];
			const got = conditionalRateRatioMidP({ countA: a, exposureA: 130, countB: b, exposureB: 70 }, 0.9);
			const share = (ratio: number) => (ratio * 130) / (ratio * 130 + 70);
			expect(binomialMidP(a, a + b, share(got.upper))).toBeCloseTo(0.05, 9);
			expect(binomialMidP(a, a + b, share(got.lower))).toBeCloseTo(0.95, 9);
		}
	});

	it('lies inside the exact limits and keeps their ends of 0 and Infinity', () => {
		for (const [countA, countB] of [
			[0, 4],
			[4, 0],
			[1, 1],
			[3, 8]
		]) {
			const series = { countA, exposureA: 400, countB, exposureB: 300 };
			const exact = conditionalRateRatio(series, 0.95);
			const mid = conditionalRateRatioMidP(series, 0.95);
			expect(mid.lower).toBeGreaterThanOrEqual(exact.lower);
			expect(mid.upper).toBeLessThanOrEqual(exact.upper);
			expect(mid.lower === 0).toBe(countA === 0);
			expect(mid.upper === Infinity).toBe(countB === 0);
		}
	});

	it('turns over when the series change places', () => {
		const one = conditionalRateRatioMidP({ countA: 2, exposureA: 31, countB: 9, exposureB: 45 }, 0.95);
		const other = conditionalRateRatioMidP({ countA: 9, exposureA: 45, countB: 2, exposureB: 31 }, 0.95);
		expect(one.lower).toBeCloseTo(1 / other.upper, 9);
		expect(one.pValue).toBeCloseTo(other.pValue, 12);
	});

	it('says nothing without any event or without exposure', () => {
		for (const series of [
			{ countA: 0, exposureA: 10, countB: 0, exposureB: 10 },
			{ countA: 2, exposureA: 10, countB: 0, exposureB: 0 }
		])
			expect(conditionalRateRatioMidP(series, 0.95)).toEqual({
				ratio: NaN,
				lower: 0,
				upper: Infinity,
				pValue: 1
			});
	});
});
