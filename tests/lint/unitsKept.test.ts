import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';

/** where words of pages are written; controls shown to developers alone are no page */
const FOLDERS = ['src/routes', 'src/lib/ui'];
const NOT = /^src\/routes\/(design|review\/ReviewStrips)/;
/** a written-out number and its unit with a plain space, at which a line may end: "0.5" on one line, "g" on the next */
const PARTED = /\} (?:g|mm|Nm|km|kg|rpm|km\/h|h|s)(?![\w/])/;
/** the same of figures that stand in the words of a page themselves */
const PARTED_IN_WORDS = /\d (?:g|mm|Nm|km|kg|rpm|km\/h|h|s|Hz)(?![\w/])/;
const COMMENT = /^\s*(?:\*|\/\/|\/\*|<!--)/;

const sources = FOLDERS.flatMap((folder) =>
	readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((name) => join(folder, name))
).filter((path) => /\.(svelte|ts)$/.test(path) && !NOT.test(path));

it('keeps a number and its unit on one line of a page', () => {
	expect(sources.length).toBeGreaterThan(200);
	const parted = sources.flatMap((path) =>
		readFileSync(path, 'utf8')
			.split('\n')
			.filter((line) => PARTED.test(line))
			.map((line) => `${path}: ${line.trim()}`)
	);
	expect(parted).toEqual([]);
});

it('keeps a figure that is written into the words of a page on one line with its unit', () => {
	const parted = sources
		.filter((path) => path.endsWith('.svelte'))
		.flatMap((path) =>
			readFileSync(path, 'utf8')
				.split('\n')
				.filter((line) => PARTED_IN_WORDS.test(line) && !COMMENT.test(line))
				.map((line) => `${path}: ${line.trim()}`)
		);
	expect(parted).toEqual([]);
});
