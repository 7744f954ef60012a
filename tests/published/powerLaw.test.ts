import { describe, expect, it } from 'vitest';
import { chiSquareTrendTest } from '$lib/reliability/chiSquareTrendTest';
import { cramerVonMises } from '$lib/reliability/cramerVonMises';
import { laplaceTrendTest } from '$lib/reliability/laplaceTrendTest';
import { meanGapAtEnd } from '$lib/reliability/meanGapAtEnd';
import { powerLawInWindows } from '$lib/reliability/powerLawInWindows';
import { powerLawPooled } from '$lib/reliability/powerLawPooled';
import { powerLawProcess } from '$lib/reliability/powerLawProcess';
import { watchedFromNew, type Ending, type WatchedHistory } from '$lib/reliability/watchedHistory';
import reference from './reference/03_power_law.json';
import { closeTo } from './closeTo';
import { referenceCases, type ReferenceCase } from './referenceCases';

const REL = 1e-8;
const ending = (one: ReferenceCase): Ending => (one.inputs.truncation === 'failure' ? 'event' : 'age');

/** ages of one system; the mine explosions are given as gaps in days */
function agesOf({ inputs }: ReferenceCase): number[] {
	if (inputs.times) return inputs.times;
	let age = 0;
	return (inputs.gaps_days as number[]).map((gap) => (age += gap));
}

const single = referenceCases(reference).filter((one) => one.expected.n > 0);
const pooled = referenceCases(reference).filter((one) => one.inputs.systems);
const systemsOf = ({ inputs }: ReferenceCase): WatchedHistory[] =>
	inputs.systems.map((system: { t: number[]; T: number }) => watchedFromNew(system.t, system.T));

