import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { color } from 'd3';
import { describe, expect, it } from 'vitest';
import { GROUNDS, MARK_INKS, ON_ACCENT, TEXT_INKS } from '$lib/ui/colour/uses';
import { filesBelow, rulesOf, type Rule } from './stylesOf';

const SRC = fileURLToPath(new URL('../../src', import.meta.url));
/** tokens, and their printed values as drawings that stand by themselves need them (held equal by a test) */
const MAY_NAME_COLOURS = ['lib/ui/tokens.css', 'lib/charts/inkOf.ts'];
const styled = filesBelow(SRC, ['.svelte', '.css']).filter((file) => !MAY_NAME_COLOURS.includes(file));
const rules: Rule[] = styled.flatMap((file) => rulesOf(SRC, file));
const tokensIn = (value: string) => [...value.matchAll(/var\(--([\w-]+)/g)].map(([, name]) => name);
const told = ({ file, selector, property, value }: Rule) => `${file}: ${selector} { ${property}: ${value} }`;

/** "#abc", "rgb(...)", "tomato": anything that names a colour without a token */
function namesAColour(value: string): boolean {
	const words = value.replace(/var\([^)]*\)/g, '').match(/#?[\w-]+\(?/g) ?? [];
	return words.some((word) =>
		/^(rgba?|hsla?|hwb|lab|lch|oklab|oklch|color|color-mix)\($/.test(word)
			? true
			: word !== 'transparent' && color(word) !== null
	);
}

describe('colours in the sources', () => {
	it('are found by this test where they are named', () => {
		for (const value of ['#fff', '1px solid #12345678', 'tomato', 'rgb(1 2 3)', 'color-mix(in srgb, red)'])
			expect(namesAColour(value), value).toBe(true);
		for (const value of ['var(--ink)', '1px solid var(--rule)', 'transparent', 'none', 'inherit', '0 auto'])
			expect(namesAColour(value), value).toBe(false);
		expect(rules.length).toBeGreaterThan(500);
	});

	it('stand in the tokens alone: style sheets', () => {
		const paints = /color|background|border|outline|fill|stroke|shadow|decoration|rule|accent/;
		const found = rules.filter(({ property, value }) => paints.test(property) && namesAColour(value));
		expect(found.map(told)).toEqual([]);
	});

	it('stand in the tokens alone: markup and code', () => {
		const literal =
			/(["'`])#(?:[\da-f]{3}|[\da-f]{6}|[\da-f]{8})\1|\b(?:fill|stroke|color)="(?!none|url|\{|currentColor)[^"]+"/gi;
		const found = filesBelow(SRC, ['.svelte', '.ts', '.html'])
			.filter((file) => !MAY_NAME_COLOURS.includes(file))
			.flatMap((file) => {
				const text = readFileSync(join(SRC, file), 'utf8').replace(/\/\*[\s\S]*?\*\/|<style>[\s\S]*/g, '');
				return [...text.matchAll(literal)].map(([what]) => `${file}: ${what}`);
			});
		// a canvas fill in a template is written as fill="${...}"
		expect(found.filter((line) => !line.includes('${'))).toEqual([]);
	});

	it('write text in the inks whose contrast is held', () => {
		const allowed: readonly string[] = [...TEXT_INKS, ON_ACCENT];
		const found = rules.filter(
			({ property, value }) =>
				property === 'color' && tokensIn(value).some((token) => !allowed.includes(token))
		);
		expect(found.map(told)).toEqual([]);
	});

	it('lie as grounds only where contrasts are held', () => {
		const allowed: readonly string[] = [...GROUNDS, 'accent', 'accent-wash', 'veil', 'picture'];
		const found = rules.filter(
			({ property, value }) =>
				/^background/.test(property) &&
				!value.includes('gradient') &&
				tokensIn(value).some((token) => !allowed.includes(token))
		);
		expect(found.map(told)).toEqual([]);
	});

	it('give no control an edge that cannot be seen', () => {
		const allowed: readonly string[] = MARK_INKS;
		const found = rules.filter(
			({ selector, property, value }) =>
				/(^|[\s,>(])(button|input|select|textarea|\.button)(?![\w-])/.test(selector) &&
				/^border(?!-radius)/.test(property) &&
				tokensIn(value).some((token) => !allowed.includes(token))
		);
		expect(found.map(told)).toEqual([]);
	});
});
