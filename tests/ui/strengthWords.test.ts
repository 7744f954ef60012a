import { describe, expect, it } from 'vitest';
import { createFormats } from '$lib/ui/formats';
import { strengthWords } from '$lib/ui/strengthWords';

const formats = createFormats('en-GB', 'UTC');

describe('strengthWords', () => {
	it("is a plain figure with the locale's decimal sign, never a percentage", () => {
		expect(strengthWords(0.418, formats)).toEqual({ figure: '0.42', word: 'weak' });
		expect(strengthWords(0.7, createFormats('de-DE', 'UTC')).figure).toBe('0,70');
	});

	it('says the word that belongs to the printed figure', () => {
		expect(strengthWords(0.494, formats)).toEqual({ figure: '0.49', word: 'weak' });
		expect(strengthWords(0.496, formats)).toEqual({ figure: '0.50', word: 'clear' });
		expect(strengthWords(0.894, formats)).toEqual({ figure: '0.89', word: 'clear' });
		expect(strengthWords(0.896, formats)).toEqual({ figure: '0.90', word: 'strong' });
	});

	it('is never certain, and says so where nothing is known', () => {
		expect(strengthWords(0.9999, formats).figure).toBe('0.99');
		expect(strengthWords(0.0001, formats).figure).toBe('0.01');
		expect(strengthWords(NaN, formats)).toEqual({ figure: 'not known', word: '' });
	});
});
