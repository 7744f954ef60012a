import { describe, expect, it } from 'vitest';
import { fiellerLimits } from '$lib/reliability/fiellerLimits';
import { isotonicRegression, type InfluencePoint } from '$lib/reliability/isotonicRegression';
import { logisticCurve } from '$lib/reliability/logisticCurve';
import { logisticReachesChance } from '$lib/reliability/logisticReachesChance';
import { logisticRegression, type LogisticFit } from '$lib/reliability/logisticRegression';
import { randomNumbers } from '$lib/reliability/randomNumbers';

/** trials whose chance follows an S-curve of x, seeded */
function pulls(seed: number, trials: number): InfluencePoint[] {
	const draw = randomNumbers(seed);
	return Array.from({ length: trials }, () => {
		const x = 20 + 60 * draw.next();
		return { x, events: draw.next() < 1 / (1 + Math.exp(6 - 0.1 * x)) ? 1 : 0, exposure: 1 };
	});
}

function logLikelihood(points: readonly InfluencePoint[], a: number, b: number): number {
	return points.reduce((sum, { x, events, exposure }) => {
		const chance = 1 / (1 + Math.exp(-(a + b * x)));
		return sum + events * Math.log(chance) + (exposure - events) * Math.log(1 - chance);
	}, 0);
}

describe('logisticRegression', () => {
	it('stands on the summit of the likelihood (naive steps around it, seeded trials)', () => {
		for (let seed = 1; seed <= 6; seed++) {
			const points = pulls(seed, 150);
			const fit = logisticRegression(points) as LogisticFit;
			const summit = logLikelihood(points, fit.intercept, fit.slope);
			for (const [da, db] of [
				[0.05, 0],
				[-0.05, 0],
				[0, 0.001],
				[0, -0.001],
				[0.05, -0.001],
				[-0.05, 0.001]
			])
				expect(logLikelihood(points, fit.intercept + da, fit.slope + db)).toBeLessThan(summit);
		}
	});

	it('is the same for trials one by one and pooled by x', () => {
		const single = [10, 10, 10, 20, 20, 30, 30, 30].map((x, i) => ({
			x,
			events: [0, 1, 0, 1, 0, 1, 1, 0][i],
			exposure: 1
		}));
		const pooled = [
			{ x: 10, events: 1, exposure: 3 },
			{ x: 20, events: 1, exposure: 2 },
			{ x: 30, events: 2, exposure: 3 }
		];
		const [one, other] = [single, pooled].map((points) => logisticRegression(points) as LogisticFit);
		expect(one.slope).toBeCloseTo(other.slope, 10);
		expect(one.slopeVariance).toBeCloseTo(other.slopeVariance, 10);
	});

	it('comes to the log odds of two groups when there are two values of x (limiting case)', () => {
		const fit = logisticRegression([
			{ x: 0, events: 3, exposure: 10 },
			{ x: 1, events: 8, exposure: 10 }
		]) as LogisticFit;
		expect(fit.intercept).toBeCloseTo(Math.log(3 / 7), 10);
		expect(fit.slope).toBeCloseTo(Math.log(8 / 2) - Math.log(3 / 7), 10);
		expect(fit.slopeVariance).toBeCloseTo(1 / 3 + 1 / 7 + 1 / 8 + 1 / 2, 10);
	});

	it('says why there is no finite answer', () => {
		const kind = (points: InfluencePoint[]) => logisticRegression(points).kind;
		expect(
			kind([
				{ x: 1, events: 0, exposure: 5 },
				{ x: 2, events: 0, exposure: 5 }
			])
		).toBe('noEvents');
		expect(
			kind([
				{ x: 1, events: 5, exposure: 5 },
				{ x: 2, events: 5, exposure: 5 }
			])
		).toBe('onlyEvents');
		expect(kind([{ x: 1, events: 2, exposure: 5 }])).toBe('oneValue');
		expect(
			kind([
				{ x: 1, events: 0, exposure: 5 },
				{ x: 2, events: 2, exposure: 5 },
				{ x: 3, events: 5, exposure: 5 }
			])
		).toBe('separated');
		expect(
			kind([
				{ x: 1, events: 5, exposure: 5 },
				{ x: 2, events: 0, exposure: 5 }
			])
		).toBe('separated');
		expect(kind([])).toBe('noEvents');
	});

	it('refuses more events than trials', () => {
		expect(() => logisticRegression([{ x: 1, events: 3, exposure: 2 }])).toThrow(/3 of 2/);
	});
});

