import { expect, it } from 'vitest';
import { correctedWords, detectionWords } from '$lib/ui/detectionWords';
import { expectedFalseAlarms } from '$lib/ui/expectedFalseAlarms';
import { createFormats } from '$lib/ui/formats';
import { ageChoiceWords, policyWords } from '$lib/ui/policyWords';

const formats = createFormats('en-GB', 'UTC');
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

it('says of a corrected figure that counts nothing how high it may be, never 0', () => {
	expect(correctedWords({ value: 0, lower: 0, upper: 4.2 }, formats)).toBe('at most 4.2');
	expect(correctedWords({ value: null, lower: 0, upper: null }, formats)).toBe('cannot be said');
	expect(correctedWords({ value: 2, lower: 1, upper: 4 }, formats)).toBe('2.0 (1.0 to 4.0)');
});

it('says why nothing can be corrected', () => {
	expect(detectionWords(null, formats)).toContain('too few were put into its rides');
});

it('says how many false alarms the ratio may rest on, and that they pull it towards 1', () => {
	const rate = {
		events: 2,
		confirmed: 0,
		observedM: 400_000,
		ratePerThousandKm: 5,
		lowerPerThousandKm: 0.6,
		upperPerThousandKm: 18,
		confidence: 0.95
	};
	const builds = [
		{ name: 'Old', observedM: 200_000 },
		{ name: 'New', observedM: 100_000 }
	];
	expect(plain(expectedFalseAlarms(rate, builds, formats))).toContain(
		'about 1.0 (at most 3.6) on Old and about 0.50 (at most 1.8) on New before any review'
	);
	const none = { ...rate, events: 0, ratePerThousandKm: 0, upperPerThousandKm: 9 };
	expect(plain(expectedFalseAlarms(none, builds, formats))).toContain('at most 1.8 on Old');
	expect(expectedFalseAlarms({ ...rate, ratePerThousandKm: null }, builds, formats)).toContain('not known');
});

it('prints every switch of a comparison', () => {
	const words = policyWords({ unit: 'episodes', shown: 'confirmed', age: 'service', detection: 'corrected' });
	expect(words).toBe(
		'slips less than 10 s apart count as one; charts count confirmed slips only; age is the distance since the last service; rates and ratios are also given corrected for slips not found'
	);
	expect(ageChoiceWords('pawl set')).toBe('of the pawl set, by its serial');
});
