import { describe, expect, it } from 'vitest';
import { countedAgainstExpected, type ExpectedStratum } from '$lib/reliability/countedAgainstExpected';
import { countedAgainstExpectedBootstrap } from '$lib/reliability/countedAgainstExpectedBootstrap';
import { countedAgainstExpectedDeltaLog } from '$lib/reliability/countedAgainstExpectedDeltaLog';
import { countedOverKnown } from '$lib/reliability/countedOverKnown';
import { weightedCountRatio } from '$lib/reliability/weightedCountRatio';
import reference from './reference/05_indirect_standardisation.json';
import { closeTo } from './closeTo';
import { readNumber, referenceCases } from './referenceCases';

describe('countedOverKnown against published and recomputed figures', () => {
	it("gives R's exact limits and p-values, Liddell 1984 and the Welsh nickel workers among them", () => {
		const cases = referenceCases(reference).filter((one) => 'byar_lower' in one.expected);
		expect(cases).toHaveLength(9);
		for (const { id, inputs, expected, tolerance } of cases) {
			const got = countedOverKnown(inputs.observed, inputs.expected, inputs.conf);
			closeTo(got.lower, expected.lower, tolerance.rel, id);
			closeTo(got.upper, expected.upper, tolerance.rel, id);
			closeTo(got.pValue, expected.p_two_sided_central, tolerance.rel, id);
			closeTo(got.midPValue, expected.p_two_sided_midp, tolerance.rel, id);
		}
	});

	it('gives what the handbooks print: 137 of 24.19893, and 4 of 3.3', () => {
		// Breslow and Day 1987, Welsh nickel workers, as R's poisson.test help prints them
		const nickel = countedOverKnown(137, 24.19893, 0.95);
		expect(nickel.ratio).toBeCloseTo(5.661407, 6);
		expect(nickel.lower).toBeCloseTo(4.753125, 6);
		expect(nickel.upper).toBeCloseTo(6.692709, 6);
		// Sullivan 2006, documentation of an epidemiology calculator: mid-p 0.6571
		expect(countedOverKnown(4, 3.3, 0.95).midPValue).toBeCloseTo(0.6571, 4);
	});
});

describe('countedAgainstExpected against recomputed figures', () => {
	const [strataCase] = referenceCases(reference, 'strata4');
	const strata: ExpectedStratum[] = strataCase.inputs.strata.map((s: Record<string, number>) => ({
		referenceCount: s.base_events,
		referenceExposure: s.base_km,
		exposure: s.new_km,
		count: s.new_events
	}));

	it('gives the expected number and its variance', () => {
		const got = countedAgainstExpected(strata, 0.95);
		closeTo(got.expected, strataCase.expected.expected, 1e-12, 'expected');
		closeTo(got.expectedSd ** 2, strataCase.expected.var_expected, 1e-12, 'variance');
		expect(got.counted).toBe(7);
	});

	it('gives the beta limits of the effective count when one more event has the mean weight', () => {
		const { expected, var_expected, silcocks_beta_ci } = strataCase.expected;
		const got = weightedCountRatio(
			{ total: 7, variance: 7, heaviest: 1 },
			{ total: expected, variance: var_expected, heaviest: var_expected / expected },
			0.95
		);
		closeTo(got.lower, silcocks_beta_ci[0], 1e-8, 'lower');
		closeTo(got.upper, silcocks_beta_ci[1], 1e-8, 'upper');
	});

	it('gives the limits of the logarithm, and of drawing anew within three per cent', () => {
		const delta = countedAgainstExpectedDeltaLog(strata, 0.95)!;
		closeTo(delta.lower, strataCase.expected.delta_log_ci[0], 1e-8, 'delta lower');
		closeTo(delta.upper, strataCase.expected.delta_log_ci[1], 1e-8, 'delta upper');
		const drawn = countedAgainstExpectedBootstrap(strata, 0.95, { seed: 20240, resamples: 40_000 })!;
		closeTo(drawn.lower, strataCase.expected.parametric_bootstrap_ci[0], 0.03, 'drawn lower');
		closeTo(drawn.upper, strataCase.expected.parametric_bootstrap_ci[1], 0.03, 'drawn upper');
	});

	it('is the exact conditional interval for one stratum, zeros included', () => {
		const cases = referenceCases(reference, 'single_stratum');
		expect(cases.length).toBeGreaterThanOrEqual(1);
		for (const { id, inputs, expected, tolerance } of cases) {
			const got = countedAgainstExpected(
				[
					{
						referenceCount: inputs.base_events,
						referenceExposure: inputs.base_km,
						exposure: inputs.new_km,
						count: inputs.observed
					}
				],
				inputs.conf
			);
			closeTo(got.lower, readNumber(expected.exact_conditional_lower), tolerance.rel, id);
			closeTo(got.upper, readNumber(expected.exact_conditional_upper), tolerance.rel, id);
		}
	});
});
