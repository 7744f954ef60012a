import { describe, expect, it } from 'vitest';
import { steadyItems } from '$lib/charts/steadyItems';

describe('steadyItems', () => {
	it('keeps a list while it holds the same things, and takes another', () => {
		const [a, b] = [{ id: 1 }, { id: 1 }];
		const kept = steadyItems<typeof a>();
		const first = kept([a, b]);
		expect(kept([a, b])).toBe(first);
		for (const other of [[b, a], [a], [a, a], [a, b, b]]) expect(kept(other)).toBe(other);
		expect(kept([])).toEqual([]);
	});
});
