import { expect, test } from 'vitest';
import { canonicalJson } from '$lib/release/canonicalJson';

test('The order in which members were added does not change the text', () => {
	expect(canonicalJson({ b: 1, a: { d: null, c: ['x', true] } })).toBe(
		canonicalJson({ a: { c: ['x', true], d: null }, b: 1 })
	);
});

test('Numbers are rounded to 12 digits, so that the last bits of an addition do not matter', () => {
	expect(canonicalJson(0.1 + 0.2)).toBe('0.3');
	expect(canonicalJson(1 / 3)).toBe('0.333333333333');
	expect(canonicalJson([-0, 1e21, 123456789012])).toBe('[0,1e+21,123456789012]');
});

test('A member that is not there is left out, and text is escaped as in any JSON', () => {
	expect(canonicalJson({ a: undefined, b: 'say "x"\n' })).toBe('{"b":"say \\"x\\"\\n"}');
	expect(JSON.parse(canonicalJson({ ü: 'ü', a: [] }))).toEqual({ a: [], ü: 'ü' });
});

test('What JSON cannot hold is refused', () => {
	for (const value of [NaN, Infinity, { a: -Infinity }, () => 1, 1n])
		expect(() => canonicalJson(value)).toThrow(TypeError);
});
