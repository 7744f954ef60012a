import { expect, it } from 'vitest';
import { longestRisingRun } from '$lib/ride/longestRisingRun';

it('keeps everything that never falls, equal values too', () => {
	expect(Array.from(longestRisingRun(Float64Array.of(1, 1, 2, 5, 5)))).toEqual([0, 1, 2, 3, 4]);
});

it('leaves out a lone value ahead of its time instead of all that follow', () => {
	expect(Array.from(longestRisingRun(Float64Array.of(1, 2, 9, 3, 4)))).toEqual([0, 1, 3, 4]);
});

it('leaves out values that are not finite, and is empty without any', () => {
	expect(Array.from(longestRisingRun(Float64Array.of(1, NaN, 2)))).toEqual([0, 2]);
	expect(Array.from(longestRisingRun(Float64Array.of(NaN, Infinity)))).toEqual([]);
});

it('is as long as the run that trying every start and end finds, on seeded sequences', () => {
	let state = 5;
	const next = () => (state = (state * 48_271) % 2_147_483_647) % 12;
	for (let round = 0; round < 300; round++) {
		const values = Float64Array.from({ length: 1 + (round % 25) }, next);
		// quadratic and plain: the longest run that ends at each place
		const longest: number[] = [];
		values.forEach((value, i) => {
			longest[i] = 1 + Math.max(0, ...longest.filter((_, k) => values[k] <= value));
		});
		const run = longestRisingRun(values);
		expect(run).toHaveLength(Math.max(...longest));
		for (let k = 1; k < run.length; k++) {
			expect(run[k]).toBeGreaterThan(run[k - 1]);
			expect(values[run[k]]).toBeGreaterThanOrEqual(values[run[k - 1]]);
		}
	}
});
