import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { stampOfSources } from '../../src/cli/stampOfSources.mjs';

let project: string;
beforeEach(() => {
	project = mkdtempSync(join(tmpdir(), 'slip-ledger-stamp-'));
	mkdirSync(join(project, 'src/lib'), { recursive: true });
	writeFileSync(join(project, 'src/lib/a.ts'), 'one');
	writeFileSync(join(project, 'package-lock.json'), '{}');
});
afterEach(() => rmSync(project, { recursive: true, force: true }));

describe('stampOfSources', () => {
	it('stays the same while nothing that is built changes', () => {
		const before = stampOfSources(project);
		writeFileSync(join(project, 'README.md'), 'new words');
		mkdirSync(join(project, 'data'));
		expect(stampOfSources(project)).toBe(before);
		expect(before).toMatch(/^[0-9a-f]{16}$/);
	});

	it.each([
		['a source changes', () => writeFileSync(join(project, 'src/lib/a.ts'), 'two')],
		['a source is added', () => writeFileSync(join(project, 'src/lib/b.ts'), '')],
		['the lock file changes', () => writeFileSync(join(project, 'package-lock.json'), '{ }')],
		[
			'the figures of the method page change',
			() => {
				mkdirSync(join(project, 'tests/bench'), { recursive: true });
				writeFileSync(join(project, 'tests/bench/detection-figures.md'), 'found');
			}
		],
		['a source is removed', () => rmSync(join(project, 'src/lib/a.ts'))]
	])('changes when %s', (_title, change) => {
		const before = stampOfSources(project);
		change();
		expect(stampOfSources(project)).not.toBe(before);
	});

	it('is another one for each prefix that is built in, and for none', () => {
		const none = stampOfSources(project, {});
		expect(stampOfSources(project, { SLIP_LEDGER_PREFIX: '' })).toBe(none);
		const slips = stampOfSources(project, { SLIP_LEDGER_PREFIX: '/slips' });
		expect(slips).not.toBe(none);
		expect(stampOfSources(project, { SLIP_LEDGER_PREFIX: '/hubs' })).not.toBe(slips);
		expect(() => stampOfSources(project, { SLIP_LEDGER_PREFIX: 'slips' })).toThrow('SLIP_LEDGER_PREFIX');
	});

	it('tells where one file ends and the next begins', () => {
		writeFileSync(join(project, 'src/lib/b.ts'), 'two');
		const before = stampOfSources(project);
		writeFileSync(join(project, 'src/lib/a.ts'), 'onetwo');
		writeFileSync(join(project, 'src/lib/b.ts'), '');
		expect(stampOfSources(project)).not.toBe(before);
	});
});
