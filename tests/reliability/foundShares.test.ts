import { describe, expect, it } from 'vitest';
import { clusteredShare } from '$lib/reliability/clusteredShare';
import { foundShareFactor } from '$lib/reliability/foundShareFactor';
import { limitsTimesFactor } from '$lib/reliability/limitsTimesFactor';
import { poissonRateLimits } from '$lib/reliability/poissonRateLimits';
import { randomNumbers } from '$lib/reliability/randomNumbers';

describe('clusteredShare', () => {
	it('is found / tried for one cluster, its variance that of single trials with half a success added', () => {
		const one = clusteredShare([{ weight: 3, tried: 10, found: 8 }]);
		expect(one.share).toBeCloseTo(0.8, 12);
		expect(one.effectiveTrials).toBeCloseTo(10, 12);
		const guarded = 8.5 / 11;
		expect(one.variance).toBeCloseTo((guarded * (1 - guarded)) / 10, 12);
	});

	it('weighs clusters by what they stand for: twice the weight is twice the trials, with less to go by', () => {
		const units = [
			{ weight: 2, tried: 10, found: 10 },
			{ weight: 1, tried: 10, found: 4 }
		];
		const { share, effectiveTrials } = clusteredShare(units);
		expect(share).toBeCloseTo(24 / 30, 12);
		// Kish: (sum of weights)^2 / sum of squares = 30^2 / (4 x 10 + 10)
		expect(effectiveTrials).toBeCloseTo(18, 12);
	});

	it('takes the variance between clusters where they differ more than chance', () => {
		const differing = [10, 10, 10, 0, 0, 0].map((found) => ({ weight: 1, tried: 10, found }));
		const alike = Array.from({ length: 6 }, () => ({ weight: 1, tried: 10, found: 5 }));
		// by hand: 6 / 5 x 6 x 5^2 / 60^2
		expect(clusteredShare(differing).variance).toBeCloseTo(0.05, 12);
		expect(clusteredShare(alike).variance).toBeCloseTo(0.25 / 60, 12);
	});

	it('does not take "all of them" for certain and says nothing without trials', () => {
		expect(clusteredShare([{ weight: 1, tried: 20, found: 20 }]).variance).toBeGreaterThan(0);
		expect(clusteredShare([]).share).toBeNaN();
		expect(() => clusteredShare([{ weight: 1, tried: 2, found: 3 }])).toThrow(RangeError);
	});
});

describe('foundShareFactor', () => {
	it("gives Horvitz and Thompson's sum of counts over shares", () => {
		const { value, lower, upper } = foundShareFactor(
			[
				{ count: 3, share: 0.5, variance: 0 },
				{ count: 1, share: 0.25, variance: 0 },
				{ count: 0, share: 0.01, variance: 1 }
			],
			0.95
		);
		expect([value, lower, upper]).toEqual([2.5, 2.5, 2.5]);
	});

	it('is never below 1 and cannot be given without counts or where nothing is found', () => {
		const near = foundShareFactor([{ count: 4, share: 0.99, variance: 0.01 }], 0.95);
		expect(near.lower).toBe(1);
		expect(near.upper).toBeGreaterThan(1.2);
		expect(foundShareFactor([], 0.95).value).toBeNaN();
		expect(foundShareFactor([{ count: 1, share: 0, variance: 0 }], 0.95).value).toBeNaN();
	});
});

describe('limitsTimesFactor', () => {
	const exact = (value: number) => ({ value, lower: value, upper: value });

	it('scales the limits by a factor that is known exactly', () => {
		const { value, lower, upper } = limitsTimesFactor({ value: 2, lower: 1, upper: 4 }, exact(1.5));
		expect([value, lower, upper].map((figure) => Number(figure.toFixed(12)))).toEqual([3, 1.5, 6]);
	});

	it('of no event keeps 0 and widens the upper limit by that of the factor', () => {
		expect(limitsTimesFactor({ value: 0, lower: 0, upper: 3 }, { value: 1.2, lower: 1, upper: 1.5 })).toEqual(
			{ value: 0, lower: 0, upper: 4.5 }
		);
	});

	it('has no upper limit where the estimate has none, and refuses a factor outside its limits', () => {
		const { upper } = limitsTimesFactor({ value: 1, lower: 0, upper: Infinity }, exact(2));
		expect(upper).toBe(Infinity);
		expect(() => limitsTimesFactor(exact(1), { value: 2, lower: 3, upper: 4 })).toThrow(RangeError);
	});

	it('holds the true rate in at least 94 % of 2,000 drawn programmes that find 60 % of what happens', () => {
		const draw = randomNumbers(29);
		const poisson = (mean: number) => {
			let [count, product] = [0, draw.next()];
			for (const floor = Math.exp(-mean); product > floor; count++) product *= draw.next();
			return count;
		};
		const [trueRate, exposure, share, put] = [1.5, 10, 0.6, 80];
		let held = 0;
		const programmes = 2000;
		for (let programme = 0; programme < programmes; programme++) {
			const count = poisson(trueRate * exposure * share);
			let found = 0;
			for (let trial = 0; trial < put; trial++) if (draw.next() < share) found++;
			const { rate, lower, upper } = poissonRateLimits(count, exposure, 0.95);
			const factor = foundShareFactor(
				[{ count: Math.max(1, count), ...clusteredShare([{ weight: 1, tried: put, found }]) }],
				0.95
			);
			const limits = limitsTimesFactor({ value: rate, lower, upper }, factor);
			if (limits.lower <= trueRate && trueRate <= limits.upper) held++;
		}
		expect(held / programmes).toBeGreaterThan(0.94);
	});
});
