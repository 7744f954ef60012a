import { describe, expect, it } from 'vitest';
import { random } from '../../sample-rides/generator/random';
import { median, quantile } from '$lib/drivetrain/median';

/** The definition, by sorting: Hyndman and Fan 1996, type 7. */
function bySorting(values: readonly number[], share: number): number {
	const sorted = values.filter((value) => !Number.isNaN(value)).sort((a, b) => a - b);
	if (sorted.length === 0) return NaN;
	const at = share * (sorted.length - 1);
	const below = Math.floor(at);
	const above = Math.min(sorted.length - 1, below + 1);
	return sorted[below] + (sorted[above] - sorted[below]) * (at - below);
}

describe('quantile', () => {
	it('gives the same bits as the definition for few and many values, with ties, order and missing ones', () => {
		const chance = random(11);
		for (let n = 0; n < 300; n++) {
			const length = 1 + Math.floor(chance.next() * (n % 3 === 0 ? 400 : 40));
			const values = Array.from({ length }, () => {
				const value = n % 2 ? chance.normal(0, 1) : Math.round(chance.next() * 8);
				return chance.chance(0.05) ? NaN : value;
			});
			if (n % 5 === 0) values.sort((a, b) => a - b);
			if (n % 7 === 0) values.reverse();
			for (const share of [0, 0.1, 0.5, 0.68, 0.9, 1]) {
				const found = quantile(values, share);
				expect(Object.is(found, bySorting(values, share)), `${length} values at ${share}`).toBe(true);
			}
		}
	});

	it('leaves what it is given as it was, and gives NaN where nothing is left', () => {
		const values = Float64Array.from({ length: 100 }, (_, i) => (i * 37) % 100);
		const before = values.slice();
		expect(median(values)).toBe(49.5);
		expect(values).toEqual(before);
		expect(median(new Float64Array(50).fill(NaN))).toBeNaN();
		expect(median([])).toBeNaN();
	});
});
