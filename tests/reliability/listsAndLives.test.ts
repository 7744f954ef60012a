import { describe, expect, it } from 'vitest';
import { holm } from '$lib/reliability/holm';
import { randomNumbers } from '$lib/reliability/randomNumbers';
import { rootBetween } from '$lib/reliability/rootBetween';
import { sampleQuantile } from '$lib/reliability/sampleQuantile';
import { twoListEstimate } from '$lib/reliability/twoListEstimate';
import { weibullAgeByShare } from '$lib/reliability/weibullAgeByShare';
import { weibullLife, type Life } from '$lib/reliability/weibullLife';

describe('twoListEstimate', () => {
	it('has exact limits that leave at most half of the rest in each tail (naive draws without replacement)', () => {
		const got = twoListEstimate(9, 7, 4, 0.9);
		const draw = randomNumbers(2);
		const overlap = (total: number) => {
			let both = 0;
			const left = Array.from({ length: total }, (_, i) => i < 9);
			for (let i = 0; i < 7; i++) if (left.splice(draw.below(left.length), 1)[0]) both++;
			return both;
		};
		const chance = (total: number, holds: (both: number) => boolean) => {
			let times = 0;
			for (let i = 0; i < 20_000; i++) if (holds(overlap(total))) times++;
			return times / 20_000;
		};
		expect(chance(got.upper, (both) => both >= 4)).toBeGreaterThan(0.044);
		expect(chance(got.upper + 1, (both) => both >= 4)).toBeLessThan(0.056);
	});

	it('says that lists without a common event carry no information', () => {
		expect(twoListEstimate(18, 6, 0, 0.95)).toMatchObject({
			total: 132,
			upper: Infinity,
			emptyOverlap: true
		});
		expect(twoListEstimate(0, 0, 0, 0.95)).toMatchObject({ total: 0, seen: 0, upper: Infinity });
	});

	it('finds nothing unseen when both lists are the same', () => {
		const got = twoListEstimate(12, 12, 12, 0.95);
		expect(got).toMatchObject({ total: 12, variance: 0, seen: 12, lower: 12 });
		expect(got.unseenLogLower).toBeNaN();
	});

	it('is too low when both lists find the same kind of event (seeded lists that depend on each other)', () => {
		const draw = randomNumbers(8);
		let sum = 0;
		for (let run = 0; run < 300; run++) {
			let [first, second, both] = [0, 0, 0];
			for (let event = 0; event < 60; event++) {
				const large = draw.next() < 0.5;
				const [a, b] = [draw.next() < (large ? 0.9 : 0.2), draw.next() < (large ? 0.9 : 0.2)];
				first += a ? 1 : 0;
				second += b ? 1 : 0;
				both += a && b ? 1 : 0;
			}
			sum += twoListEstimate(first, second, both, 0.95).total;
		}
		expect(sum / 300).toBeLessThan(50);
	});

	it('refuses more on both than on one', () => {
		expect(() => twoListEstimate(3, 5, 4, 0.95)).toThrow(/onBoth .* 4/);
	});
});

