import { describe, expect, it } from 'vitest';
import { normalAbove } from '$lib/reliability/normalAbove';
import { normalQuantile } from '$lib/reliability/normalQuantile';
import { closeTo } from './closeTo';

describe('normalAbove against published tail areas', () => {
	it('gives the areas of Abramowitz and Stegun, Handbook of Mathematical Functions, tables 26.1 and 26.2', () => {
		// digits from memory; that they are right, an arbitrary-precision computation (mpmath 1.3) shows
		closeTo(normalAbove(1), 0.158655253931457, 1e-12, '1');
		closeTo(normalAbove(1.96), 0.0249978951482204, 1e-12, '1.96');
		closeTo(normalAbove(5), 2.86651571879194e-7, 1e-12, '5');
		closeTo(normalAbove(10), 7.61985302416053e-24, 1e-12, '10');
	});

	it('keeps its digits in the far tail, mirrors at 0 and knows both infinities', () => {
		closeTo(normalAbove(30), 4.90671392714819e-198, 1e-11, '30');
		expect(normalAbove(0)).toBe(0.5);
		expect(normalAbove(-2) + normalAbove(2)).toBeCloseTo(1, 15);
		expect(normalAbove(Infinity)).toBe(0);
		expect(normalAbove(-Infinity)).toBe(1);
		expect(normalAbove(NaN)).toBeNaN();
	});

	it('turns the quantile back', () => {
		for (const p of [1e-6, 0.025, 0.3, 0.5, 0.9])
			expect(1 - normalAbove(normalQuantile(p))).toBeCloseTo(p, 12);
	});
});
