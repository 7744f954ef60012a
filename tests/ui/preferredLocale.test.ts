import { expect, it } from 'vitest';
import { preferredLocale } from '$lib/ui/preferredLocale';

it('takes the locale with the highest weight', () => {
	expect(preferredLocale('en;q=0.5, de-CH, de;q=0.9')).toBe('de-CH');
});

it('passes over what is no locale', () => {
	expect(preferredLocale('*, x_y, fr-FR;q=0.3')).toBe('fr-FR');
});

it('gives English without a header', () => {
	expect(preferredLocale(null)).toBe('en-GB');
	expect(preferredLocale('')).toBe('en-GB');
});
