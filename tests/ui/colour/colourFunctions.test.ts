import { describe, expect, it } from 'vitest';
import { colourDifference } from '$lib/ui/colour/colourDifference';
import { contrastRatio } from '$lib/ui/colour/contrastRatio';
import { labOf } from '$lib/ui/colour/labOf';
import { laidOver } from '$lib/ui/colour/laidOver';
import { rgbaOf } from '$lib/ui/colour/rgbaOf';
import { seenBy, SIGHTS } from '$lib/ui/colour/seenBy';
import { tokenValues } from '$lib/ui/colour/tokenValues';

describe('contrastRatio, WCAG 2.2', () => {
	it('is 21 for black on white, 1 for a colour on itself, and the same both ways', () => {
		expect(contrastRatio(rgbaOf('#000'), rgbaOf('#fff'))).toBeCloseTo(21, 10);
		expect(contrastRatio(rgbaOf('#7b2d6f'), rgbaOf('#7b2d6f'))).toBe(1);
		expect(contrastRatio(rgbaOf('#fff'), rgbaOf('#00f'))).toBe(contrastRatio(rgbaOf('#00f'), rgbaOf('#fff')));
	});

	it('puts the lightest grey that passes on white at #767676', () => {
		// from the definition by hand: ((118 / 255 + 0.055) / 1.055) ** 2.4 = 0.1812; 1.05 / 0.2312 = 4.54
		expect(contrastRatio(rgbaOf('#767676'), rgbaOf('#fff'))).toBeCloseTo(4.54, 2);
		expect(contrastRatio(rgbaOf('#777777'), rgbaOf('#fff'))).toBeLessThan(4.5);
	});
});

describe('labOf, ISO/CIE 11664-4', () => {
	// the corners of sRGB as colour tables print them (D65, 2 degrees)
	it.each([
		['#ffffff', 100, 0, 0],
		['#ff0000', 53.24, 80.09, 67.2],
		['#00ff00', 87.73, -86.18, 83.18],
		['#0000ff', 32.3, 79.19, -107.86],
		['#000000', 0, 0, 0]
	])('gives for %s L %d, a %d, b %d', (hex, lightness, a, b) => {
		const lab = labOf(rgbaOf(hex));
		[lightness, a, b].forEach((wanted, place) => expect(Math.abs(lab[place] - wanted)).toBeLessThan(0.06));
	});

	it('gives distances that are nought for one colour and 100 from black to white', () => {
		expect(colourDifference(rgbaOf('#123456'), rgbaOf('#123456'))).toBe(0);
		expect(colourDifference(rgbaOf('#000'), rgbaOf('#fff'))).toBeCloseTo(100, 1);
	});
});

describe('seenBy, Machado, Oliveira and Fernandes 2009', () => {
	it.each(SIGHTS)('leaves greys as they are for %s', (sight) => {
		for (const grey of ['#000000', '#777777', '#ffffff'])
			expect(colourDifference(seenBy(sight, rgbaOf(grey)), rgbaOf(grey))).toBeLessThan(0.1);
	});

	it('takes red and green together where the long or middle waves are missing, blue and green where the short', () => {
		const apart = (sight: (typeof SIGHTS)[number], one: string, other: string) =>
			colourDifference(seenBy(sight, rgbaOf(one)), seenBy(sight, rgbaOf(other))) /
			colourDifference(rgbaOf(one), rgbaOf(other));
		expect(apart('deuteranopia', '#a04000', '#4f7a00')).toBeLessThan(0.35);
		expect(apart('protanopia', '#c86400', '#6e7d00')).toBeLessThan(0.35);
		expect(apart('tritanopia', '#0070a0', '#007a50')).toBeLessThan(0.45);
		expect(apart('tritanopia', '#a04000', '#4f7a00')).toBeGreaterThan(0.6);
	});
});

describe('rgbaOf and laidOver', () => {
	it('reads three, six and eight digits, and nothing else', () => {
		expect(rgbaOf('#fff')).toEqual([1, 1, 1, 1]);
		expect(rgbaOf('#00ff0080')).toEqual([0, 1, 0, 128 / 255]);
		for (const no of ['red', '#ffff', '#12345', 'fff', '']) expect(() => rgbaOf(no)).toThrow('no colour');
	});

	it('lets a wash show its ground by the share that it does not cover', () => {
		expect(laidOver([1, 0, 0, 0.25], [0, 0, 1, 1])).toEqual([0.25, 0, 0.75, 1]);
	});
});

describe('tokenValues', () => {
	it('takes from the dark and the printed scheme what they name and the rest from the light one', () => {
		const css =
			':root { --ink: #111; --gap: 1rem; }\n@media (prefers-color-scheme: dark) { :root { --ink: #eee; } }\n@media print {\n :root { --gap: 0; } }';
		expect(tokenValues(css)).toEqual({
			light: { ink: '#111', gap: '1rem' },
			dark: { ink: '#eee', gap: '1rem' },
			print: { ink: '#111', gap: '0' }
		});
	});
});
