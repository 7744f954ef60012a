import { describe, expect, it } from 'vitest';
import { isotonicRegression } from '$lib/reliability/isotonicRegression';
import { logisticReachesChance } from '$lib/reliability/logisticReachesChance';
import { logisticRegression, type LogisticFit } from '$lib/reliability/logisticRegression';
import { shareLimits } from '$lib/reliability/shareLimits';
import { twoListEstimate } from '$lib/reliability/twoListEstimate';
import { weibullAgeByShare } from '$lib/reliability/weibullAgeByShare';
import { weibullLife } from '$lib/reliability/weibullLife';
import lists from './reference/09_chapman.json';
import influence from './reference/10_logistic_isotonic.json';
import lives from './reference/11_weibull.json';
import { closeTo } from './closeTo';
import { readNumber, referenceCases, type ReferenceCase } from './referenceCases';

const points = ({ inputs }: ReferenceCase) =>
	(inputs.torque as number[]).map((x, i) => ({
		x,
		events: inputs.slips[i] as number,
		exposure: inputs.trials[i] as number
	}));

describe('logisticRegression against published and recomputed figures', () => {
	const fitted = referenceCases(influence).filter((one) => 'intercept' in one.expected);

	it("gives R's coefficients, covariances, deviances and likelihood", () => {
		expect(fitted).toHaveLength(2);
		for (const one of fitted) {
			const { expected, id } = one;
			const fit = logisticRegression(points(one)) as LogisticFit;
			closeTo(fit.intercept, expected.intercept, 1e-6, id);
			closeTo(fit.slope, expected.slope, 1e-6, id);
			closeTo(Math.sqrt(fit.interceptVariance), expected.se_intercept, 1e-5, id);
			closeTo(Math.sqrt(fit.slopeVariance), expected.se_slope, 1e-5, id);
			closeTo(fit.covariance, expected.cov, 1e-5, id);
			closeTo(fit.deviance, expected.residual_deviance, 1e-6, id);
			closeTo(fit.nullDeviance, expected.null_deviance, 1e-6, id);
			closeTo(fit.logLikelihood, expected.loglik, 1e-6, id);
			closeTo(fit.pNoInfluence, expected.p_slope_lr, 1e-6, id);
			const half = logisticReachesChance(fit, 0.5, 0.95);
			closeTo(half.at, expected.x50, 1e-6, id);
			closeTo(half.lower, expected.x50_ci_fieller[0], 1e-6, id);
			closeTo(half.upper, expected.x50_ci_fieller[1], 1e-6, id);
			closeTo(logisticReachesChance(fit, 0.01, 0.95).at, expected.x01, 1e-6, id);
		}
	});

	it('prints -60.72 (5.18) and 34.27 (2.91) for the beetles of Bliss 1935 (Dobson 7.3, from memory)', () => {
		const [beetles] = referenceCases(influence, 'pub_Bliss');
		const fit = logisticRegression(points(beetles)) as LogisticFit;
		expect([fit.intercept, Math.sqrt(fit.interceptVariance)].map((x) => x.toFixed(2))).toEqual([
			'-60.72',
			'5.18'
		]);
		expect([fit.slope, Math.sqrt(fit.slopeVariance)].map((x) => x.toFixed(2))).toEqual(['34.27', '2.91']);
		expect(fit.deviance).toBeCloseTo(11.23, 2);
	});

	it('says that events and their absence lie apart, where R prints a slope of 6', () => {
		const [apart] = referenceCases(influence, 'logit_separated');
		expect(logisticRegression(points(apart))).toEqual({ kind: 'separated' });
	});
});

describe('isotonicRegression against R isoreg', () => {
	it("gives R's pooled values", () => {
		const cases = referenceCases(influence).filter((one) => 'isotonic' in one.expected);
		expect(cases.length).toBeGreaterThanOrEqual(2);
		for (const one of cases) {
			const got = isotonicRegression(points(one)).map((point) => point.fitted);
			got.forEach((value, i) => expect(value, one.id).toBeCloseTo(one.expected.isotonic[i], 12));
			expect(got).toHaveLength(one.expected.isotonic.length);
		}
	});
});

