import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { WORDS } from '$lib/ui/wordList';
import { startEmpty } from './firstSteps';
import { DESK, openWorkshop, type Visit, type Workshop } from './workshop';

const SAYS = WORDS['reference-slip'].says;

describe('what a page fetches only when it is asked for', () => {
	let workshop: Workshop;
	let desk: Visit;
	/** the addresses of scripts in which the meanings came */
	const withMeanings: string[] = [];

	beforeAll(async () => {
		workshop = await openWorkshop();
		desk = await workshop.open(DESK);
		await startEmpty(desk, 'Ada Nowhere');
	});
	afterAll(() => workshop?.close());

	const word = () => desk.page.getByRole('button', { name: /^90 crank degrees ?: what it means$/ });
	const card = () => desk.page.locator('.card:popover-open');

	it('says that a meaning did not come, and brings it when asked once more', async () => {
		const { page, context } = desk;
		await page.goto('/', { waitUntil: 'networkidle' });
		await context.setOffline(true);
		await word().focus();
		await page.keyboard.press('Enter');
		await card().getByText('could not be fetched from the server').waitFor();
		expect(await desk.accessibility()).toEqual([]);
		await context.setOffline(false);
		await card().getByRole('button', { name: 'Try again' }).click();
		await card().getByText(SAYS).waitFor();
		await page.keyboard.press('Escape');
		await card().waitFor({ state: 'hidden' });
	});

	it('brings meanings with no page, but when the keys reach the first word', async () => {
		const { page } = desk;
		const bodies: Promise<void>[] = [];
		page.on('response', (response) => {
			if (response.request().resourceType() === 'script')
				bodies.push(
					response.text().then((text) => {
						if (text.includes(SAYS)) withMeanings.push(response.url());
					})
				);
		});
		for (const path of ['/', '/words', '/wheels', '/compare', '/report']) {
			await page.goto(path, { waitUntil: 'networkidle' });
			await Promise.all(bodies);
			expect(withMeanings, path).toEqual([]);
		}
		await page.goto('/', { waitUntil: 'networkidle' });
		await word().focus();
		await page.waitForLoadState('networkidle');
		await page.keyboard.press('Enter');
		await card().getByText(SAYS).waitFor();
		await Promise.all(bodies);
		expect(withMeanings).toHaveLength(1);
	});

	it('leads to the list of words where no script runs', async () => {
		const context = await desk.context.browser()!.newContext({
			baseURL: workshop.origin,
			storageState: await desk.context.storageState(),
			javaScriptEnabled: false
		});
		const page = await context.newPage();
		await page.goto('/');
		await page.getByRole('button', { name: /^90 crank degrees ?: what it means$/ }).click();
		await page.locator('.card:popover-open').getByRole('link', { name: 'All words' }).click();
		await page.locator('dl > div:target').getByText(SAYS).waitFor();
		await context.close();
	});

	it.each([
		['drawing', 'drawing (SVG)', 'the-worked-event.svg'],
		['table', 'table (CSV)', 'the-worked-event.csv']
	])('says that a %s was not saved, and saves it when asked once more', async (kind, of, file) => {
		const { page, context } = desk;
		await page.goto('/method', { waitUntil: 'networkidle' });
		await context.setOffline(true);
		await page.getByRole('button', { name: `Save the worked event as a ${of}` }).click();
		await page.getByText(`The ${kind} was not saved`).waitFor();
		expect(await desk.overhang()).toBe(0);
		await context.setOffline(false);
		const [download] = await Promise.all([
			page.waitForEvent('download'),
			page.getByRole('button', { name: 'Try again' }).click()
		]);
		expect(download.suggestedFilename()).toBe(file);
		await page.getByText('was not saved').waitFor({ state: 'hidden' });
	});
});