describe('logisticReachesChance and logisticCurve', () => {
	it('agree with each other: at a limit of the x, the chance has the level as its limit', () => {
		const fit = logisticRegression(pulls(3, 300)) as LogisticFit;
		const level = logisticReachesChance(fit, 0.2, 0.9);
		expect(level.kind).toBe('between');
		expect(logisticCurve(fit, level.at, 0.9).chance).toBeCloseTo(0.2, 10);
		expect(logisticCurve(fit, level.lower, 0.9).upper).toBeCloseTo(0.2, 8);
		expect(logisticCurve(fit, level.upper, 0.9).lower).toBeCloseTo(0.2, 8);
	});

	it('say that a level is unbounded when the influence is not established', () => {
		const fit = logisticRegression([
			{ x: 10, events: 2, exposure: 10 },
			{ x: 20, events: 1, exposure: 10 },
			{ x: 30, events: 2, exposure: 10 }
		]) as LogisticFit;
		expect(logisticReachesChance(fit, 0.5, 0.95).kind).not.toBe('between');
	});
});

describe('fiellerLimits', () => {
	it('are the ratios that the estimates do not speak against (naive scan)', () => {
		const of = {
			numerator: 6,
			denominator: 2,
			numeratorVariance: 0.4,
			denominatorVariance: 0.1,
			covariance: 0.05
		};
		const got = fiellerLimits(of, 2);
		for (let r = 0; r < 8; r += 0.05) {
			const held = Math.abs(6 - r * 2) <= 2 * Math.sqrt(0.4 - 2 * r * 0.05 + r * r * 0.1);
			expect(held, `ratio ${r}`).toBe(r >= got.lower && r <= got.upper);
		}
	});

	it('come to the delta limits when the denominator is nearly known, and to nothing when both are unknown', () => {
		const near = fiellerLimits(
			{ numerator: 6, denominator: 2, numeratorVariance: 0.04, denominatorVariance: 0, covariance: 0 },
			2
		);
		expect(near.lower).toBeCloseTo(3 - 0.2, 12);
		expect(near.upper).toBeCloseTo(3 + 0.2, 12);
		expect(
			fiellerLimits(
				{ numerator: 0.1, denominator: 0.1, numeratorVariance: 1, denominatorVariance: 1, covariance: 0 },
				2
			).kind
		).toBe('anywhere');
		expect(
			fiellerLimits(
				{ numerator: 9, denominator: 0.1, numeratorVariance: 1, denominatorVariance: 1, covariance: 0 },
				2
			).kind
		).toBe('outside');
	});
});

describe('isotonicRegression', () => {
	it('never falls, keeps the weighted sum, and is nearest of all rising curves tried (seeded)', () => {
		const draw = randomNumbers(14);
		const points = Array.from({ length: 12 }, (_, i) => ({
			x: i,
			events: draw.below(6),
			exposure: 5 + draw.below(20)
		}));
		const got = isotonicRegression(points);
		const miss = (fitted: readonly number[]) =>
			got.reduce((sum, p, i) => sum + p.exposure * (p.raw - fitted[i]) ** 2, 0);
		const best = miss(got.map((p) => p.fitted));
		got.forEach((p, i) => expect(p.fitted).toBeGreaterThanOrEqual(i === 0 ? 0 : got[i - 1].fitted));
		expect(got.reduce((sum, p) => sum + p.fitted * p.exposure, 0)).toBeCloseTo(
			points.reduce((sum, p) => sum + p.events, 0),
			10
		);
		for (let trial = 0; trial < 500; trial++) {
			const moved = got.map((p) => p.fitted + 0.05 * draw.normal()).sort((a, b) => a - b);
			expect(miss(moved)).toBeGreaterThanOrEqual(best);
		}
	});

	it('pools equal x, whatever their order', () => {
		const a = { x: 5, events: 0, exposure: 1 };
		const b = { x: 5, events: 1, exposure: 1 };
		expect(isotonicRegression([a, b])).toEqual(isotonicRegression([b, a]));
		expect(isotonicRegression([a, b])).toEqual([{ x: 5, events: 1, exposure: 2, raw: 0.5, fitted: 0.5 }]);
	});

	it('leaves rising data as they are, and points without exposure out', () => {
		const got = isotonicRegression([
			{ x: 2, events: 3, exposure: 10 },
			{ x: 1, events: 1, exposure: 10 },
			{ x: 3, events: 0, exposure: 0 }
		]);
		expect(got.map((p) => p.fitted)).toEqual([0.1, 0.3]);
		expect(isotonicRegression([])).toEqual([]);
	});
});
