import { expect, it } from 'vitest';
import { fieldNumber } from '$lib/ui/fieldNumber';

it('begins a field with what would be read back from it, and leaves it empty where nothing is known', () => {
	expect(fieldNumber(12345.678, 'en-GB', 3)).toBe('12345.678');
	expect(fieldNumber(12345.5, 'de-DE', 3)).toBe('12345,5');
	expect(fieldNumber(1.23456, 'en-GB', 2)).toBe('1.23');
	expect([null, undefined, NaN].map((value) => fieldNumber(value, 'en-GB', 2))).toEqual(['', '', '']);
});