describe('twoListEstimate against published and recomputed figures', () => {
	it('gives estimate, variance, exact limits, limits of the unseen, and exact limits of the share found', () => {
		const cases = referenceCases(lists);
		expect(cases).toHaveLength(4);
		for (const { id, inputs, expected } of cases) {
			const got = twoListEstimate(inputs.n1, inputs.n2, inputs.m, inputs.conf);
			closeTo(got.total, expected.N, 1e-9, id);
			closeTo(got.variance, expected.variance, 1e-9, id);
			expect(got.seen, id).toBe(expected.seen_by_either);
			expect(got.lower, id).toBe(expected.ci_exact_hypergeometric.lower);
			expect(got.upper, id).toBe(readNumber(expected.ci_exact_hypergeometric.upper));
			closeTo(got.unseenLogLower, expected.ci_lognormal_unseen[0], 1e-9, id);
			closeTo(got.unseenLogUpper, expected.ci_lognormal_unseen[1], 1e-9, id);
			closeTo(got.firstFinds, expected.detection_1, 1e-9, id);
			closeTo(got.secondFinds, expected.detection_2, 1e-9, id);
			const found = shareLimits(inputs.m, inputs.n2, inputs.conf);
			expect(Math.abs(found.lower - expected.detection_1_ci_exact[0]), id).toBeLessThan(1e-9);
			expect(Math.abs(found.upper - expected.detection_1_ci_exact[1]), id).toBeLessThan(1e-9);
		}
	});

	it('prints 725.2381 with variance 16348.22 for lists of 100 and 150 that share 20 (package recapr, vignette)', () => {
		const got = twoListEstimate(100, 150, 20, 0.95);
		expect(got.total).toBeCloseTo(725.2381, 4);
		expect(got.variance).toBeCloseTo(16348.22, 2);
	});
});

describe('weibullLife against published and recomputed figures', () => {
	const cases = referenceCases(lives).filter((one) => one.inputs.time);
	const partsOf = ({ inputs }: ReferenceCase) =>
		(inputs.time as number[]).map((age, i) => ({ age, failed: inputs.failed[i] === 1 }));

	it("gives R's shape, scale, their limits, likelihood and ages of one in ten and one in two", () => {
		expect(cases).toHaveLength(6);
		for (const one of cases) {
			const { expected, id } = one;
			const confidence = one.inputs.conf ?? 0.95;
			const fit = weibullLife(partsOf(one), confidence)!;
			expect([fit.parts, fit.failures], id).toEqual([expected.n, expected.failures]);
			closeTo(fit.shape, expected.shape, 1e-6, id);
			closeTo(fit.scale, expected.scale, 1e-6, id);
			closeTo(fit.logLikelihood, expected.loglik, 1e-6, id);
			closeTo(Math.sqrt(fit.logScaleVariance), expected.se_intercept, 1e-5, id);
			closeTo(Math.sqrt(fit.logSpreadVariance), expected.se_log_scale, 1e-5, id);
			closeTo(fit.shapeLower, expected.shape_ci_wald_log[0], 1e-5, id);
			closeTo(fit.scaleUpper, expected.scale_ci_wald_log[1], 1e-5, id);
			for (const b of [expected.b10, expected.b50]) {
				const got = weibullAgeByShare(fit, b.p, confidence);
				closeTo(got.age, b.estimate, 1e-6, id);
				closeTo(got.lower, b.ci[0], 1e-5, id);
				closeTo(got.upper, b.ci[1], 1e-5, id);
			}
		}
	});

	it('prints 1.7208 and 606.5 for the 20 units of NIST/SEMATECH 8.4.1.3', () => {
		const [units] = referenceCases(lives, 'pub_NIST_8413_20units');
		const fit = weibullLife(partsOf(units), 0.95)!;
		expect(fit.shape).toBeCloseTo(1.7208, 4);
		expect(fit.scale).toBeCloseTo(606.528, 3);
	});
});
