import { gzipSync } from 'node:zlib';
import type { Browser, BrowserContextOptions } from 'playwright-core';

export interface PageWeight {
	readonly path: string;
	/** script that the page asks for at its first visit, each file gzipped; without that of threads beside it */
	readonly scriptBytes: number;
	/** script of the threads beside the page, gzipped */
	readonly threadBytes: number;
	/** from the start of the navigation to the first content on screen; NaN when the browser names none */
	readonly firstPaintMs: number;
}

/** Opens each page in a browser that has nothing in its cache yet. */
export async function pageWeights(
	browser: Browser,
	options: BrowserContextOptions,
	paths: readonly string[]
): Promise<PageWeight[]> {
	const weights: PageWeight[] = [];
	for (const path of paths) {
		const context = await browser.newContext(options);
		const page = await context.newPage();
		const [scripts, threads]: Promise<number>[][] = [[], []];
		page.on('response', (response) => {
			if (response.request().resourceType() !== 'script') return;
			const whose = response.url().includes('/workers/') ? threads : scripts;
			whose.push(response.body().then((body) => gzipSync(body).length));
		});
		await page.goto(path, { waitUntil: 'networkidle' });
		const firstPaintMs = await page.evaluate(
			() => performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? NaN
		);
		const [scriptBytes, threadBytes] = await Promise.all(
			[scripts, threads].map(async (sizes) => (await Promise.all(sizes)).reduce((sum, size) => sum + size, 0))
		);
		weights.push({ path, scriptBytes, threadBytes, firstPaintMs });
		await context.close();
	}
	return weights;
}
