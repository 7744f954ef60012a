import { describe, expect, it } from 'vitest';
import { shareLimits } from '$lib/reliability/shareLimits';

/** Probability of at least k of n, by summing terms. */
function atLeast(k: number, n: number, p: number): number {
	let sum = 0;
	for (let j = k; j <= n; j++) {
		let term = 1;
		for (let i = 0; i < j; i++) term *= ((n - i) / (j - i)) * p;
		sum += term * (1 - p) ** (n - j);
	}
	return sum;
}

describe('shareLimits', () => {
	it.each([
		[1, 10],
		[27, 30],
		[7, 40],
		[39, 40]
	])(
		'leaves half of the remaining chance beyond either limit, summed term by term: %i of %i',
		(found, tried) => {
			const { lower, upper } = shareLimits(found, tried, 0.9);
			expect(atLeast(found, tried, lower)).toBeCloseTo(0.05, 9);
			expect(1 - atLeast(found + 1, tried, upper)).toBeCloseTo(0.05, 9);
		}
	);

	it('has closed forms where none or all were found: 1 - (a/2)^(1/n) and its mirror image', () => {
		expect(shareLimits(0, 20, 0.95)).toEqual({
			share: 0,
			lower: 0,
			upper: expect.closeTo(1 - 0.025 ** 0.05, 12)
		});
		expect(shareLimits(20, 20, 0.95)).toEqual({
			share: 1,
			lower: expect.closeTo(0.025 ** 0.05, 12),
			upper: 1
		});
	});

	it('knows nothing of what was not tried', () => {
		expect(shareLimits(0, 0, 0.95)).toEqual({ share: NaN, lower: 0, upper: 1 });
	});

	it('refuses what is no count, naming it', () => {
		expect(() => shareLimits(3, 2, 0.95)).toThrow('found must be at most tried (2); it is 3');
		expect(() => shareLimits(0.5, 2, 0.95)).toThrow('found');
		expect(() => shareLimits(1, 2, 1)).toThrow('confidence');
	});
});
