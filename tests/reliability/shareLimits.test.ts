import { describe, expect, it } from 'vitest';
import { randomNumbers } from '$lib/reliability/randomNumbers';
import { shareLimits } from '$lib/reliability/shareLimits';
import { windowAt } from '$lib/reliability/windowAt';

/** P(X <= found) of tried, term by term: the naive reference */
function atMost(found: number, tried: number, share: number): number {
	let sum = 0;
	for (let i = 0, ways = 1; i <= found; ways = (ways * (tried - i)) / (i + 1), i++)
		sum += ways * share ** i * (1 - share) ** (tried - i);
	return sum;
}

describe('shareLimits', () => {
	it('leaves half of the rest in each tail (naive binomial sum, seeded counts)', () => {
		const draw = randomNumbers(15);
		for (let i = 0; i < 30; i++) {
			const tried = 2 + draw.below(40);
			const found = 1 + draw.below(tried - 1);
			const { lower, upper } = shareLimits(found, tried, 0.9);
			expect(atMost(found, tried, upper)).toBeCloseTo(0.05, 9);
			expect(1 - atMost(found - 1, tried, lower)).toBeCloseTo(0.05, 9);
		}
	});

	it('has the closed form of no success and of nothing but successes', () => {
		expect(shareLimits(0, 20, 0.95).upper).toBeCloseTo(1 - 0.025 ** (1 / 20), 12);
		expect(shareLimits(20, 20, 0.95).lower).toBeCloseTo(0.025 ** (1 / 20), 12);
		expect(shareLimits(0, 20, 0.95).lower).toBe(0);
		expect(shareLimits(20, 20, 0.95).upper).toBe(1);
	});

	it('knows nothing when nothing was tried, and refuses more found than tried', () => {
		expect(shareLimits(0, 0, 0.95)).toEqual({ share: NaN, lower: 0, upper: 1 });
		expect(() => shareLimits(3, 2, 0.95)).toThrow(/found .* 3/);
	});
});

describe('windowAt', () => {
	it('finds the last window that has begun (naive search as the reference)', () => {
		const windows = [0, 10, 10, 30, 55].map((from, i) => ({ from, to: [5, 10, 20, 40, 60][i] }));
		for (let age = -1; age < 70; age += 0.5) {
			const naive = windows.filter(({ from }) => from <= age).length - 1;
			expect(windowAt(windows, age)).toBe(naive);
		}
		expect(windowAt([], 3)).toBe(-1);
	});
});
