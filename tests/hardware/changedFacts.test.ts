import { describe, expect, it } from 'vitest';
import { changedFacts } from '$lib/hardware/changedFacts';

describe('changedFacts', () => {
	it('names what a record would no longer say', () => {
		expect(changedFacts({ name: 'a', step: 15 }, { name: 'b', step: null })).toEqual(['name', 'step']);
		expect(changedFacts({ bill: [{ part: 1 }, { part: 2 }] }, { bill: [{ part: 1 }, { part: 3 }] })).toEqual([
			'bill 2 part'
		]);
	});

	it('lets what was left empty be completed: null, an empty text, an empty list', () => {
		expect(
			changedFacts(
				{ step: null, note: '', bill: [], torques: [{ nm: null }] },
				{ step: 0, note: 'x', bill: [{ part: 1 }], torques: [{ nm: 5 }] }
			)
		).toEqual([]);
	});

	it('takes a line more or less, and an emptied fact, for a change', () => {
		expect(changedFacts({ bill: [1] }, { bill: [1, 2] })).toEqual(['bill']);
		expect(changedFacts({ bill: [1] }, { bill: [] })).toEqual(['bill']);
		expect(changedFacts({ note: 'x' }, { note: '' })).toEqual(['note']);
		expect(changedFacts({ zero: 0 }, { zero: null })).toEqual(['zero']);
		expect(changedFacts({ bill: [1] }, { bill: 'x' })).toEqual(['bill']);
	});

	it('finds nothing in a record that stays as it is', () => {
		const record = { name: 'a', bill: [{ part: 1, serial: '7' }] };
		expect(changedFacts(record, structuredClone(record))).toEqual([]);
	});
});
