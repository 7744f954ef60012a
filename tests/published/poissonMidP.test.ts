import { describe, expect, it } from 'vitest';
import { conditionalRateRatioMidP } from '$lib/reliability/conditionalRateRatioMidP';
import { poissonRateMidPLimits } from '$lib/reliability/poissonRateMidPLimits';
import { weightedCountRatio } from '$lib/reliability/weightedCountRatio';
import ratios from './reference/02_rate_ratio.json';
import rates from './reference/01_poisson_rate_ci.json';
import { closeTo } from './closeTo';
import { readNumber, referenceCases } from './referenceCases';

describe('mid-p limits against R 4.2.2', () => {
	it('gives the mid-p limits of single rates', () => {
		const cases = referenceCases(rates, 'midp');
		expect(cases.length).toBeGreaterThan(2);
		for (const { id, inputs, expected } of cases) {
			const got = poissonRateMidPLimits(inputs.events, inputs.exposure, inputs.conf);
			closeTo(got.lower, expected.lower, 1e-6, id);
			closeTo(got.upper, expected.upper, 1e-6, id);
		}
	});

	it('gives the mid-p limits and p-values of rate ratios, zeros and published examples among them', () => {
		const cases = referenceCases(ratios).filter((one) => 'p_two_sided_midp' in one.expected);
		expect(cases.length).toBeGreaterThanOrEqual(10);
		for (const { id, inputs, expected } of cases) {
			const series = {
				countA: inputs.events1,
				exposureA: inputs.exposure1,
				countB: inputs.events2,
				exposureB: inputs.exposure2
			};
			const got = conditionalRateRatioMidP(series, inputs.conf);
			closeTo(got.lower, readNumber(expected.ci_midp_lower), 1e-6, id);
			closeTo(got.upper, readNumber(expected.ci_midp_upper), 1e-6, id);
			closeTo(got.pValue, expected.p_two_sided_midp, 1e-7, id);
		}
	});

	it('gives 0.0354574 for 41 in 28,010 against 15 in 19,017 (Boice and Monson 1977, by Rothman)', () => {
		const got = conditionalRateRatioMidP(
			{ countA: 41, exposureA: 28010, countB: 15, exposureB: 19017 },
			0.95
		);
		expect(got.pValue).toBeCloseTo(0.0355, 4);
	});
});

describe('weightedCountRatio against R 4.2.2', () => {
	it("gives R's exact conditional limits when every event weighs one", () => {
		for (const { id, inputs, expected } of referenceCases(ratios, 'pair')) {
			const single = (total: number) => ({ total, variance: total, heaviest: 1 });
			const got = weightedCountRatio(single(inputs.events1), single(inputs.events2), inputs.conf);
			const scale = inputs.exposure2 / inputs.exposure1;
			closeTo(got.lower * scale, readNumber(expected.ci_exact_lower), 1e-7, id);
			closeTo(got.upper * scale, readNumber(expected.ci_exact_upper), 1e-7, id);
		}
	});
});
