import { expectLayoutHolds } from './everyPage';
import { PHONE, type Visit, type Workshop } from './workshop';

const ONE_WORD = 'Hinterradnabenfreilaufkoerperpruefstandsversuchslaufrad00001';
const SENTENCE = 'Touring wheel of the second pair, laced anew in March, stiff';

/** Wheels and builds with names of 60 letters, of one word and of many, push nothing over the edge of a phone. */
export async function expectLongNamesFit(workshop: Workshop, desk: Visit): Promise<void> {
	const { page } = desk;
	for (const name of [ONE_WORD, SENTENCE]) {
		await page.goto('/wheels');
		const wheel = page.locator('form[action="?/wheel"]');
		await wheel.getByLabel('Name').fill(name);
		await wheel.getByRole('button').click();
		await page.waitForLoadState('networkidle');
		await page.goto('/builds');
		const build = page.locator('form', { hasText: 'New build' });
		await build.getByLabel('Name').fill(name);
		await build.getByRole('button').click();
		await page.waitForLoadState('networkidle');
	}
	const phone = await workshop.open(PHONE);
	await phone.context.addCookies(await desk.context.cookies());
	await page.goto('/wheels');
	const pages = await page
		.locator('main tbody th a')
		.evaluateAll((links) => links.map((link) => link.getAttribute('href') ?? ''));
	await expectLayoutHolds(phone, ['/', '/wheels', '/builds', '/rides', '/compare', '/bikes', ...pages]);
	await phone.context.close();
}
