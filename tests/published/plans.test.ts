import { describe, expect, it } from 'vitest';
import { acceptanceProbability } from '$lib/reliability/acceptanceProbability';
import { demonstrationExposure } from '$lib/reliability/demonstrationExposure';
import { fixedPlan } from '$lib/reliability/fixedPlan';
import { sequentialPlan } from '$lib/reliability/sequentialPlan';
import { sequentialPlanRisks } from '$lib/reliability/sequentialPlanRisks';
import { passExposure } from '$lib/reliability/sequentialState';
import fixed from './reference/07_demonstration.json';
import sequential from './reference/08_sprt.json';
import { closeTo } from './closeTo';
import { referenceCases } from './referenceCases';

describe('demonstration plans against published and recomputed figures', () => {
	it('gives the factors of the test length table (NIST/SEMATECH 8.3.1.1; printed 0.693, 1.61, 2.99 and 5.52)', () => {
		for (const { id, inputs, expected, tolerance } of referenceCases(fixed, 'factor_table'))
			inputs.r.forEach((allowed: number, i: number) =>
				closeTo(demonstrationExposure(1, inputs.conf, allowed), expected.factor[i], tolerance.rel, id)
			);
		expect(demonstrationExposure(1, 0.5, 0)).toBeCloseTo(0.693, 3);
		expect(demonstrationExposure(1, 0.8, 0)).toBeCloseTo(1.61, 2);
		expect(demonstrationExposure(1, 0.8, 1)).toBeCloseTo(2.99, 2);
		expect(demonstrationExposure(1, 0.8, 3)).toBeCloseTo(5.52, 2);
	});

	it('gives distances and the chances to pass at, below and far below the target', () => {
		const cases = referenceCases(fixed, 'distance_');
		expect(cases).toHaveLength(32);
		for (const { id, inputs, expected, tolerance } of cases) {
			const { target_rate_per_km: rate, conf, allowed_events: allowed } = inputs;
			const exposure = demonstrationExposure(rate, conf, allowed);
			closeTo(exposure, expected.distance_km, tolerance.rel, id);
			closeTo(acceptanceProbability(rate, exposure, allowed), expected.p_accept_at_target, tolerance.rel, id);
			closeTo(acceptanceProbability(rate / 2, exposure, allowed), expected.p_accept_at_half_target, 1e-9, id);
			closeTo(acceptanceProbability(rate / 10, exposure, allowed), expected.p_accept_at_tenth, 1e-9, id);
		}
	});

	it('gives operating characteristics and durations for several numbers allowed', () => {
		for (const { id, inputs, expected, tolerance } of referenceCases(fixed, 'oc_'))
			inputs.true_rate.forEach((rate: number, i: number) =>
				closeTo(
					acceptanceProbability(rate, inputs.distance, inputs.allowed_events),
					expected.p_accept[i],
					tolerance.rel,
					id
				)
			);
		const [hours] = referenceCases(fixed, 'test_duration_228h');
		hours.inputs.allowed.forEach((allowed: number, i: number) =>
			closeTo(demonstrationExposure(1 / 228, 0.8, allowed), hours.expected.duration[i], 1e-10, hours.id)
		);
	});

	it('finds the shortest plan of two risks, and the true risks of fixed-length plans of a handbook', () => {
		const [plan] = referenceCases(fixed, 'plan_');
		const got = fixedPlan({
			goodRate: plan.inputs.rate_good,
			badRate: plan.inputs.rate_bad,
			producerRisk: plan.inputs.producer_risk,
			consumerRisk: plan.inputs.consumer_risk
		})!;
		expect(got.allowedEvents).toBe(plan.expected.allowed_events);
		closeTo(got.exposure, plan.expected.distance_min, 1e-8, 'shortest');
		closeTo(got.longestExposure, plan.expected.distance_max, 1e-8, 'longest');
		closeTo(got.producerRisk, plan.expected.alpha_at_min, 1e-8, 'producer');
		closeTo(got.consumerRisk, plan.expected.beta_at_min, 1e-8, 'consumer');
		// MIL-HDBK-781 fixed-duration plans; its printed risks from memory
		const plans = referenceCases(fixed, 'milhdbk781');
		expect(plans).toHaveLength(4);
		for (const { id, inputs, expected } of plans) {
			const pass = (rate: number) =>
				acceptanceProbability(rate, inputs.duration_multiples_of_theta1, inputs.reject_at - 1);
			closeTo(1 - pass(1 / inputs.discrimination_ratio), expected.true_producer_risk, 1e-9, id);
			closeTo(pass(1), expected.true_consumer_risk, 1e-9, id);
		}
	});
});

describe('sequential plans against Wald and 100,000 simulated runs', () => {
	const cases = referenceCases(sequential).map(({ id, inputs, expected }) => {
		const risks = {
			goodRate: inputs.rate0,
			badRate: inputs.rate1,
			producerRisk: inputs.alpha,
			consumerRisk: inputs.beta
		};
		return { id, risks, expected, open: sequentialPlan(risks, 40 * (fixedPlan(risks)?.exposure ?? NaN))! };
	});

	it("gives Wald's lines and the exposure at which each number of events passes", () => {
		expect(cases).toHaveLength(3);
		for (const { id, open, expected } of cases) {
			closeTo(open.slope, expected.slope, 1e-9, id);
			closeTo(open.passIntercept, expected.accept_intercept, 1e-9, id);
			closeTo(open.failIntercept, expected.reject_intercept, 1e-9, id);
			expected.accept_exposure_for_n.forEach((exposure: number, n: number) =>
				closeTo(passExposure(open, n), exposure, 1e-9, id)
			);
		}
	});

	it('computes the risks and mean exposures that 100,000 untruncated runs show', () => {
		for (const { id, risks, open, expected } of cases)
			for (const [rate, simulated] of [
				[risks.goodRate, expected.simulated_at_rate0],
				[risks.badRate, expected.simulated_at_rate1]
			]) {
				const got = sequentialPlanRisks(open, rate);
				expect(Math.abs(got.pass - simulated.p_accept[0]), id).toBeLessThan(4 * simulated.se_p);
				expect(Math.abs(got.meanExposure - simulated.mean_exposure), id).toBeLessThan(4 * simulated.se_t);
				expect(got.pass + got.fail, id).toBeCloseTo(1, 9);
			}
	});

	it("shows that Wald's nominal consumer's risk can be exceeded slightly", () => {
		const got = sequentialPlanRisks(cases[0].open, cases[0].risks.badRate);
		expect(got.pass).toBeGreaterThan(0.1);
		expect(got.pass).toBeLessThan(0.11);
	});
});
