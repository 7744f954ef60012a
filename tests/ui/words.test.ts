import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { WORDS } from '$lib/ui/wordList';
import { WORD_NAMES } from '$lib/ui/wordNames';
import { WORD_GROUPS, wordsOf, type WordText } from '$lib/ui/words';

const words: [string, WordText][] = Object.entries(WORDS);

describe('wordsOf', () => {
	it('gives every word once, in one of the groups', () => {
		const listed = WORD_GROUPS.flatMap((group) => wordsOf(group).map(({ id }) => id as string));
		expect(listed.toSorted()).toEqual(words.map(([id]) => id).toSorted());
		for (const group of WORD_GROUPS) expect(wordsOf(group).length).toBeGreaterThan(0);
		const names = WORD_GROUPS.flatMap((group) => wordsOf(group).map(({ word }) => word));
		expect(names.toSorted()).toEqual(Object.values(WORD_NAMES).toSorted());
		expect(new Set(names).size).toBe(names.length);
	});
});

describe('WORDS', () => {
	it('explains each word in whole sentences', () => {
		for (const [id, { says, madeOf }] of words) {
			expect(says, id).toMatch(/[.?]$/);
			expect(says.length, id).toBeGreaterThan(30);
			if (madeOf) expect(madeOf, id).toMatch(/\.$/);
		}
	});

	it('leads only to sections that the method page has', () => {
		const folder = join(import.meta.dirname, '../../src/routes/method');
		const page = readdirSync(folder)
			.filter((name) => name.endsWith('.svelte'))
			.map((name) => readFileSync(join(folder, name), 'utf8'))
			.join('');
		for (const [id, { more }] of words) {
			if (!more) continue;
			const [path, anchor] = more.href.split('#');
			expect(existsSync(join(folder, '..', path)), id).toBe(true);
			expect(page, `${id} leads to ${more.href}`).toContain(`id="${anchor}"`);
		}
	});
});
