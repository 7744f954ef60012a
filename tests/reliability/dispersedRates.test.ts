import { describe, expect, it } from 'vitest';
import { borrowableDispersion } from '$lib/reliability/borrowableDispersion';
import { bootstrapRate } from '$lib/reliability/bootstrapRate';
import { clusteredCount } from '$lib/reliability/clusteredCount';
import { conditionalRateRatio } from '$lib/reliability/conditionalRateRatio';
import { dispersion } from '$lib/reliability/dispersion';
import { negativeBinomialRate } from '$lib/reliability/negativeBinomialRate';
import { poissonRateLimits } from '$lib/reliability/poissonRateLimits';
import { quasiPoissonRate } from '$lib/reliability/quasiPoissonRate';
import { randomNumbers } from '$lib/reliability/randomNumbers';
import { unitTotals, type UnitCount } from '$lib/reliability/unitCounts';
import { widestRateInterval } from '$lib/reliability/widestRateInterval';
import { widestRateRatio } from '$lib/reliability/widestRateRatio';

const outings = (counts: readonly number[], exposure = 40): UnitCount[] =>
	counts.map((count) => ({ count, exposure }));
const ONE_BAD = outings([0, 0, 0, 0, 0, 0, 0, 0, 0, 23, 0, 1, 0, 0, 0, 0, 0, 1, 0, 0]);
const NONE = outings([0, 0, 0, 0, 0]);

/** single events at one rate, seeded */
function single(seed: number, units: number, mean: number): UnitCount[] {
	const draw = randomNumbers(seed);
	return Array.from({ length: units }, () => ({ count: draw.poisson(mean), exposure: 40 }));
}

/** log likelihood of counts under a negative binomial, with log gamma as a sum: the naive reference */
function logLikelihood(units: readonly UnitCount[], rate: number, size: number): number {
	let sum = 0;
	for (const { count, exposure } of units) {
		const mean = rate * exposure;
		for (let i = 0; i < count; i++) sum += Math.log(size + i) - Math.log(i + 1);
		sum += size * Math.log(size / (size + mean)) + count * Math.log(mean / (size + mean));
	}
	return sum;
}

describe('unitTotals', () => {
	it('adds up, leaves units without exposure out of the number, and refuses events without exposure', () => {
		expect(unitTotals([...outings([1, 2]), { count: 0, exposure: 0 }])).toEqual({
			count: 3,
			exposure: 80,
			unitCount: 2,
			rate: 3 / 80
		});
		expect(unitTotals([]).rate).toBeNaN();
		expect(() => unitTotals([{ count: 1, exposure: 0 }])).toThrow(/exposure is 0/);
	});
});

describe('dispersion', () => {
	it('is the sample variance over the mean when all exposures are equal (naive)', () => {
		const counts = [0, 3, 1, 7, 0, 2];
		const mean = counts.reduce((a, b) => a + b) / 6;
		const variance = counts.reduce((a, b) => a + (b - mean) ** 2, 0) / 5;
		expect(dispersion(outings(counts))).toBeCloseTo(variance / mean, 12);
	});

	it('lies around 1 for single events (300 seeded series)', () => {
		let sum = 0;
		for (let seed = 0; seed < 300; seed++) sum += dispersion(single(seed, 20, 2));
		// standard error about sqrt(2 / 19 / 300) = 0.019
		expect(Math.abs(sum / 300 - 1)).toBeLessThan(0.08);
	});

	it('cannot be told without events or from one unit', () => {
		expect(dispersion(NONE)).toBeNaN();
		expect(dispersion(outings([4]))).toBeNaN();
		expect(dispersion([])).toBeNaN();
	});
});

describe('quasiPoissonRate', () => {
	it('never narrows for counts that scatter less than chance', () => {
		const even = outings([2, 2, 2, 2, 2, 2]);
		const wild = quasiPoissonRate(outings([2, 2, 2, 2, 2, 2].map((n, i) => (i % 2 ? 2 * n : 0))), 0.95);
		const got = quasiPoissonRate(even, 0.95);
		expect(got.dispersion).toBe(0);
		expect(got.upper / got.rate).toBeCloseTo(Math.exp(2.570582 / Math.sqrt(12)), 5);
		expect(wild.upper).toBeGreaterThan(got.upper);
	});

	it('gives the exact limits when there is nothing to estimate scatter from', () => {
		expect(quasiPoissonRate(NONE, 0.95)).toMatchObject({
			...poissonRateLimits(0, 200, 0.95),
			estimated: false
		});
		expect(quasiPoissonRate(outings([5]), 0.95)).toMatchObject(poissonRateLimits(5, 40, 0.95));
		expect(quasiPoissonRate([], 0.95)).toMatchObject({ lower: 0, upper: Infinity });
	});
});

