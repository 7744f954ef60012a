import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const folder = new URL('../../src/lib/reliability/', import.meta.url);
const files = readdirSync(folder).filter(
	(name) => name.endsWith('.ts') && !name.endsWith('.d.ts') && name !== 'checks.ts'
);
const text = (name: string) => readFileSync(new URL(name, folder), 'utf8');
/** files of types and one-line helpers */
const WITHOUT_FORMULA = ['watchedHistory.ts'];
/** files of several functions that belong together */
const SEVERAL = ['poissonProbability', 'unitCounts'];

describe('the statistics', () => {
	it.each(files.filter((name) => !WITHOUT_FORMULA.includes(name)))(
		'%s names its function and its source',
		(name) => {
			const source = text(name);
			expect(source).toMatch(/^ \* Source: \S/m);
			const exported = [...source.matchAll(/^export function (\w+)/gm)].map(([, found]) => found);
			const named = name.replace('.ts', '');
			expect(exported.some((one) => one === named) || SEVERAL.includes(named)).toBe(true);
		}
	);

	it('knows nothing of bicycles: no word of theirs stands in code', () => {
		for (const name of files) {
			const code = text(name)
				.replace(/\/\*[\s\S]*?\*\//g, '')
				.replace(/\/\/.*$/gm, '');
			expect(code, name).not.toMatch(/wheel|ride|hub|torque|slip|cadence|km\b/i);
		}
	});
});
