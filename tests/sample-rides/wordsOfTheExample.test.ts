import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';

/** a second word beside the one that the pages use, and the one that they use */
const SECOND_WORDS: readonly (readonly [RegExp, string])[] = [
	[/\bdriver\b(?!")/i, 'freehub body'],
	[/\bend play\b/i, 'end float']
];

const folder = 'sample-rides/workshop';
const texts = ['sample-rides/programme.json', ...readdirSync(folder).map((name) => join(folder, name))];

it('calls one thing by one word in the example workshop, the one that its parts and pages have', () => {
	expect(texts.length).toBeGreaterThan(4);
	const found = texts.flatMap((path) =>
		readFileSync(path, 'utf8')
			.split('\n')
			.flatMap((line) =>
				SECOND_WORDS.filter(([second]) => second.test(line)).map(
					([, word]) => `${path}: ${line.trim()} (say ${word})`
				)
			)
	);
	expect(found).toEqual([]);
});
