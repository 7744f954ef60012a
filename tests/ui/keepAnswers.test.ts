import { expect, it } from 'vitest';
import { keepAnswers } from '$lib/ui/keepAnswers';

it('asks once for each number, and tells numbers apart to the last bit', () => {
	const asked: number[] = [];
	const half = keepAnswers((value) => {
		asked.push(value);
		return value / 2;
	});
	expect([0.1, 0.1 + Number.EPSILON, 0.1, NaN, NaN].map(half)).toEqual([
		0.05,
		(0.1 + Number.EPSILON) / 2,
		0.05,
		NaN,
		NaN
	]);
	expect(asked).toEqual([0.1, 0.1 + Number.EPSILON, NaN]);
});

it('forgets everything rather than grow', () => {
	const asked: number[] = [];
	const same = keepAnswers((value) => (asked.push(value), value), 3);
	for (const value of [1, 2, 3, 1, 4, 1]) expect(same(value)).toBe(value);
	expect(asked).toEqual([1, 2, 3, 4, 1]);
});
