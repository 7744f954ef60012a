import { describe, expect, it } from 'vitest';
import { inverseOfSymmetric } from '$lib/reliability/inverseOfSymmetric';
import { logisticSlopeLimits } from '$lib/reliability/logisticSlopeLimits';
import { poissonRegression, type FactorRow } from '$lib/reliability/poissonRegression';
import { randomNumbers } from '$lib/reliability/randomNumbers';

const row = (count: number, exposure: number, ...values: number[]): FactorRow => ({
	count,
	exposure,
	values
});

/** outings whose rate doubles in the wet and rises with load; wet outings are gentler */
function outings(seed: number, rows: number): FactorRow[] {
	const draw = randomNumbers(seed);
	return Array.from({ length: rows }, () => {
		const wet = draw.next() < 0.4 ? 1 : 0;
		const load = (wet ? 20 : 30) + 15 * draw.next();
		const exposure = 20 + 60 * draw.next();
		return row(draw.poisson(0.002 * 2 ** wet * Math.exp(0.05 * load) * exposure), exposure, wet, load);
	});
}

function logLikelihood(rows: readonly FactorRow[], base: number, ratios: readonly number[]): number {
	return rows.reduce((sum, { count, exposure, values }) => {
		const mean = exposure * base * values.reduce((product, value, j) => product * ratios[j] ** value, 1);
		return sum + count * Math.log(mean) - mean;
	}, 0);
}

describe('poissonRegression', () => {
	it('stands on the summit of the likelihood (naive steps around it)', () => {
		const rows = outings(3, 80);
		const { baseRate, effects } = poissonRegression(rows, 0.95);
		const ratios = effects.map((effect) => effect.ratio);
		const summit = logLikelihood(rows, baseRate, ratios);
		for (const by of [0.995, 1.005]) {
			expect(logLikelihood(rows, baseRate * by, ratios)).toBeLessThan(summit);
			expect(logLikelihood(rows, baseRate, [ratios[0] * by, ratios[1]])).toBeLessThan(summit);
			expect(logLikelihood(rows, baseRate, [ratios[0], ratios[1] * (1 + (by - 1) / 40)])).toBeLessThan(
				summit
			);
		}
	});

	it('finds the influence of wet roads although wet outings were gentler (400 seeded programmes)', () => {
		let held = 0;
		for (let seed = 0; seed < 400; seed++) {
			const [wet] = poissonRegression(outings(seed, 60), 0.95).effects;
			if (wet.lower <= 2 && wet.upper >= 2) held++;
		}
		expect(held / 400).toBeGreaterThan(0.92);
		expect(held / 400).toBeLessThan(0.98);
	});

	it('is the plain rate ratio with limits of the logarithm when there is one factor of two values', () => {
		const { effects, baseRate } = poissonRegression([row(12, 300, 1), row(9, 600, 0)], 0.95);
		expect(effects[0].ratio).toBeCloseTo(12 / 300 / (9 / 600), 9);
		expect(Math.log(effects[0].upper / effects[0].ratio)).toBeCloseTo(
			1.959964 * Math.sqrt(1 / 12 + 1 / 9),
			6
		);
		expect(baseRate).toBeCloseTo(9 / 600, 10);
	});

	it('widens by the root of the dispersion, and never narrows', () => {
		const rows = outings(5, 60);
		const width = (dispersion: number) => {
			const [effect] = poissonRegression(rows, 0.95, dispersion).effects;
			return Math.log(effect.upper / effect.lower);
		};
		expect(width(4)).toBeCloseTo(2 * width(1), 9);
		expect(width(0.3)).toBeCloseTo(width(1), 12);
	});

	it('names factors that go along with each other, and still adjusts the others for them', () => {
		const draw = randomNumbers(2);
		const rows = Array.from({ length: 60 }, (_, i) => {
			const old = i < 30 ? 1 : 0;
			return row(draw.poisson(old ? 3 : 1), 40, old, old, draw.next());
		});
		const { effects } = poissonRegression(rows, 0.95);
		expect(effects.map((effect) => effect.kind)).toEqual(['inseparable', 'inseparable', 'fit']);
		expect(effects[0].ratio).toBeNaN();
		const alone = poissonRegression(
			rows.map((one) => ({ ...one, values: [one.values[0], one.values[2]] })),
			0.95
		);
		expect(effects[2].ratio).toBeCloseTo(alone.effects[1].ratio, 9);
	});

	it('gives no number for a factor without events on one side, or one that never changes', () => {
		const rows = [row(4, 100, 0, 7), row(5, 120, 0, 7), row(0, 60, 1, 7)];
		const { effects } = poissonRegression(rows, 0.95);
		expect(effects.map((effect) => effect.kind)).toEqual(['unbounded', 'constant']);
		expect(effects[0]).toMatchObject({ ratio: NaN, lower: 0, upper: Infinity, pValue: NaN });
	});

	it('fits nothing without events or rows', () => {
		const none = poissonRegression([row(0, 50, 1), row(0, 80, 0)], 0.95);
		expect(none).toMatchObject({ events: 0, baseRate: NaN });
		expect(none.effects[0].kind).toBe('unbounded');
		expect(poissonRegression([], 0.95)).toMatchObject({ events: 0, effects: [] });
	});

	it('refuses rows of unequal length, no exposure and broken values', () => {
		expect(() => poissonRegression([row(1, 5, 1), row(1, 5)], 0.95)).toThrow(/1 values/);
		expect(() => poissonRegression([row(1, 0, 1)], 0.95)).toThrow(/exposure .* 0/);
		expect(() => poissonRegression([row(1, 5, NaN)], 0.95)).toThrow(/value .* NaN/);
	});
});

describe('inverseOfSymmetric', () => {
	it('gives the unit matrix when multiplied, and null for rows that depend on each other', () => {
		const matrix = [
			[4, 1, 0.5],
			[1, 3, 0.2],
			[0.5, 0.2, 2]
		];
		const inverse = inverseOfSymmetric(matrix)!;
		matrix.forEach((line, i) =>
			matrix.forEach((_, j) => {
				const product = line.reduce((sum, value, k) => sum + value * inverse[k][j], 0);
				expect(product).toBeCloseTo(i === j ? 1 : 0, 12);
			})
		);
		expect(
			inverseOfSymmetric([
				[1, 2],
				[2, 4]
			])
		).toBeNull();
	});
});

describe('logisticSlopeLimits', () => {
	it('comes near the limits of the standard error for many trials, and is null without a finite fit', () => {
		const draw = randomNumbers(7);
		const points = Array.from({ length: 3000 }, () => {
			const x = 10 * draw.next();
			return { x, events: draw.next() < 1 / (1 + Math.exp(2 - 0.4 * x)) ? 1 : 0, exposure: 1 };
		});
		const got = logisticSlopeLimits(points, 0.95)!;
		expect((got.upper - got.slope) / (got.slope - got.lower)).toBeCloseTo(1, 1);
		expect(got.lower).toBeGreaterThan(0.3);
		expect(logisticSlopeLimits([{ x: 1, events: 0, exposure: 3 }], 0.95)).toBeNull();
	});
});
