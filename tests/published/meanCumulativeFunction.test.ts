import { describe, expect, it } from 'vitest';
import { meanCumulativeFunction } from '$lib/reliability/meanCumulativeFunction';
import { normalQuantile } from '$lib/reliability/normalQuantile';
import { studentQuantile } from '$lib/reliability/studentQuantile';
import type { WatchedHistory } from '$lib/reliability/watchedHistory';
import reference from './reference/04_mcf.json';
import { closeTo } from './closeTo';
import { referenceCases, type ReferenceCase } from './referenceCases';

function historiesOf({ inputs }: ReferenceCase): WatchedHistory[] {
	const windows = inputs.windows as { id: number; start: number; stop: number }[];
	const events = inputs.events as { id: number; t: number }[];
	return [...new Set(windows.map((w) => w.id))].map((id) => ({
		windows: windows.filter((w) => w.id === id).map((w) => ({ from: w.start, to: w.stop })),
		events: events.filter((e) => e.id === id).map((e) => e.t)
	}));
}

describe('meanCumulativeFunction against published and recomputed figures', () => {
	it('gives curve, systems at risk and both errors of 41 engines and of an invented fleet with late entry', () => {
		const cases = referenceCases(reference).filter((one) => 'at_risk' in one.expected);
		expect(cases.length).toBeGreaterThanOrEqual(2);
		for (const one of cases) {
			const { expected, id } = one;
			const got = meanCumulativeFunction(historiesOf(one), one.inputs.conf);
			const z = normalQuantile(0.975);
			const t = studentQuantile(0.975, got.systems - 1);
			expect(got.steps.map((step) => step.age)).toEqual(expected.time);
			expect(got.steps.map((step) => step.atRisk)).toEqual(expected.at_risk);
			expect(got.steps.map((step) => step.events)).toEqual(expected.events);
			got.steps.forEach((step, i) => {
				closeTo(step.mean, expected.mcf[i], 1e-8, id);
				closeTo(step.standardError, expected.se_robust[i], 1e-8, id);
				closeTo(step.standardErrorSingle, expected.se_poisson[i], 1e-8, id);
				// R's limits take the normal quantile and the robust error alone
				const robust = (z * expected.se_robust[i]) / expected.mcf[i];
				closeTo(expected.mcf[i] * Math.exp(robust), expected.upper_log[i], 1e-8, id);
				expect(step.upper, id).toBeGreaterThanOrEqual(expected.upper_log[i] * (1 - 1e-9));
				expect(step.lower, id).toBeLessThanOrEqual(expected.lower_log[i] * (1 + 1e-9));
				const wider = Math.max(t * step.standardError, z * step.standardErrorSingle);
				closeTo(step.upper, step.mean * Math.exp(wider / step.mean), 1e-12, id);
			});
		}
	});

	it('prints what R prints for the valve seats of 41 engines at 653 days (Nelson and Doganaksoy 1989)', () => {
		const [valves] = referenceCases(reference, 'valveSeat');
		const last = meanCumulativeFunction(historiesOf(valves), 0.95).steps.at(-1)!;
		expect(last.age).toBe(653);
		expect(last.mean).toBeCloseTo(1.542688, 6);
		expect(last.standardError).toBeCloseTo(0.311656, 6);
		expect(last.standardErrorSingle).toBeCloseTo(0.262806, 6);
	});
});