describe('negativeBinomialRate', () => {
	it('stands on the summit of the likelihood (naive steps around it)', () => {
		const units = [0, 0, 7, 1, 0, 12, 0, 2, 0, 5].map((count, i) => ({ count, exposure: 20 + 5 * i }));
		const { rate, extraVariance } = negativeBinomialRate(units, 0.95);
		const summit = logLikelihood(units, rate, 1 / extraVariance);
		for (const [byRate, bySize] of [
			[1.01, 1],
			[0.99, 1],
			[1, 1.02],
			[1, 0.98]
		])
			expect(logLikelihood(units, rate * byRate, bySize / extraVariance)).toBeLessThan(summit);
	});

	it('gives the exact limits for counts that scatter no more than single events, one unit, or none', () => {
		for (const units of [outings([2, 2, 3, 2]), outings([3]), NONE]) {
			const got = negativeBinomialRate(units, 0.95);
			const { count, exposure } = unitTotals(units);
			expect(got).toMatchObject({ ...poissonRateLimits(count, exposure, 0.95), fitted: false });
		}
	});

	it('finds the spread that seeded outings were drawn with, roughly', () => {
		const draw = randomNumbers(31);
		// half of the outings have no rate at all, half a double one: extra variance 1
		const units = Array.from({ length: 4000 }, () => ({
			count: draw.poisson(draw.next() < 0.5 ? 0 : 6),
			exposure: 40
		}));
		const got = negativeBinomialRate(units, 0.95);
		expect(got.rate * 40).toBeCloseTo(3, 0);
		expect(got.extraVariance).toBeGreaterThan(0.7);
	});
});

describe('bootstrapRate', () => {
	it('never reads as (0, 0): units without any event get the exact limits', () => {
		const got = bootstrapRate(NONE, 0.95, { seed: 1, resamples: 500 });
		expect(got.upper).toBeCloseTo(poissonRateLimits(0, 200, 0.95).upper, 12);
		expect(got.drawn).toBe(false);
	});

	it('repeats for the same seed and comes near the normal limits for many even units', () => {
		const units = single(3, 400, 4);
		const got = bootstrapRate(units, 0.95, { seed: 6, resamples: 2000 });
		expect(bootstrapRate(units, 0.95, { seed: 6, resamples: 2000 })).toEqual(got);
		const wanted = Math.sqrt(unitTotals(units).count) / unitTotals(units).exposure;
		expect(got.standardError / wanted).toBeCloseTo(1, 0);
	});
});

describe('clusteredCount', () => {
	it('weighs single events one each when they lie in units of their own', () => {
		const got = clusteredCount(outings([1, 0, 1, 0, 0, 1, 0, 0, 0, 0]));
		expect(got).toMatchObject({ total: 3, variance: 3, heaviest: 1, assumesSingleEvents: true });
	});

	it('borrows a dispersion as the least, and then no longer assumes single events', () => {
		const got = clusteredCount(outings([1, 0, 1, 0]), 2.5);
		expect(got).toMatchObject({ variance: 5, heaviest: 2.5, assumesSingleEvents: false });
		expect(clusteredCount(ONE_BAD, 2.5).usedDispersion).toBeGreaterThan(15);
	});
});

describe('borrowableDispersion', () => {
	it('lends what enough events in enough units show, and nothing from fewer', () => {
		expect(borrowableDispersion(ONE_BAD)).toBe(clusteredCount(ONE_BAD).ownDispersion);
		expect(borrowableDispersion(outings([9, 0, 0, 0, 0, 0, 0, 0, 0, 1]))).toBeUndefined();
		expect(borrowableDispersion(outings([30, 40]))).toBeUndefined();
		expect(borrowableDispersion([])).toBeUndefined();
	});
});

