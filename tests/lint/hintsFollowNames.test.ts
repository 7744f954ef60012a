import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';

/** a hint is drawn under its field (base.css): what a field is called must not be one */
const NAMED_BY_A_HINT = /<label[^>]*>\s*<\w+[^>]*class="[^"]*\bhint\b[^"]*"[^>]*>([^<]*)/g;

it('calls no field by a hint, which would stand under it', () => {
	const found = readdirSync('src', { recursive: true, encoding: 'utf8' })
		.filter((name) => name.endsWith('.svelte'))
		.flatMap((name) => {
			const path = join('src', name);
			return [...readFileSync(path, 'utf8').matchAll(NAMED_BY_A_HINT)].map(
				([, words]) => `${path}: ${words.trim()}`
			);
		});
	expect(found).toEqual([]);
});
