import { expect, it } from 'vitest';
import { dateFormat, numberFormat } from '$lib/ui/intlFormats';

it('keeps a format for each language, number of decimals and zone, and tells them apart', () => {
	expect(numberFormat('en-GB', 1, 1)).toBe(numberFormat('en-GB', 1, 1));
	expect(numberFormat('en-GB', 1, 1).format(1234.56)).toBe('1,234.6');
	expect(numberFormat('de-DE', 1, 1).format(1234.56)).toBe('1.234,6');
	expect(numberFormat('en-GB', 2, 2).format(1234.56)).toBe('1,234.56');
	const night = new Date('2026-03-01T23:30:00Z');
	expect(dateFormat('en-GB', 'UTC', false).format(night)).toBe('1 Mar 2026');
	expect(dateFormat('en-GB', 'Asia/Tokyo', false).format(night)).toBe('2 Mar 2026');
	expect(dateFormat('en-GB', 'UTC', true).format(night)).toContain('23:30');
});

it('lets the oldest go when strangers ask in ever new languages', () => {
	const first = numberFormat('en-GB', 3, 3);
	for (let n = 0; n < 300; n++) numberFormat(`en-x-a${n}`, 0, 0);
	expect(numberFormat('en-GB', 3, 3)).not.toBe(first);
});
