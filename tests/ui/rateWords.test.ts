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

it('calls what nobody has reviewed events that are counted, not slips', () => {
	const rate = {
		count: 27,
		observedM: 364_000,
		ratePerHundredKm: 7.42,
		lowerPerHundredKm: 4.4,
		upperPerHundredKm: 12.8,
		confidence: 0.95
	};
	expect(plain(rateWords(rate, formats, 27).sentence)).toMatch(
		/^27 events counted as slips on 364 observed km: 7\.4/
	);
	expect(plain(rateWords({ ...rate, count: 1 }, formats, 1).sentence)).toMatch(
		/^1 event counted as a slip on /
	);
	expect(plain(rateWords(rate, formats).sentence)).toMatch(/^27 slips on /);
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
	// 3.69 events / 98 km: the upper end of two-sided limits (Garwood 1936), not the one-sided bound of 3.00
	expect(plain(words.sentence)).toContain('up to 3.8 per 100 observed km (upper end of its 95 % limits)');
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
