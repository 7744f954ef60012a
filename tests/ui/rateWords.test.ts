import { expect, it } from 'vitest';
import { createFormats } from '$lib/ui/formats';
import { rateWords } from '$lib/ui/rateWords';

const formats = createFormats('en-GB', 'UTC');
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

it('says the rate, its limits, their confidence and the exposure', () => {
	const words = rateWords(
		{
			count: 12,
			observedM: 214_000,
			ratePerHundredKm: 5.607,
			lowerPerHundredKm: 2.897,
			upperPerHundredKm: 9.795,
			confidence: 0.95
		},
		formats
	);
	expect(plain(words.value)).toBe('5.6 per 100 observed km');
	expect(plain(words.sentence)).toBe(
		'12 slips on 214 observed km: 5.6 per 100 observed km, 95 % limits 2.9 to 9.8.'
	);
});

it('never says nought: no event gives the upper limit', () => {
	const words = rateWords(
		{
			count: 0,
			observedM: 98_000,
			ratePerHundredKm: 0,
			lowerPerHundredKm: 0,
			upperPerHundredKm: 3.764,
			confidence: 0.95
		},
		formats
	);
	expect(plain(words.value)).toBe('none found; at most 3.8 per 100 observed km');
	expect(plain(words.sentence)).not.toMatch(/\b0 per/);
});

it('gives no rate where nothing was observed', () => {
	const words = rateWords(
		{
			count: 0,
			observedM: 0,
			ratePerHundredKm: null,
			lowerPerHundredKm: 0,
			upperPerHundredKm: null,
			confidence: 0.95
		},
		formats
	);
	expect(words.value).toBe('nothing observed yet');
});
