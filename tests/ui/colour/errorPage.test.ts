import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { tokenValues } from '$lib/ui/colour/tokenValues';

const read = (path: string) => readFileSync(new URL(`../../../${path}`, import.meta.url), 'utf8');
const TOKENS = tokenValues(read('src/lib/ui/tokens.css'));
const SHEET = read('static/error.css');

/** what stands between the braces of the nth ":root" of the sheet */
const rootOf = (nth: number) => /\{([^}]*)\}/.exec(SHEET.split(':root')[nth + 1])![1];
const valuesOf = (text: string) =>
	Object.fromEntries([...text.matchAll(/--([\w-]+):\s*([^;]+);/g)].map(([, name, value]) => [name, value]));

describe('the page for what is refused before any other page is made', () => {
	it.each([
		['light', 0],
		['dark', 1]
	] as const)('has the colours of the tokens, %s', (scheme, nth) => {
		const own = valuesOf(rootOf(nth));
		expect(Object.keys(own).length).toBe(6);
		for (const [name, value] of Object.entries(own)) expect(value, name).toBe(TOKENS[scheme][name]);
	});

	it('names no colour beside them', () => {
		const rules = SHEET.replace(/\/\*[\s\S]*?\*\//g, '').replaceAll(/:root\s*\{[^}]*\}/g, '');
		expect(rules).not.toMatch(/#[\da-f]{3,8}\b|rgb|hsl/i);
	});

	it('loads nothing but its sheet and the sign, and leads back', () => {
		const page = read('src/error.html');
		expect([...page.matchAll(/(?:href|src)="([^"]+)"/g)].map(([, to]) => to)).toEqual([
			'/favicon.svg',
			'/error.css',
			'/',
			'/'
		]);
		expect(page).not.toMatch(/<style|style=|<script/);
	});
});
