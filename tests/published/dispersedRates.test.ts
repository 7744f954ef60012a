import { describe, expect, it } from 'vitest';
import { bootstrapRate } from '$lib/reliability/bootstrapRate';
import { dispersion } from '$lib/reliability/dispersion';
import { negativeBinomialRate } from '$lib/reliability/negativeBinomialRate';
import { quasiPoissonRate } from '$lib/reliability/quasiPoissonRate';
import reference from './reference/06_overdispersion.json';
import { closeTo } from './closeTo';
import { referenceCases } from './referenceCases';

const cases = referenceCases(reference).map(({ id, inputs, expected }) => ({
	id,
	expected,
	confidence: inputs.conf as number,
	units: (inputs.counts as number[]).map((count, i) => ({ count, exposure: inputs.km[i] as number }))
}));

describe('rates that scatter beyond single events, against R 4.2.2 (glm, MASS::glm.nb)', () => {
	it("gives R's dispersion and quasi-Poisson limits with Student's quantile", () => {
		expect(cases.length).toBeGreaterThanOrEqual(2);
		for (const { id, units, confidence, expected } of cases) {
			closeTo(dispersion(units), expected.dispersion, 1e-7, id);
			const got = quasiPoissonRate(units, confidence);
			closeTo(got.rate, expected.rate, 1e-12, id);
			closeTo(got.lower, expected.quasi_ci_t[0], 1e-7, id);
			closeTo(got.upper, expected.quasi_ci_t[1], 1e-7, id);
		}
	});

	it("gives R's negative-binomial rate, spread and limits", () => {
		for (const { id, units, confidence, expected } of cases) {
			const got = negativeBinomialRate(units, confidence);
			closeTo(got.rate, expected.negbin.rate, 1e-4, id);
			closeTo(got.extraVariance, expected.negbin.alpha, 1e-4, id);
			closeTo(got.lower, expected.negbin.ci95_wald[0], 1e-4, id);
			closeTo(got.upper, expected.negbin.ci95_wald[1], 1e-4, id);
		}
	});

	it("gives R's bootstrap limits over units within two per cent (20,000 draws, another stream)", () => {
		for (const { id, units, confidence, expected } of cases) {
			const got = bootstrapRate(units, confidence, { seed: 77, resamples: 20_000 });
			closeTo(got.lower, expected.bootstrap_ci_percentile[0], 0.02, id);
			closeTo(got.upper, expected.bootstrap_ci_percentile[1], 0.02, id);
			closeTo(got.standardError, expected.bootstrap_se, 0.02, id);
		}
	});
});
