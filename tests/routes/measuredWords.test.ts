import { expect, test } from 'vitest';
import { measuredWords } from '../../src/routes/wheels/[id]/inspections/measuredWords';

const plain = (...given: Parameters<typeof measuredWords>) =>
	measuredWords(...given).replaceAll('\u00a0', ' ');

test('readings have the decimals that the instrument shows', () => {
	expect(plain([1.6, 1.61, 1.6], 0.01, 'mm', 'en-GB')).toBe('1.60; 1.61; 1.60 mm');
	expect(plain([1.5, 1.48], 0.02, 'N', 'en-GB')).toBe('1.50; 1.48 N');
	expect(plain([12], 0.5, 'N', 'de-CH')).toBe('12.0 N');
	expect(plain([12], 1, 'N', 'en-GB')).toBe('12 N');
});

test('digits that were written down are never dropped, and none are made up without an instrument', () => {
	expect(plain([1.625], 0.01, 'mm', 'en-GB')).toBe('1.625 mm');
	expect(plain([1.6], null, 'mm', 'en-GB')).toBe('1.6 mm');
});

test('a unit stays with its last reading', () => {
	expect(measuredWords([1.6], 0.1, 'mm', 'en-GB')).toBe('1.6\u00a0mm');
});
