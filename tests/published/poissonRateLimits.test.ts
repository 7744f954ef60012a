import { describe, expect, it } from 'vitest';
import { poissonRateLimits } from '$lib/reliability/poissonRateLimits';
import { poissonRateUpperBound } from '$lib/reliability/poissonRateUpperBound';
import reference from './reference/01_poisson_rate_ci.json';
import { closeTo } from './closeTo';

interface Case {
	id: string;
	source: string;
	inputs: { events: number; exposure: number; conf: number; sides?: number | string; method?: string };
	expected: Record<string, number>;
	tolerance: { rel?: number };
}
const cases = reference.cases as unknown as Case[];

describe('poissonRateLimits against published and recomputed figures', () => {
	const twoSided = cases.filter((c) => c.id.startsWith('two_sided') || c.id.startsWith('large'));
	it(`gives R's exact limits in all ${twoSided.length} recomputed two-sided cases`, () => {
		expect(twoSided.length).toBe(125);
		for (const { id, inputs, expected, tolerance } of twoSided) {
			const got = poissonRateLimits(inputs.events, inputs.exposure, inputs.conf);
			closeTo(got.lower, expected.lower, tolerance.rel!, id);
			closeTo(got.upper, expected.upper, tolerance.rel!, id);
		}
	});

	const upper = cases.filter((c) => c.inputs.sides === 'upper' && 'upper' in c.expected);
	it(`gives R's one-sided upper bound in all ${upper.length} recomputed cases`, () => {
		expect(upper.length).toBeGreaterThan(10);
		for (const { id, inputs, expected, tolerance } of upper)
			closeTo(
				poissonRateUpperBound(inputs.events, inputs.exposure, inputs.conf),
				expected.upper,
				tolerance.rel!,
				id
			);
	});

	it('gives the example of the NIST/SEMATECH e-Handbook, section 8.4.5.1: 2 failures in 800 h', () => {
		const { lower, upper } = poissonRateLimits(2, 800, 0.9);
		// printed: mean time between failures 127.069 to 2251.229 h; tolerance = the printed digits
		expect(1 / upper).toBeCloseTo(127.069, 3);
		expect(1 / lower).toBeCloseTo(2251.229, 3);
	});

	it('gives the weed-seed limits of a numerical library manual: 296 seeds in 98 samples', () => {
		// data of Snedecor and Cochran 1967, p. 224; printed 2.6861 to 3.3848
		const { lower, upper } = poissonRateLimits(296, 98, 0.95);
		expect(lower).toBeCloseTo(2.6861, 4);
		expect(upper).toBeCloseTo(3.3848, 4);
	});

	it("gives Garwood's limits for no events", () => {
		// Garwood 1936; Pearson and Hartley, Biometrika Tables, table 40 (printed 3.69, from memory)
		expect(poissonRateLimits(0, 1, 0.95).upper).toBeCloseTo(3.69, 2);
	});

	it('bounds 300 km without a slip at 10 per 1000 km (rule of three)', () => {
		expect(1000 * poissonRateUpperBound(0, 300, 0.95)).toBeCloseTo(9.986, 3);
	});
});
