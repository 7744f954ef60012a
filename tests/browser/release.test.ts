import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { expectEveryPageIsSound } from './everyPage';
import { startEmpty, unexpectedOn } from './firstSteps';
import { DESK, openWorkshop, PHONE, type Visit, type Workshop } from './workshop';

describe('the owner sets what a build has to show, and signs', () => {
	let workshop: Workshop;
	let desk: Visit;
	let releasePath: string;

	const unexpected = () => unexpectedOn(desk);

	beforeAll(async () => {
		workshop = await openWorkshop();
		desk = await workshop.open(DESK);
		await startEmpty(desk, 'Bo Nobody');
		const { page } = desk;
		await page.goto('/wheels');
		const build = page.locator('form', { hasText: 'The first build' });
		await build.getByLabel('Name').fill('Second try');
		await build.getByRole('button').click();
		await page.getByRole('heading', { name: 'Second try' }).waitFor();
		await page.getByRole('link', { name: 'Release', exact: true }).click();
		await page.getByRole('heading', { name: 'May Second try go into production?' }).waitFor();
		releasePath = new URL(page.url()).pathname;
	});
	afterAll(() => workshop?.close());

	it('asks for criteria before the test and says how far a plan takes', async () => {
		const { page } = desk;
		await page.getByText('Nothing was asked of this build yet').waitFor();
		const planner = page.locator('section', { hasText: 'How many kilometres does it take?' });
		await planner.getByLabel('Fewer slips than').fill('10');
		await planner.getByLabel('Confidence, %').fill('95');
		await planner.getByLabel('Wheels').fill('2');
		await planner.getByRole('button', { name: 'Work it out' }).click();
		await planner.getByText('300 km observed').waitFor();
		expect(await planner.getByText('150 km on each of 2 wheels').count()).toBe(1);
	});

	it('refuses a plan that cannot show its rate, and keeps what was typed', async () => {
		const { page } = desk;
		const form = page.locator('form[action="?/criteria"]');
		await form.getByLabel('Fewer slips than').fill('10');
		await form.getByLabel('Observed km on each wheel').fill('40');
		await form.getByLabel('The old build slipped from').fill('30');
		await form.getByLabel('Observed km above that torque').fill('5');
		await form.getByLabel('Why these').fill('as agreed before the test');
		await form.getByRole('button', { name: 'Set the criteria' }).click();
		await page.getByRole('alert').getByText('This plan cannot show the rate').waitFor();
		expect(await form.getByLabel('Why these').inputValue()).toBe('as agreed before the test');
		expect(await form.getByLabel('Observed km on each wheel').inputValue()).toBe('40');
		await form.getByLabel('Observed km on each wheel').fill('150');
		await form.getByRole('button', { name: 'Set the criteria' }).click();
		await page.getByText('Not yet: the test goes on.').waitFor();
		expect(unexpected()).toEqual([]);
	});

	it('says of each criterion what it still takes, and offers no release while one does not hold', async () => {
		const { page } = desk;
		const rate = page.getByRole('row', { name: /^Rate/ });
		expect(await rate.getByText('not yet').count()).toBe(1);
		expect(await rate.textContent()).toContain('300\u00a0km observed, with no more counted than is allowed');
		expect(
			await page.getByRole('combobox', { name: 'Decision' }).locator('option').allTextContents()
		).toEqual(['Continue the test', 'Not released']);
	});

	it('keeps a signed decision with its record, byte for byte', async () => {
		const { page } = desk;
		await page.getByRole('combobox', { name: 'Decision' }).selectOption('not released');
		await page.getByLabel('Why', { exact: true }).fill('The ring cracked on the bench.');
		await page.getByRole('button', { name: 'Sign', exact: true }).click();
		await page.getByText('The ring cracked on the bench.').waitFor();
		const [download] = await Promise.all([
			page.waitForEvent('download'),
			page.getByRole('link', { name: 'with everything that it rests on' }).click()
		]);
		const record = JSON.parse(await readAll(await download.createReadStream()));
		expect(record).toMatchObject({
			build: { name: 'Second try' },
			criteria: { version: 1 },
			state: 'not yet'
		});
		expect(JSON.stringify(record)).not.toContain('Bo Nobody');
		expect(unexpected()).toEqual([]);
	});

	it('prints what was decided with its whole hash, block after block, and without the forms', async () => {
		const { page } = desk;
		await page.goto(releasePath);
		const hash = page.locator('code.on-paper').first();
		expect(await hash.isVisible()).toBe(false);
		await page.emulateMedia({ media: 'print' });
		expect(await hash.innerText()).toMatch(/^[0-9a-f]{64}$/);
		expect(await page.getByRole('heading', { name: 'How many kilometres does it take?' }).isVisible()).toBe(
			false
		);
		expect(await page.locator('form:visible, summary:visible').count()).toBe(0);
		// grids that break across sheets laid headings over the table before them
		const stacks = await page
			.locator('main .stack:visible')
			.evaluateAll((all) => all.map((one) => getComputedStyle(one).display));
		expect(new Set(stacks)).toEqual(new Set(['block']));
		await page.emulateMedia({ media: null });
	});

	it('is sound at a desk, in the dark and on a phone', async () => {
		for (const screen of [DESK, { ...DESK, colorScheme: 'dark' as const }, PHONE]) {
			const visit = await workshop.open(screen);
			await visit.context.addCookies(await desk.context.cookies());
			await expectEveryPageIsSound(visit, [releasePath]);
			await visit.context.close();
		}
	});
});

async function readAll(stream: AsyncIterable<Buffer>): Promise<string> {
	const pieces: Buffer[] = [];
	for await (const piece of stream) pieces.push(piece);
	return Buffer.concat(pieces).toString('utf8');
}
