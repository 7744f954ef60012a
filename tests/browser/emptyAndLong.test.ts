import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { EVERY_PAGE_WITHIN_MS, EVERY_SCREEN } from './everyPage';
import { expectLongNamesFit } from './longNames';
import { startEmpty } from './firstSteps';
import { DESK, openWorkshop, type Visit, type Workshop } from './workshop';

/** Pages that are there before anything was written down. */
const EMPTY_PAGES = [
	'/',
	'/rides',
	'/wheels',
	'/bikes',
	'/people',
	'/builds',
	'/parts',
	'/compare',
	'/report',
	'/review',
	'/answers',
	'/versions',
	'/ledger',
	'/ledger/trail',
	'/settings',
	'/own',
	'/help',
	'/first-look',
	'/parts/new'
];

describe('the two ends: an empty ledger, and names of sixty letters', () => {
	let workshop: Workshop;
	let desk: Visit;

	beforeAll(async () => {
		workshop = await openWorkshop();
		desk = await workshop.open(DESK);
		await startEmpty(desk, 'Ada Nowhere');
	});
	afterAll(() => workshop?.close());

	for (const [name, screen, expectSound] of EVERY_SCREEN) {
		it(
			`keeps every page of an empty ledger sound on ${name}`,
			async () => {
				const visit = await workshop.open(screen);
				await visit.context.addCookies(await desk.context.cookies());
				await expectSound(visit, EMPTY_PAGES);
				await visit.context.close();
			},
			EVERY_PAGE_WITHIN_MS
		);
	}

	it('leads from the first look, which needs the example, to where the example is set up', async () => {
		const { page } = desk;
		await page.goto('/first-look');
		await page.getByRole('main').getByRole('link', { name: 'To the settings' }).click();
		await page.waitForURL('**/settings**');
		await page.getByRole('heading', { name: 'Example workshop' }).waitFor();
		await page.getByRole('button', { name: 'Set up the example' }).waitFor();
	});

	it('keeps the foot of a page at the foot of the window, however little the page holds', async () => {
		const { page } = desk;
		await page.goto('/parts');
		const foot = await page.locator('footer').boundingBox();
		expect(Math.round(foot!.y + foot!.height)).toBe(DESK.height);
	});

	it('does not show the page of the look, which is for the development server', async () => {
		const { page } = desk;
		const answer = await page.goto('/design');
		expect(answer?.status()).toBe(404);
	});

	it('lets no long name push a page over the edge of a phone', () => expectLongNamesFit(workshop, desk));
});
