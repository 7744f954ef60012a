import { expect } from 'vitest';
import { STEPS } from '../../src/routes/first-look/steps';
import { pageWeights } from './pageWeight';
import type { Visit } from './workshop';

/** As much script as a page may ask for, gzipped. */
const LARGEST_SCRIPT_BYTES = 90 * 1024;

/** Those of a thread beside a page, which paints while the page is being read. */
const LARGEST_THREAD_BYTES = 5 * 1024;

/** Goes through the guided start by its own buttons, as a newcomer does. */
export async function expectGuidedStartLeads({ page, complaints }: Visit): Promise<void> {
	await page.goto('/');
	await page.getByRole('link', { name: 'First look, in five minutes' }).click();
	await page.getByRole('link', { name: 'Go there' }).first().click();
	for (const [i, { title }] of STEPS.entries()) {
		const band = page.getByRole('complementary', { name: 'First look' });
		await band.getByText(`${i + 1} of ${STEPS.length}: ${title}.`).waitFor();
		if (i === 0) await page.getByRole('heading', { name: /^Event \d+, slip at/ }).waitFor();
		if (i < STEPS.length - 1) await band.getByRole('link', { name: 'Next step' }).click();
	}
	expect(new URL(page.url()).pathname).toBe('/report');
	await page.getByRole('link', { name: 'All steps' }).click();
	await page.getByRole('heading', { name: 'First look, in five minutes' }).waitFor();
	expect(complaints).toEqual([]);
}

/** A word with a dotted line opens its meaning, a keyboard closes it, and the list of words holds it. */
export async function expectWordsAreExplained({ page }: Visit, path: string, word: string): Promise<void> {
	await page.goto(path);
	const button = page
		.getByRole('button', { name: /: what it means$/ })
		.filter({ hasText: word })
		.first();
	await button.focus();
	await page.keyboard.press('Enter');
	const card = page.locator('.card:popover-open');
	await card.waitFor();
	// what it means is fetched: until then it says where it stands
	await card.getByText('stands in the list of all words').waitFor({ state: 'hidden' });
	expect(await card.innerText()).toMatch(/\.\s/);
	await page.keyboard.press('Escape');
	await card.waitFor({ state: 'hidden' });
	await button.click();
	await card.getByRole('link', { name: 'All words' }).click();
	await page.getByRole('heading', { name: 'Words and figures' }).waitFor();
	expect(await page.locator('dl > div:target').count()).toBe(1);
}

/** No page asks for more script than a phone on a slow link takes in a second or two. */
export async function expectPagesAreLight(
	visit: Visit,
	origin: string,
	paths: readonly string[]
): Promise<void> {
	const storageState = await visit.context.storageState();
	const weights = await pageWeights(visit.context.browser()!, { baseURL: origin, storageState }, paths);
	expect(weights.length).toBe(paths.length);
	for (const { path, scriptBytes, threadBytes } of weights) {
		expect(scriptBytes, `${path} uses script`).toBeGreaterThan(1000);
		expect(scriptBytes, `script of ${path}`).toBeLessThanOrEqual(LARGEST_SCRIPT_BYTES);
		expect(threadBytes, `script beside ${path}`).toBeLessThanOrEqual(LARGEST_THREAD_BYTES);
	}
}
