import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { filesBelow } from '../lint/stylesOf';

const SRC = fileURLToPath(new URL('../../src', import.meta.url));
const loaded = async (dev: boolean) => {
	vi.resetModules();
	vi.doMock('$app/environment', () => ({ dev, building: false, browser: false, version: '' }));
	// the test runner empties style sheets, also when their text is asked for
	vi.doMock('$lib/ui/tokens.css?raw', () => ({
		default: readFileSync(join(SRC, 'lib/ui/tokens.css'), 'utf8')
	}));
	const { load } = await import('../../src/routes/design/+page.server');
	return (load as () => { schemes: { name: string; tokens: Record<string, string> }[] })();
};

describe('the page of the look', () => {
	afterEach(() => {
		vi.doUnmock('$app/environment');
		vi.doUnmock('$lib/ui/tokens.css?raw');
	});

	it('is not there on a built server', async () => {
		await expect(loaded(false)).rejects.toMatchObject({ status: 404 });
	});

	it('has the tokens of both schemes while it is worked on', async () => {
		const { schemes } = await loaded(true);
		expect(schemes.map(({ name }) => name)).toEqual(['light', 'dark']);
		expect(schemes[0].tokens.ground).not.toBe(schemes[1].tokens.ground);
		expect(schemes[1].tokens['gap-4']).toBe('1rem');
	});

	it('shows every control', () => {
		const page = filesBelow(join(SRC, 'routes/design'), ['.svelte'])
			.map((file) => readFileSync(join(SRC, 'routes/design', file), 'utf8'))
			.join('\n');
		const controls = filesBelow(join(SRC, 'lib/ui'), ['.svelte']).map((file) => file.replace('.svelte', ''));
		expect(controls.filter((name) => !page.includes(`<${name}`))).toEqual([]);
		expect(controls.length).toBeGreaterThan(6);
	});
});
