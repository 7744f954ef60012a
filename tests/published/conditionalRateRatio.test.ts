import { describe, expect, it } from 'vitest';
import { conditionalRateRatio } from '$lib/reliability/conditionalRateRatio';
import reference from './reference/02_rate_ratio.json';
import { closeTo } from './closeTo';

interface Case {
	id: string;
	inputs: { events1: number; exposure1: number; events2: number; exposure2: number; conf: number };
	expected: Record<string, number | 'Inf'>;
	tolerance: { rel: number };
}
const cases = (reference.cases as unknown as Case[]).filter((c) => c.id.startsWith('pair'));
const number = (value: number | 'Inf') => (value === 'Inf' ? Infinity : value);

describe('conditionalRateRatio against published and recomputed figures', () => {
	it(`gives R's exact limits and doubled-tail p-value in all ${cases.length} recomputed pairs`, () => {
		expect(cases.length).toBe(8);
		for (const { id, inputs, expected, tolerance } of cases) {
			const got = conditionalRateRatio(
				{
					countA: inputs.events1,
					exposureA: inputs.exposure1,
					countB: inputs.events2,
					exposureB: inputs.exposure2
				},
				inputs.conf
			);
			closeTo(got.lower, number(expected.ci_exact_lower), tolerance.rel, id);
			closeTo(got.upper, number(expected.ci_exact_upper), tolerance.rel, id);
			closeTo(got.pValue, number(expected.p_two_sided_central), tolerance.rel, id);
		}
	});

	it('gives the limits that the help page of R poisson.test prints: 11 in 800 against 21 in 3011', () => {
		const got = conditionalRateRatio({ countA: 11, exposureA: 800, countB: 21, exposureB: 3011 }, 0.95);
		expect(got.ratio).toBeCloseTo(1.971488, 6);
		expect(got.lower).toBeCloseTo(0.8584264, 6);
		expect(got.upper).toBeCloseTo(4.2772659, 6);
	});

	it('gives the textbook ratio of 41 in 28,010 against 15 in 19,017 (limits from memory)', () => {
		const got = conditionalRateRatio({ countA: 41, exposureA: 28010, countB: 15, exposureB: 19017 }, 0.95);
		expect(got.ratio).toBeCloseTo(1.855759, 6);
		expect(got.lower).toBeCloseTo(1.005684, 6);
		expect(got.upper).toBeCloseTo(3.6093, 4);
	});
});
