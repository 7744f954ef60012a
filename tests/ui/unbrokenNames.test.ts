import { describe, expect, it } from 'vitest';
import { unbrokenNames } from '$lib/ui/unbrokenNames';

const namesIn = (sentence: string) =>
	unbrokenNames(sentence)
		.filter(({ name }) => name)
		.map(({ text }) => text);

describe('unbrokenNames', () => {
	it('keeps part numbers whole and loses no letter', () => {
		const sentence = 'Record the batch of EX-HS-142, revision A; EX-BR-15; ex-l-2.';
		expect(namesIn(sentence)).toEqual(['EX-HS-142', 'EX-BR-15', 'ex-l-2']);
		expect(
			unbrokenNames(sentence)
				.map(({ text }) => text)
				.join('')
		).toBe(sentence);
	});

	it('keeps a word and the number after it together, as wheels and prototypes are called', () => {
		expect(namesIn('139 km on Wheel 3, 12 km on wheel 4; Prototype 12 and Wheel 3b.')).toEqual([
			'Wheel 3',
			'Prototype 12'
		]);
	});

	it('leaves words with a hyphen, minus signs and the longest names to the browser', () => {
		expect(namesIn('one-sided, pick-ups, −5 and 3 - 4')).toEqual([]);
		expect(namesIn(`EX-${'9'.repeat(40)}`)).toEqual([]);
		expect(unbrokenNames('')).toEqual([]);
	});
});
