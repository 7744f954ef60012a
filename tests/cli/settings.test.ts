import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { documentedSettings } from './documentedSettings';

const FILES = [
	...['src', 'tests'].flatMap((folder) =>
		readdirSync(folder, { recursive: true, withFileTypes: true })
			.filter((entry) => entry.isFile() && /\.(ts|mjs|js|svelte)$/.test(entry.name))
			.map((entry) => join(entry.parentPath, entry.name))
	),
	'vite.config.ts',
	'svelte.config.js'
].filter((file) => !/tests[/\\]cli[/\\](settings|deploy)\.test\.ts$/.test(file));

/** variable -> the files that read or set it */
function used(): Map<string, string[]> {
	const found = new Map<string, string[]>();
	for (const file of FILES) {
		const text = readFileSync(file, 'utf8');
		const names = [
			...text.matchAll(/\benv\.([A-Z][A-Z_]+)\b/g),
			...text.matchAll(/\b(SLIP_LEDGER_[A-Z_]*[A-Z])\b/g)
		].map(([, name]) => name);
		for (const name of new Set(names)) found.set(name, [...(found.get(name) ?? []), file]);
	}
	return found;
}

describe('the table of environment variables in DEVELOPERS.md', () => {
	const rows = documentedSettings();

	it('names every variable that the program reads', () => {
		const documented = rows.map(({ name }) => name);
		expect([...used().keys()].filter((name) => !documented.includes(name))).toEqual([]);
		expect(used().size).toBeGreaterThan(8);
	});

	it('names none that nothing reads', () => {
		// these are read by libraries that the build brings along
		const ofLibraries = ['ADDRESS_HEADER', 'BODY_SIZE_LIMIT', 'NODE_ENV'];
		const names = [...used().keys(), ...ofLibraries];
		expect(rows.map(({ name }) => name).filter((name) => !names.includes(name))).toEqual([]);
	});

	it('says of each what it means, once', () => {
		expect(new Set(rows.map(({ name }) => name)).size).toBe(rows.length);
		for (const { name, value, meaning } of rows) {
			expect(value, name).not.toBe('');
			expect(meaning.length, name).toBeGreaterThan(10);
		}
	});
});
