import betaQuantile from '@stdlib/stats-base-dists-beta-quantile';
import { describe, expect, it } from 'vitest';
import { chiSquareQuantile } from '$lib/reliability/chiSquareQuantile';
import { fQuantile } from '$lib/reliability/fQuantile';
import { normalQuantile } from '$lib/reliability/normalQuantile';
import { poissonAtLeast, poissonAtMost, poissonExactly } from '$lib/reliability/poissonProbability';
import { studentQuantile } from '$lib/reliability/studentQuantile';
import reference from './reference/12_quantiles.json';
import { closeTo } from './closeTo';
import { referenceCases, type ReferenceCase } from './referenceCases';

/** every quantile of a case against R; returns how many were compared */
function quantiles(one: ReferenceCase, of: (p: number) => number, relative: number, from = 0): number {
	let compared = 0;
	one.inputs.p.forEach((p: number, i: number) => {
		if (p < from) return;
		const wanted = one.expected.q[i];
		if (wanted === 0) expect(Math.abs(of(p)), one.id).toBeLessThan(1e-15);
		else closeTo(of(p), wanted, relative, `${one.id} p=${p}`);
		compared++;
	});
	return compared;
}

describe('distribution functions against R 4.2.2', () => {
	it("gives R's chi-square quantiles from 0.1 to 1000 degrees of freedom", () => {
		const cases = referenceCases(reference, 'chisq_df');
		expect(cases).toHaveLength(4);
		for (const one of cases)
			expect(quantiles(one, (p) => chiSquareQuantile(p, one.inputs.df), one.tolerance.rel)).toBe(10);
	});

	it('comes to nought where the quantile is smaller than any number (scipy 1.17: 4e-321 and less)', () => {
		expect(chiSquareQuantile(0.025, 0.01)).toBe(0);
		expect(chiSquareQuantile(0.025, 0.001)).toBe(0);
		closeTo(chiSquareQuantile(0.975, 0.01), 7.15480383e-3, 1e-8, 'upper');
	});

	it("gives R's F and beta quantiles, both tails", () => {
		for (const one of referenceCases(reference, 'f_'))
			expect(quantiles(one, (p) => fQuantile(p, one.inputs.df1, one.inputs.df2), one.tolerance.rel)).toBe(8);
		for (const one of referenceCases(reference, 'beta_'))
			expect(quantiles(one, (p) => betaQuantile(p, one.inputs.a, one.inputs.b), 1e-12)).toBe(8);
	});

	it("gives R's normal quantiles down to a probability of 1e-9, and Student's", () => {
		const [normal] = referenceCases(reference, 'normal');
		expect(quantiles(normal, normalQuantile, normal.tolerance.rel, 1e-9)).toBe(8);
		for (const one of referenceCases(reference, 't_df'))
			expect(quantiles(one, (p) => studentQuantile(p, one.inputs.df), one.tolerance.rel)).toBe(7);
	});

	it("gives R's Poisson probabilities, also where the library's own function breaks down (mean 10,000)", () => {
		const cases = referenceCases(reference, 'poisson_');
		expect(cases).toHaveLength(2);
		for (const { id, inputs, expected, tolerance } of cases)
			inputs.x.forEach((count: number, i: number) => {
				if (expected.cdf[i] > 0)
					closeTo(poissonAtMost(count, inputs.mean), expected.cdf[i], tolerance.rel, id);
				// beyond 8 standard deviations R's printed digits are the limit, not ours
				if (expected.upper_p[i] > 1e-14)
					closeTo(poissonAtLeast(count + 1, inputs.mean), expected.upper_p[i], tolerance.rel, id);
				if (expected.pmf[i] > 0)
					closeTo(poissonExactly(count, inputs.mean), expected.pmf[i], tolerance.rel, id);
			});
	});
});
