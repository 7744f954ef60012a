import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { everyPath, LOOKED_AT_ELSEWHERE } from '../browser/exampleWords';

const ROUTES = fileURLToPath(new URL('../../src/routes', import.meta.url));
const pages = readdirSync(ROUTES, { recursive: true, encoding: 'utf8' })
	.filter((file) => /(^|\/)\+page\.svelte$/.test(file))
	.map((file) => `/${file.replace(/\/?\+page\.svelte$/, '')}`);
const paths = everyPath('/rides/7', '3').map((path) => path.replace(/[?#].*$/, ''));
const leadsTo = (page: string) => new RegExp(`^${page.replace(/\[[^\]]+\]/g, '\\d+')}$`);

describe('the list of pages that browser tests look at', () => {
	it('has every page that there is, or says where else it is looked at', () => {
		expect(pages.length).toBeGreaterThan(35);
		const missing = pages.filter(
			(page) => !paths.some((path) => leadsTo(page).test(path)) && !(page in LOOKED_AT_ELSEWHERE)
		);
		expect(missing).toEqual([]);
	});

	it('names no page that is gone', () => {
		const known = (path: string) => pages.some((page) => leadsTo(page).test(path));
		expect(paths.filter((path) => !known(path))).toEqual([]);
		expect(Object.keys(LOOKED_AT_ELSEWHERE).filter((page) => !pages.includes(page))).toEqual([]);
	});
});
