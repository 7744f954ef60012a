import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { expectEveryPageIsSound, expectLayoutHolds } from './everyPage';
import { expectLongNamesFit } from './longNames';
import { startEmpty } from './startEmpty';
import { DESK, openWorkshop, PHONE, TABLET, type Visit, type Workshop } from './workshop';

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
	'/settings'
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

	it('keeps every page of an empty ledger sound on a phone, and apart on a tablet', async () => {
		for (const [screen, expectSound] of [
			[PHONE, expectEveryPageIsSound],
			[TABLET, expectLayoutHolds]
		] as const) {
			const visit = await workshop.open(screen);
			await visit.context.addCookies(await desk.context.cookies());
			await expectSound(visit, EMPTY_PAGES);
			await visit.context.close();
		}
	});

	it('does not show the page of the look, which is for the development server', async () => {
		const { page } = desk;
		const answer = await page.goto('/design');
		expect(answer?.status()).toBe(404);
	});

	it('lets no long name push a page over the edge of a phone', () => expectLongNamesFit(workshop, desk));
});
