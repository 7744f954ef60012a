import { describe, expect, it } from 'vitest';
import { LedgerRefusal } from '$lib/server';
import { answered, decimal, neededId, pathId, rowId, text } from '../../src/routes/forms';
import { answersOf, reasonOf, seenVerdict, twinDecisionOf } from '../../src/routes/rides/[id]/answersOf';

const form = (fields: Record<string, string>) => {
	const data = new FormData();
	for (const [name, value] of Object.entries(fields)) data.set(name, value);
	return data;
};

describe('forms', () => {
	it('read text, rows and numbers with a point or a comma', () => {
		expect(text(form({ name: '  Blue wheel ' }), 'name')).toBe('Blue wheel');
		expect(text(form({}), 'name')).toBe('');
		expect(rowId(form({ wheel: '12' }), 'wheel')).toBe(12);
		expect(rowId(form({ wheel: '1; DROP' }), 'wheel')).toBeNull();
		expect(decimal(form({ step: '7,5' }), 'step')).toBe(7.5);
		expect(decimal(form({ step: '' }), 'step')).toBeNull();
		expect(decimal(form({ step: 'ten' }), 'step')).toBeNaN();
	});

	it('refuse a row that was not chosen', () => {
		expect(() => neededId(form({}), 'wheel')).toThrow(LedgerRefusal);
	});

	it('answer an address that names no row with "not found"', () => {
		expect(pathId('42')).toBe(42);
		expect(() => pathId('42x')).toThrow(expect.objectContaining({ status: 404 }));
	});

	it('hand the sentence of a refusal back to the page and nothing else', async () => {
		const refused = await answered(() => {
			throw new LedgerRefusal('overlap', 'Another build was on the wheel then.');
		});
		expect(refused).toMatchObject({
			status: 400,
			data: { sentence: 'Another build was on the wheel then.' }
		});
		await expect(answered(() => Promise.reject(new Error('broken')))).rejects.toThrow('broken');
	});
});

describe('answersOf', () => {
	it('takes only what was changed, so that what was found by time keeps following corrections', () => {
		const same = { wheel: '1', 'was-wheel': '1', build: '4', 'was-build': '4' };
		expect(answersOf(form(same)).answers).toEqual({});
		expect(answersOf(form({ ...same, build: '5' })).answers).toEqual({ buildId: 5 });
		expect(answersOf(form({ ...same, build: '' })).answers).toEqual({ buildId: null });
	});

	it('reads yes, no and not known', () => {
		expect(answersOf(form({ wet: 'yes', 'was-wet': '' })).answers).toEqual({ wet: true });
		expect(answersOf(form({ wet: 'no', 'was-wet': 'yes' })).answers).toEqual({ wet: false });
		expect(answersOf(form({ wet: '', 'was-wet': 'yes' })).answers).toEqual({ wet: null });
	});

	it('carries what the page showed of each answer that was changed, and of no other', () => {
		const { answers, seen } = answersOf(
			form({ wet: 'yes', 'was-wet': 'no', load: '12,5', 'was-load': '', rider: '2', 'was-rider': '2' })
		);
		expect(answers).toEqual({ wet: true, loadKg: 12.5 });
		expect(seen).toEqual({ wet: false, loadKg: null });
	});
});

describe('reasonOf', () => {
	it('does not take a rejection without a reason', () => {
		expect(reasonOf(form({ reason: 'shift' }))).toBe('shift');
		expect(() => reasonOf(form({}))).toThrow(/why/);
		expect(() => reasonOf(form({ reason: 'mood' }))).toThrow(LedgerRefusal);
	});
});

describe('twinDecisionOf', () => {
	it('takes the two answers and refuses everything else', () => {
		expect(twinDecisionOf(form({ decision: 'same recording' }))).toBe('same recording');
		expect(twinDecisionOf(form({ decision: 'different ride' }))).toBe('different ride');
		for (const wrong of [{}, { decision: '' }, { decision: 'junk' }])
			expect(() => twinDecisionOf(form(wrong as Record<string, string>))).toThrow(LedgerRefusal);
	});
});

describe('seenVerdict', () => {
	it('is the verdict that the form was shown with, or none', () => {
		expect(seenVerdict(form({ seen: '12' }))).toEqual({ verdictId: 12 });
		expect(seenVerdict(form({ seen: '' }))).toEqual({ verdictId: null });
	});
});
