import { describe, expect, it } from 'vitest';
import { givenAnswers, questionOf } from '../../src/routes/answers/givenAnswers';

const form = (rows: string[], fields: Record<string, string> = {}) => {
	const data = new FormData();
	for (const row of rows) data.append('row', row);
	for (const [name, value] of Object.entries(fields)) data.set(name, value);
	return data;
};

describe('givenAnswers', () => {
	it('takes the ticked rows only, each with its own answer', () => {
		const fields = { 'answer-4': 'yes', 'answer-5': 'no', 'answer-6': 'yes' };
		expect(givenAnswers(form(['4', '6'], fields))).toEqual([
			{ rideId: 4, value: 'yes' },
			{ rideId: 6, value: 'yes' }
		]);
	});

	it('takes one answer for all ticked rows when it was chosen', () => {
		const fields = { 'answer-4': 'yes', 'for-all': 'no' };
		expect(givenAnswers(form(['4', '5'], fields)).map(({ value }) => value)).toEqual(['no', 'no']);
	});

	it('tells laps of a ride apart', () => {
		const fields = { 'answer-4@61.25': 'something else' };
		expect(givenAnswers(form(['4@61.25'], fields))).toEqual([
			{ rideId: 4, lapS: 61.25, value: 'something else' }
		]);
	});

	it('refuses a ticked row without an answer, and a row that is none', () => {
		expect(() => givenAnswers(form(['4']))).toThrow('no answer yet');
		expect(() => givenAnswers(form(['4; DROP'], { 'for-all': 'yes' }))).toThrow('no ride');
	});
});

describe('questionOf', () => {
	it('takes the questions that there are and refuses others', () => {
		expect(questionOf(form([], { question: 'wet' }))).toBe('wet');
		expect(() => questionOf(form([], { question: 'toString' }))).toThrow('which question');
	});
});
