import { describe, expect, it } from 'vitest';
import { conditionalRateRatio } from '$lib/reliability/conditionalRateRatio';
import { countedAgainstExpected, type ExpectedStratum } from '$lib/reliability/countedAgainstExpected';
import { countedAgainstExpectedBootstrap } from '$lib/reliability/countedAgainstExpectedBootstrap';
import { countedAgainstExpectedDeltaLog } from '$lib/reliability/countedAgainstExpectedDeltaLog';
import { countedOverKnown } from '$lib/reliability/countedOverKnown';
import { poissonRateLimits } from '$lib/reliability/poissonRateLimits';
import { randomNumbers } from '$lib/reliability/randomNumbers';
import { weightedCountLimits } from '$lib/reliability/weightedCountLimits';

const stratum = (
	referenceCount: number,
	referenceExposure: number,
	count: number,
	exposure: number
): ExpectedStratum => ({ referenceCount, referenceExposure, count, exposure });

describe('weightedCountLimits', () => {
	it('is the exact Poisson interval for single events (independent implementation)', () => {
		for (const count of [0, 1, 4, 30]) {
			const exact = poissonRateLimits(count, 1, 0.95);
			const got = weightedCountLimits({ total: count, variance: count, heaviest: 1 }, 0.95);
			expect(got.lower).toBeCloseTo(exact.lower, 10);
			expect(got.upper).toBeCloseTo(exact.upper, 10);
		}
	});

	it('is the exact interval of the bursts, scaled, when every burst has the same size', () => {
		const bursts = poissonRateLimits(5, 1, 0.95);
		const got = weightedCountLimits({ total: 15, variance: 45, heaviest: 3 }, 0.95);
		expect(got.lower).toBeCloseTo(3 * bursts.lower, 10);
		expect(got.upper).toBeCloseTo(3 * bursts.upper, 10);
	});

	it('covers the mean of seeded bursts of unequal size at least as often as it says', () => {
		const draw = randomNumbers(21);
		let held = 0;
		for (let run = 0; run < 2000; run++) {
			let [total, variance, heaviest] = [0, 0, 1];
			for (let bursts = draw.poisson(8); bursts > 0; bursts--) {
				const size = 1 + draw.below(4);
				total += size;
				variance += size * size;
				heaviest = Math.max(heaviest, size);
			}
			const { lower, upper } = weightedCountLimits({ total, variance, heaviest }, 0.95);
			if (lower <= 20 && upper >= 20) held++;
		}
		expect(held / 2000).toBeGreaterThan(0.945);
	});
});

