import { describe, expect, it } from 'vitest';
import { readPrefix } from '../../src/cli/readPrefix.mjs';

const prefixOf = (text: string | undefined) => readPrefix({ SLIP_LEDGER_PREFIX: text });

describe('readPrefix', () => {
	it('takes folders, and nothing for none', () => {
		expect(prefixOf(undefined)).toBe('');
		expect(prefixOf(' ')).toBe('');
		for (const good of ['/slips', '/a/b', '/Hub_2.0~x-y', '/...']) expect(prefixOf(good), good).toBe(good);
	});

	it.each([
		'slips',
		'/',
		'/slips/',
		'//slips',
		'/a//b',
		'/a/../b',
		'/.',
		'/a b',
		'/a?b',
		'/a"b',
		'/ä',
		'https://site.example/slips',
		`/${'a'.repeat(300)}`
	])('refuses "%s" and says what it must look like', (text) => {
		expect(() => prefixOf(text)).toThrow(/^SLIP_LEDGER_PREFIX is ".*": give the folder .* like \/slips/);
	});
});
