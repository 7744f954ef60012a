import { expect } from 'vitest';
import type { Visit } from './workshop';

/** Paper in CSS pixels (96 an inch) and the margins of the report's pages, in millimetres. */
const PAPERS = [
	{ format: 'A4', width: 210, height: 297 },
	{ format: 'Letter', width: 215.9, height: 279.4 }
] as const;
const MARGIN_MM = { side: 15, top: 13, bottom: 16 };
const pixels = (millimetres: number) => (millimetres / 25.4) * 96;

/**
 * Prints the report of the example on both papers and asks of it: one page that answers and a few behind it,
 * nothing wider than the paper, nothing of the site around it. Then fetches everything that it offers as a file.
 */
export async function expectReportPrints({ page }: Visit, query: string): Promise<void> {
	await page.goto(`/report?${query}`, { waitUntil: 'networkidle' });
	const screen = page.viewportSize()!;
	for (const { format, width, height } of PAPERS) {
		const paper = await page.pdf({ format });
		const pages = paper.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g)?.length;
		expect(pages, format).toBeGreaterThanOrEqual(4);
		expect(pages, format).toBeLessThanOrEqual(8);
		await page.emulateMedia({ media: 'print' });
		await page.setViewportSize({
			width: Math.floor(pixels(width - 2 * MARGIN_MM.side)),
			height: Math.floor(pixels(height - MARGIN_MM.top - MARGIN_MM.bottom))
		});
		const { wider, first } = await page.evaluate(() => ({
			wider: document.documentElement.scrollWidth - document.documentElement.clientWidth,
			first: document.querySelector('.behind')!.getBoundingClientRect().top + scrollY
		}));
		expect(wider, format).toBe(0);
		expect(first, `first page on ${format}`).toBeLessThanOrEqual(page.viewportSize()!.height);
		expect(await page.locator('nav').isVisible()).toBe(false);
		// Chromium prints no button in a head that it repeats on the next sheet
		const heads = await page
			.locator('th .meaning')
			.evaluateAll((words) => words.map((word) => getComputedStyle(word).display));
		expect(new Set(heads)).toEqual(new Set(['contents']));
		expect(await page.getByText('figures.json').isVisible()).toBe(false);
		await page.emulateMedia({ media: null });
		await page.setViewportSize(screen);
	}
	const figures = await page.request.get(`/report/figures.json?${query}`);
	const data = (await figures.json()) as { example: boolean; rides: { counted: { sha256: string }[] } };
	expect(data.example).toBe(true);
	expect(data.rides.counted.length).toBeGreaterThan(10);
	for (const { sha256 } of data.rides.counted)
		expect(await page.getByText(sha256).count()).toBeGreaterThanOrEqual(1);
	for (const name of [
		'rates',
		'over-age',
		'over-torque',
		'over-hours',
		'mean-slips',
		'slips-over-distance'
	]) {
		const svg = await page.request.get(`/report/charts/${name}.svg?${query}`);
		expect(await svg.text(), name).toMatch(/^<svg [\s\S]*<title>[\s\S]*svelte-[\s\S]*<\/svg>\s*$/);
		expect(svg.headers()['content-disposition']).toContain('attachment');
		const csv = await page.request.get(`/report/charts/${name}.csv?${query}`);
		expect((await csv.text()).split('\r\n')[1], name).toMatch(/^(Original|Retrofit),/);
	}
	const missing = await page.request.get('/report?before=1&after=999');
	expect(missing.status()).toBe(404);
	expect(await missing.text()).toContain('not in the ledger');
}