describe('countedAgainstExpected', () => {
	it('adds up rate times exposure over the strata (worked by hand)', () => {
		// 4/200 x 100 + 9/300 x 50 = 2 + 1.5
		const got = countedAgainstExpected([stratum(4, 200, 1, 100), stratum(9, 300, 0, 50)], 0.95);
		expect(got.expected).toBeCloseTo(3.5, 12);
		expect(got.expectedSd).toBeCloseTo(Math.sqrt(4 / 4 + 9 / 36), 12);
		expect(got.ratio).toBeCloseTo(1 / 3.5, 12);
		expect(got.strataCompared).toBe(2);
	});

	it('is the exact conditional rate ratio when one stratum holds all (seeded comparison)', () => {
		const draw = randomNumbers(5);
		for (let i = 0; i < 40; i++) {
			const [a, b] = [draw.poisson(3), draw.poisson(6)];
			const [exposureA, exposureB] = [100 + 900 * draw.next(), 100 + 900 * draw.next()];
			if (a + b === 0) continue;
			const exact = conditionalRateRatio({ countA: a, exposureA, countB: b, exposureB }, 0.95);
			const got = countedAgainstExpected([stratum(b, exposureB, a, exposureA)], 0.95);
			expect(got.lower / exact.lower || 1).toBeCloseTo(1, 9);
			expect(got.upper === exact.upper ? 1 : got.upper / exact.upper).toBeCloseTo(1, 9);
		}
	});

	it('comes to the interval for a known expected number when the reference was watched for ever', () => {
		const known = countedOverKnown(3, 6, 0.95);
		const got = countedAgainstExpected([stratum(6e7, 1e10, 3, 1000)], 0.95);
		expect(got.lower).toBeCloseTo(known.lower, 3);
		expect(got.upper).toBeCloseTo(known.upper, 3);
	});

	it('leaves out exposure on which the reference was never watched, and tells how much', () => {
		const got = countedAgainstExpected([stratum(10, 500, 2, 250), stratum(0, 0, 3, 900)], 0.95);
		expect(got).toMatchObject({
			counted: 2,
			expected: 5,
			exposureLeftOut: 900,
			countLeftOut: 3,
			exposureCompared: 250
		});
	});

	it('gives a new series no credit for the reference in strata where it was not watched itself', () => {
		const soft = stratum(1, 1000, 0, 500);
		const alone = countedAgainstExpected([soft], 0.95);
		const beside = countedAgainstExpected([soft, stratum(60, 200, 0, 0)], 0.95);
		expect(beside.expected).toBe(alone.expected);
		expect(beside.upper).toBe(alone.upper);
	});

	it('gives an upper limit, never "0", after no event', () => {
		const got = countedAgainstExpected([stratum(8, 400, 0, 200), stratum(3, 90, 0, 40)], 0.95);
		expect(got.ratio).toBe(0);
		expect(got.lower).toBe(0);
		expect(got.upper).toBeGreaterThan(0.5);
	});

	it('bounds the ratio from below only when nothing was expected, and says nothing when nothing was comparable', () => {
		const none = countedAgainstExpected([stratum(0, 400, 2, 200)], 0.95);
		expect(none.ratio).toBe(Infinity);
		expect(none.lower).toBeGreaterThan(0);
		expect(none.upper).toBe(Infinity);
		expect(countedAgainstExpected([stratum(0, 0, 2, 200)], 0.95)).toMatchObject({
			ratio: NaN,
			lower: 0,
			upper: Infinity,
			strataCompared: 0
		});
		expect(countedAgainstExpected([], 0.95).ratio).toBeNaN();
	});

	it('widens on both sides when events come in bursts, and never narrows for a dispersion below 1', () => {
		const strata = [stratum(20, 500, 4, 200), stratum(9, 100, 3, 60)];
		const single = countedAgainstExpected(strata, 0.95);
		const bursts = countedAgainstExpected(strata, 0.95, { counted: 2.5, reference: 2.5 });
		expect(bursts.lower).toBeLessThan(single.lower);
		expect(bursts.upper).toBeGreaterThan(single.upper);
		expect(countedAgainstExpected(strata, 0.95, { counted: 0.4, reference: 0.2 })).toEqual(single);
	});

	it('refuses events without exposure and broken counts', () => {
		expect(() => countedAgainstExpected([stratum(1, 10, 2, 0)], 0.95)).toThrow(/count .* 2/);
		expect(() => countedAgainstExpected([stratum(1, 0, 0, 5)], 0.95)).toThrow(/referenceCount .* 1/);
		expect(() => countedAgainstExpected([stratum(1.5, 10, 0, 5)], 0.95)).toThrow(/referenceCount .* 1.5/);
	});
});

describe('the two checks beside countedAgainstExpected', () => {
	const many = [stratum(900, 3000, 400, 1200), stratum(700, 900, 350, 500)];

	it('agree with it when there are many events', () => {
		const got = countedAgainstExpected(many, 0.95);
		const delta = countedAgainstExpectedDeltaLog(many, 0.95)!;
		const drawn = countedAgainstExpectedBootstrap(many, 0.95, { seed: 3, resamples: 4000 })!;
		for (const other of [delta, drawn]) {
			expect(other.lower / got.lower).toBeCloseTo(1, 1);
			expect(other.upper / got.upper).toBeCloseTo(1, 1);
		}
	});

	it('say that they cannot speak where nothing was counted or nothing expected', () => {
		for (const strata of [[stratum(5, 100, 0, 50)], [stratum(0, 100, 2, 50)]]) {
			expect(countedAgainstExpectedDeltaLog(strata, 0.95)).toBeNull();
			expect(countedAgainstExpectedBootstrap(strata, 0.95, { seed: 1, resamples: 200 })).toBeNull();
		}
	});

	it('repeat the same drawn limits for the same seed, and others for another', () => {
		const few = [stratum(12, 300, 4, 120)];
		const drawn = (seed: number) => countedAgainstExpectedBootstrap(few, 0.9, { seed, resamples: 501 });
		expect(drawn(8)).toEqual(drawn(8));
		expect(drawn(8)).not.toEqual(drawn(9));
	});
});