describe('weibullLife', () => {
	/** seeded lives, censored at 1000 */
	const lives = (seed: number, parts: number): Life[] => {
		const draw = randomNumbers(seed);
		return Array.from({ length: parts }, () => {
			const age = 900 * (-Math.log(1 - draw.next())) ** (1 / 2);
			return { age: Math.min(age, 1000), failed: age <= 1000 };
		});
	};

	it('stands on the summit of the likelihood, written out (naive steps around it)', () => {
		const parts = lives(5, 25);
		const height = (shape: number, scale: number) =>
			parts.reduce(
				(sum, { age, failed }) =>
					sum - (age / scale) ** shape + (failed ? Math.log(shape / age) + shape * Math.log(age / scale) : 0),
				0
			);
		const fit = weibullLife(parts, 0.95)!;
		expect(fit.logLikelihood).toBeCloseTo(height(fit.shape, fit.scale), 8);
		for (const [k, s] of [
			[1.02, 1],
			[0.98, 1],
			[1, 1.02],
			[1, 0.98]
		])
			expect(height(fit.shape * k, fit.scale * s)).toBeLessThan(fit.logLikelihood);
	});

	it('covers the true shape and age by which one in ten has failed nearly as often as it says (600 seeded)', () => {
		let [shape, tenth] = [0, 0];
		const truth = 900 * (-Math.log(0.9)) ** 0.5;
		for (let seed = 0; seed < 600; seed++) {
			const fit = weibullLife(lives(seed, 40), 0.95)!;
			if (fit.shapeLower <= 2 && fit.shapeUpper >= 2) shape++;
			const got = weibullAgeByShare(fit, 0.1, 0.95);
			if (got.lower <= truth && got.upper >= truth) tenth++;
		}
		expect(shape / 600).toBeGreaterThan(0.92);
		expect(tenth / 600).toBeGreaterThan(0.92);
	});

	it('is the exponential when the shape is forced by the data to 1 (limiting case: scale = total age / failures)', () => {
		const fit = weibullLife(
			[
				{ age: 10, failed: true },
				{ age: 25, failed: true },
				{ age: 60, failed: true },
				{ age: 125, failed: false }
			],
			0.95
		)!;
		const sum = [10, 25, 60, 125].reduce((total, age) => total + (age / fit.scale) ** fit.shape, 0);
		expect(sum).toBeCloseTo(3, 8);
	});

	it('comes to nothing without a failure or without anything that tells ages apart, and marks few failures', () => {
		expect(weibullLife([{ age: 500, failed: false }], 0.95)).toBeNull();
		expect(weibullLife([], 0.95)).toBeNull();
		expect(
			weibullLife(
				[
					{ age: 300, failed: true },
					{ age: 300, failed: true }
				],
				0.95
			)
		).toBeNull();
		expect(weibullLife(lives(1, 40), 0.95)!.fewFailures).toBe(false);
		expect(
			weibullLife(
				[
					{ age: 300, failed: true },
					{ age: 500, failed: false }
				],
				0.95
			)!.fewFailures
		).toBe(true);
	});
});

describe('holm', () => {
	it('is the step-down correction worked by hand', () => {
		const got = holm([0.01, 0.04, 0.03, 0.005]);
		[0.03, 0.06, 0.06, 0.02].forEach((p, i) => expect(got[i]).toBeCloseTo(p, 12));
	});

	it('raises no false alarm among twenty idle questions more often than it says (4,000 seeded sets)', () => {
		const draw = randomNumbers(10);
		let alarms = 0;
		for (let i = 0; i < 4000; i++)
			if (Math.min(...holm(Array.from({ length: 20 }, () => draw.next()))) < 0.05) alarms++;
		expect(alarms / 4000).toBeLessThan(0.05 + 4 * 0.0035);
	});

	it('keeps ties equal, one question as it is, and questions that could not be asked apart', () => {
		expect(holm([0.02, 0.02])).toEqual([0.04, 0.04]);
		expect(holm([0.3])).toEqual([0.3]);
		expect(holm([0.3, NaN])).toEqual([0.3, NaN]);
		expect(holm([])).toEqual([]);
		expect(holm([0.9, 0.8])).toEqual([1, 1]);
		expect(() => holm([1.2])).toThrow(/1.2/);
	});
});

describe('rootBetween and sampleQuantile', () => {
	it('find a root to the last digit, an end that is one, and none without a change of sign', () => {
		expect(rootBetween((x) => x * x - 2, 0, 2)).toBeCloseTo(Math.SQRT2, 14);
		expect(rootBetween((x) => x, 0, 5)).toBe(0);
		expect(rootBetween((x) => x * x + 1, -1, 1)).toBeNaN();
	});

	it('lie on straight lines between neighbours', () => {
		expect(sampleQuantile([1, 2, 3, 4], 0.5)).toBe(2.5);
		expect(sampleQuantile([1, 2, 3, 4], 0)).toBe(1);
		expect(sampleQuantile([1, Infinity], 1)).toBe(Infinity);
		expect(sampleQuantile([], 0.5)).toBeNaN();
	});
});