describe('widestRateInterval', () => {
	it('is not narrow when a burst in one unit holds nearly all events', () => {
		const exact = poissonRateLimits(25, 800, 0.95);
		const got = widestRateInterval(ONE_BAD, 0.95);
		expect(got.upper).toBeGreaterThan(2 * exact.upper);
		expect(got.lower).toBeLessThan(exact.lower / 3);
		expect(got.decidedBy).not.toBe('single');
	});

	it('contains the exact and, from ten events, the quasi-Poisson interval (seeded comparison)', () => {
		for (let seed = 0; seed < 40; seed++) {
			const units = single(seed, 12, 0.2 + seed / 10);
			const { count, exposure } = unitTotals(units);
			const got = widestRateInterval(units, 0.95);
			const exact = poissonRateLimits(count, exposure, 0.95);
			expect(got.lower).toBeLessThanOrEqual(exact.lower);
			expect(got.upper).toBeGreaterThanOrEqual(exact.upper);
			if (count >= 10) expect(got.upper).toBeGreaterThanOrEqual(quasiPoissonRate(units, 0.95).upper);
		}
	});

	it('is the exact interval, and says what it assumes, for no events and for one', () => {
		for (const units of [NONE, outings([0, 1, 0, 0, 0])]) {
			const { count, exposure } = unitTotals(units);
			const exact = poissonRateLimits(count, exposure, 0.95);
			const got = widestRateInterval(units, 0.95);
			expect(got.lower).toBeCloseTo(exact.lower, 12);
			expect(got.upper).toBeCloseTo(exact.upper, 12);
			expect(got).toMatchObject({ decidedBy: 'single', assumesSingleEvents: true });
		}
	});

	it('bounds no events by the size of burst that the predecessor showed', () => {
		const got = widestRateInterval(NONE, 0.95, 3);
		expect(got.upper).toBeCloseTo(3 * poissonRateLimits(0, 200, 0.95).upper, 10);
		expect(got).toMatchObject({ rate: 0, lower: 0, decidedBy: 'bursts', assumesSingleEvents: false });
	});

	it('learns nothing without exposure', () => {
		expect(widestRateInterval([], 0.95)).toMatchObject({ rate: NaN, lower: 0, upper: Infinity });
		expect(widestRateInterval([{ count: 0, exposure: 0 }], 0.95).upper).toBe(Infinity);
	});
});

describe('widestRateRatio', () => {
	it('is the exact conditional interval when events come singly', () => {
		const a = outings([0, 1, 0, 0, 0, 0, 1, 0, 0, 0]);
		const b = outings([1, 1, 0, 1, 0, 1, 1, 0, 1, 1]);
		const exact = conditionalRateRatio({ countA: 2, exposureA: 400, countB: 7, exposureB: 400 }, 0.95);
		const got = widestRateRatio(a, b, 0.95);
		expect(got.lower).toBeCloseTo(exact.lower, 10);
		expect(got.upper).toBeCloseTo(exact.upper, 10);
		expect(got.decidedBy).toBe('single');
		expect(got.assumesSingleEvents).toBe(true);
	});

	it('does not let a burst on the old side prove a better new side', () => {
		const got = widestRateRatio(outings(new Array<number>(20).fill(0).fill(1, 0, 6)), ONE_BAD, 0.95);
		const exact = conditionalRateRatio({ countA: 6, exposureA: 800, countB: 25, exposureB: 800 }, 0.95);
		expect(exact.upper).toBeLessThan(1);
		expect(got.upper).toBeGreaterThan(1);
		expect(got.decidedBy).toBe('bursts');
	});

	it("borrows the old side's dispersion for a new side with few events", () => {
		const bursty = outings([0, 6, 0, 9, 0, 3, 0, 0, 7, 0, 4, 0]);
		const got = widestRateRatio(NONE, bursty, 0.95);
		expect(got.usedDispersionA).toBeGreaterThan(2);
		expect(got.assumesSingleEvents).toBe(false);
	});

	it('says nothing without events or exposure', () => {
		expect(widestRateRatio(NONE, NONE, 0.95)).toMatchObject({ ratio: NaN, lower: 0, upper: Infinity });
		expect(widestRateRatio(outings([1]), [], 0.95)).toMatchObject({ ratio: NaN, upper: Infinity });
	});
});