describe('the power-law process against published and recomputed figures', () => {
	it(`gives shape, limits and rate at the end of ${single.length} systems (NIST, TR-138, MIL-HDBK-189 among them)`, () => {
		expect(single).toHaveLength(9);
		for (const one of single) {
			const { expected, id } = one;
			for (const [key, confidence] of [
				['80', 0.8],
				['90', 0.9],
				['95', 0.95]
			] as const) {
				const fit = powerLawProcess(agesOf(one), one.inputs.T ?? expected.T, ending(one), confidence)!;
				closeTo(fit.shape, expected.beta_mle, REL, id);
				closeTo(fit.scale, expected.lambda_mle, REL, id);
				closeTo(fit.shapeUnbiased, expected.beta_unbiased, REL, id);
				closeTo(fit.scaleUnbiased, expected.lambda_with_unbiased_beta, REL, id);
				closeTo(fit.logLikelihood, expected.loglik_mle, REL, id);
				closeTo(fit.shapeLower, expected[`beta_ci${key}`][0], REL, id);
				closeTo(fit.shapeUpper, expected[`beta_ci${key}`][1], REL, id);
				closeTo(fit.rateAtEnd, expected.intensity_at_T_mle, REL, id);
				closeTo(fit.rateAtEndLower, expected[`intensity_at_T_ci${key}_delta_log`][0], REL, id);
				closeTo(fit.rateAtEndUpper, expected[`intensity_at_T_ci${key}_delta_log`][1], REL, id);
				if (!expected[`mtbf_ci${key}_nist_approx`]) continue;
				const gap = meanGapAtEnd(fit, confidence);
				closeTo(gap.mean, expected.mtbf_at_T_unbiased, REL, id);
				closeTo(gap.lower, expected[`mtbf_ci${key}_nist_approx`][0], REL, id);
				closeTo(gap.upper, expected[`mtbf_ci${key}_nist_approx`][1], REL, id);
			}
		}
	});

	it('prints what NIST/SEMATECH 8.4.5.2 prints for its first case study', () => {
		const fit = powerLawProcess([5, 40, 43, 175, 389, 712, 747, 795, 1299, 1478], 1500, 'age', 0.8)!;
		expect(fit.shapeUnbiased).toBeCloseTo(0.483506, 6);
		expect(fit.scaleUnbiased).toBeCloseTo(0.2913003, 6);
		const gap = meanGapAtEnd(fit, 0.8);
		expect([gap.mean, gap.lower, gap.upper].map((x) => +x.toFixed(3))).toEqual([310.234, 157.714, 548.557]);
	});

	it('gives the Laplace and chi-square trend tests, and the Cramer-von Mises statistic, of each system', () => {
		for (const one of single) {
			const { expected, id } = one;
			const histories = [watchedFromNew(agesOf(one), one.inputs.T ?? expected.T)];
			const laplace = laplaceTrendTest(histories, ending(one))!;
			if (expected.laplace_u === 0) expect(Math.abs(laplace.statistic), id).toBeLessThan(1e-12);
			else closeTo(laplace.statistic, expected.laplace_u, REL, id);
			closeTo(laplace.pFalling, expected.laplace_p_improving, REL, id);
			closeTo(laplace.pRising, expected.laplace_p_worsening, REL, id);
			closeTo(laplace.pTwoSided, expected.laplace_p_two_sided, REL, id);
			const chiSquare = chiSquareTrendTest(histories, ending(one))!;
			closeTo(chiSquare.statistic, expected.milhdbk_chisq, REL, id);
			expect(2 * chiSquare.events, id).toBe(expected.milhdbk_df);
			closeTo(chiSquare.pFalling, expected.milhdbk_p_improving, REL, id);
			closeTo(chiSquare.pTwoSided, expected.milhdbk_p_two_sided, REL, id);
			closeTo(cramerVonMises(histories, ending(one))!.statistic, expected.cvm_C2_unbiased_beta, REL, id);
		}
	});

	it('gives the pooled shape, its limits, trend tests and the comparison of shapes (TR-138 sections 3.1 to 4)', () => {
		expect(pooled).toHaveLength(3);
		for (const one of pooled) {
			const { expected, id } = one;
			const histories = systemsOf(one);
			const fit = powerLawPooled(histories, ending(one), 0.9)!;
			expect(fit.events, id).toBe(expected.M);
			closeTo(fit.shape, expected.beta_conditional_mle, REL, id);
			closeTo(fit.shapeUnbiased, expected.beta_unbiased, REL, id);
			closeTo(fit.shapeLower, expected.beta_conditional_ci90[0], REL, id);
			closeTo(fit.shapeUpper, expected.beta_conditional_ci90[1], REL, id);
			closeTo(fit.difference, expected.common_beta.D, REL, id);
			expect(fit.differenceDegrees, id).toBe(expected.common_beta.df);
			closeTo(laplaceTrendTest(histories, ending(one))!.statistic, expected.laplace_combined, REL, id);
			closeTo(chiSquareTrendTest(histories, ending(one))!.statistic, expected.milhdbk_combined, REL, id);
			closeTo(cramerVonMises(histories, ending(one))!.statistic, expected.cvm_C2, REL, id);
		}
	});

	it('gives the common shape and scale of highest likelihood, also when systems end at different ages', () => {
		for (const one of pooled) {
			const fit = powerLawInWindows(systemsOf(one), 0.9)!;
			closeTo(fit.shape, one.expected.beta_mle, REL, one.id);
			closeTo(fit.scale, one.expected.lambda_mle, REL, one.id);
		}
		// TR-138 prints 0.615 and 0.461; the two unequal systems of an open benchmark, 0.344384 and 0.923672
		expect(powerLawInWindows(systemsOf(pooled[0]), 0.9)!.shape).toBeCloseTo(0.615, 3);
		expect(powerLawInWindows(systemsOf(pooled[2]), 0.9)!.scale).toBeCloseTo(0.923672, 6);
	});

	it('has the closed form as its gap-free limit, the likelihood included', () => {
		for (const one of single.filter((c) => c.inputs.truncation === 'time')) {
			const closed = powerLawProcess(one.inputs.times, one.inputs.T, 'age', 0.9)!;
			const fit = powerLawInWindows([watchedFromNew(one.inputs.times, one.inputs.T)], 0.9)!;
			closeTo(fit.shape, closed.shape, 1e-8, one.id);
			closeTo(fit.scale, closed.scale, 1e-7, one.id);
			closeTo(fit.logLikelihood, closed.logLikelihood, 1e-9, one.id);
		}
	});

	it('has critical values within the chance of the printed table (TR-138 table 2, 15,000 simulations)', () => {
		const rows = referenceCases(reference, 'cvm_critical_M');
		expect(rows).toHaveLength(16);
		for (const { id, inputs, expected } of rows) {
			const events = Array.from({ length: inputs.M }, (_, i) => i + 1);
			const { critical } = cramerVonMises([watchedFromNew(events, inputs.M + 1)], 'age')!;
			const got = [critical.at20, critical.at10, critical.at5];
			const at = (figures: number[]) => [figures[0], figures[2], figures[3]];
			at(expected.published).forEach((printed, i) =>
				expect(Math.abs(got[i] - printed), id).toBeLessThan(0.0075)
			);
			at(expected.monte_carlo_200k).forEach((simulated, i) =>
				expect(Math.abs(got[i] - simulated), id).toBeLessThan(0.002)
			);
			expect(Math.abs(critical.at1 - expected.monte_carlo_200k[4]), id).toBeLessThan(0.005);
		}
	});
});
