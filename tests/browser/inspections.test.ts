import type { Locator } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { expectEveryPageIsSound } from './everyPage';
import { startEmpty, unexpectedOn } from './firstSteps';
import { DESK, openWorkshop, PHONE, type Visit, type Workshop } from './workshop';

describe('stacks, inspections and incidents of a workshop', () => {
	let workshop: Workshop;
	let desk: Visit;

	const unexpected = () => unexpectedOn(desk);

	beforeAll(async () => {
		workshop = await openWorkshop();
		desk = await workshop.open(DESK);
		await startEmpty(desk, 'Cy Nobody');
		const { page } = desk;
		await page.getByLabel('Name').first().fill('Wheel A');
		await page.getByRole('button', { name: 'Create the wheel' }).click();
		await page.getByRole('heading', { name: 'Wheel A' }).waitFor();
		await page.goto('/builds');
		await page.getByLabel('Name').fill('Trial');
		await page.getByRole('button', { name: 'Create it' }).click();
		await page.getByRole('heading', { name: 'Change Trial' }).waitFor();
		await page.goto('/wheels/1', { waitUntil: 'networkidle' });
		await page.locator('form[action="?/fit"] input[name="from"]').fill('2026-05-01T08:00');
		await page.getByRole('button', { name: 'Fit it' }).click();
		await page.getByRole('link', { name: 'Trial' }).first().waitFor();
	});
	afterAll(() => workshop?.close());

	/** one row of the stack's form */
	async function element(number: number, name: string, side: string, drawn: string, measured = '') {
		const { page } = desk;
		await page.getByLabel(`Element ${number}`, { exact: true }).fill(name);
		await page.getByLabel(`Side of element ${number}`, { exact: true }).selectOption(side);
		await page.getByLabel(`Drawn length of element ${number}, mm`, { exact: true }).fill(drawn);
		await page.getByLabel(`Measured length of element ${number}, mm`, { exact: true }).fill(measured);
	}

	it('refuses an absurd length, keeps what was typed, and warns of a hub that is too wide', async () => {
		const { page } = desk;
		await page.goto('/builds/1/stack/edit', { waitUntil: 'networkidle' });
		await page.getByLabel('Freehub variant').fill('body A');
		await page.getByLabel('Over-locknut distance, mm').fill('142');
		await element(1, 'cap', 'left', '14,2', '14,2');
		await element(2, 'shell', 'hub', '980');
		await page.getByRole('button', { name: 'Keep the stack' }).click();
		await page
			.getByRole('alert')
			.getByText('The drawn length of shell is a number from 0 to 300 mm')
			.waitFor();
		expect(await page.getByLabel('Element 1', { exact: true }).inputValue()).toBe('cap');
		await element(2, 'shell', 'hub', '98', '98,1');
		await element(3, 'body', 'right', '31', '31');
		await page.getByRole('button', { name: 'Keep the stack' }).click();
		await page.getByRole('heading', { name: 'Axial stack' }).waitFor();
		await page.getByText('Too wide for the frame: 143.30 mm over the faces').waitFor();
		expect(await page.getByRole('row', { name: /Total measured 143\.30 mm/ }).count()).toBe(1);
		await page.goto('/builds/1');
		expect(await page.getByText('Too wide for the frame').count()).toBe(1);
		expect(unexpected()).toEqual([]);
	});

	it('sets another variant beside it and finds the spacers in the drawer', async () => {
		const { page } = desk;
		await page.goto('/builds/1/stack', { waitUntil: 'networkidle' });
		await page.getByText('Spacers in the drawer').click();
		await page.getByLabel('Another thickness, mm').fill('1,2');
		await page.getByLabel('How many', { exact: true }).fill('2');
		await page.getByRole('button', { name: 'Add it' }).click();
		await page.getByText('Spacers in the drawer (1 thicknesses)').waitFor();
		await page.getByRole('link', { name: 'Another variant like it' }).click();
		await page.getByLabel('Freehub variant').fill('body B');
		await element(3, 'body B', 'right', '27,4');
		await page.getByRole('button', { name: 'Keep the stack' }).click();
		await page.getByRole('columnheader', { name: 'body B' }).waitFor();
		expect(
			await page.getByRole('row', { name: /From the drawer no spacer helps 2 × 1\.20 mm/ }).count()
		).toBe(1);
		expect(unexpected()).toEqual([]);
	});

	it('tells the second of two people who change a stack, and overwrites nothing', async () => {
		const { page, context } = desk;
		await page.goto('/builds/1/stack/edit?stack=1', { waitUntil: 'networkidle' });
		const second = await context.newPage();
		await second.goto('/builds/1/stack/edit?stack=1', { waitUntil: 'networkidle' });
		await page.getByLabel('Note').fill('first');
		await page.getByRole('button', { name: 'Keep the stack' }).click();
		await page.getByRole('heading', { name: 'Axial stack' }).waitFor();
		await second.getByLabel('Note').fill('second');
		for (const _again of [1, 2]) {
			await second.getByRole('button', { name: 'Keep the stack' }).click();
			await second.getByRole('alert').getByText('nothing was overwritten').waitFor();
		}
		expect(await second.getByLabel('Note').inputValue()).toBe('second');
		await second.close();
		await page.goto('/builds/1/stack');
		expect(await page.getByText('first', { exact: true }).count()).toBe(1);
	});

	it('takes inspections, refuses one that lies ahead, and offers the same places the next time', async () => {
		const { page } = desk;
		await page.goto('/wheels/1/inspections/write', { waitUntil: 'networkidle' });
		await page.getByLabel('When').fill('2099-05-02T08:00');
		const finding = page.getByRole('group', { name: 'Finding 1' });
		await finding.getByLabel('Where').fill('teeth 1, 9');
		await finding.getByLabel('Readings').fill('1,52 1.50');
		await page.getByRole('button', { name: 'Keep the inspection' }).click();
		await page.getByRole('alert').getByText('has not come yet').waitFor();
		expect(await finding.getByLabel('Where').inputValue()).toBe('teeth 1, 9');
		await page.getByLabel('When').fill('2026-05-02T08:00');
		await page.getByRole('button', { name: 'Keep the inspection' }).click();
		await page.getByRole('heading', { name: /^Inspection of 2 May 2026/ }).waitFor();
		await page.getByText('1.52; 1.5 mm').waitFor();
		await page.goto('/wheels/1/inspections');
		await page.getByText('1 of at least 4 inspections after the run-in').waitFor();
		await page.goto('/wheels/1/inspections/write');
		expect(await finding.getByLabel('Where').inputValue()).toBe('teeth 1, 9');
		expect(await finding.getByLabel('Readings').inputValue()).toBe('');
		expect(unexpected()).toEqual([]);
	});

	it('counts an incident for its build, says what a felt slip means, and closes it with a reason only', async () => {
		const { page } = desk;
		await page.goto('/wheels/1/incidents', { waitUntil: 'networkidle' });
		expect(await page.getByText('A slip that is felt ends the test').count()).toBe(1);
		await page.getByLabel('When').fill('2026-05-03T09:30');
		await page.getByLabel('How bad').selectOption('nearly fell');
		await page.getByLabel('What was felt').fill('the crank fell forward when starting');
		await page.getByRole('button', { name: 'Report it' }).click();
		await page.getByText('The incident is in the ledger. Open the hub').waitFor();
		await page.goto('/');
		await page.getByText('1 incident was reported and not closed').waitFor();
		await page.getByRole('link', { name: 'Look at it' }).click();
		await page.getByRole('link', { name: /3 May 2026/ }).click();
		await page.getByText('It is open; counts as a slip of Trial').waitFor();
		await page.getByLabel('no slip of this hub').check();
		await page.getByLabel('How that was found out').fill('chain was worn, it jumped on the stand too');
		await page.getByRole('button', { name: 'Close it' }).click();
		await page.getByText('It is closed: no slip of this hub; counts no more.').waitFor();
		await page.goto('/builds/1');
		expect(await page.getByText('none counts, 1 closed as no slip').count()).toBe(1);
		expect(unexpected()).toEqual([]);
		desk.complaints.length = 0;
	});

	it('works without scripts: a refused inspection keeps what was typed', async () => {
		const context = await desk.context.browser()!.newContext({
			baseURL: workshop.origin,
			javaScriptEnabled: false,
			storageState: await desk.context.storageState()
		});
		const page = await context.newPage();
		await page.goto('/wheels/1/inspections/write');
		const finding = page.getByRole('group', { name: 'Finding 1' });
		await page.getByLabel('When').fill('2026-05-04T08:00');
		await finding.getByLabel('Readings').fill('150');
		await page.getByRole('button', { name: 'Keep the inspection' }).click();
		expect(await page.getByRole('alert').innerText()).toMatch(/tooth height is a number from 0 to 30 mm/);
		expect(await finding.getByLabel('Readings').inputValue()).toBe('150');
		await finding.getByLabel('Readings').fill('1.5');
		await page.getByRole('button', { name: 'Keep the inspection' }).click();
		expect(new URL(page.url()).pathname).toBe('/wheels/1/inspections/2');
		await context.close();
	});

	it('puts back what was withdrawn, where it was withdrawn, by keys alone', async () => {
		const { page } = desk;
		const focused = () => page.evaluate(() => document.activeElement?.textContent?.trim());
		/** opens the fold with the form, says why and withdraws; the focus then stands on the way back */
		const withdraw = async (place: Locator, why: string) => {
			await place.getByText('Withdraw it', { exact: true }).first().focus();
			await page.keyboard.press('Enter');
			await page.keyboard.press('Tab');
			await page.keyboard.type(why);
			await page.keyboard.press('Enter');
			await page.getByText(`Because: ${why}`).waitFor();
			await expect.poll(focused).toBe('Put it back');
		};
		await page.goto('/wheels/1', { waitUntil: 'networkidle' });
		const distance = page.locator('section', { has: page.getByRole('heading', { name: 'Distance' }) });
		await distance.getByText('Write down distance without a recording').click();
		const form = distance.locator('form[action="?/unlogged"]');
		await form.getByLabel('By when').fill('2026-05-02T09:00');
		await form.getByLabel('Distance, km').fill('70');
		await form.getByRole('button').click();
		await distance.getByText('70.0 km in all').waitFor();
		await withdraw(distance, 'another wheel');
		await distance.getByText(/^0(\.0)?\skm in all/).waitFor();
		const way = distance.getByRole('button', { name: 'Put it back' });
		expect(await distance.getByText('Withdrawn by P1: ').innerText()).toContain('70.0');
		expect(await desk.accessibility()).toEqual([]);
		await page.keyboard.press('Enter');
		await distance.getByText('70.0 km in all').waitFor();
		expect(await way.count()).toBe(0);
		// once more, and written down correctly meanwhile: both would count
		await withdraw(distance, 'mistyped');
		await form.getByLabel('By when').fill('2026-05-02T09:00');
		await form.getByLabel('Distance, km').fill('7');
		await form.getByRole('button').click();
		await distance.getByText('7.0 km in all').waitFor();
		await way.click();
		await page.getByRole('alert').getByText('both would count').waitFor();
		expect(await distance.getByText('7.0 km in all').count()).toBe(1);

		await page.goto('/wheels/1/inspections/2', { waitUntil: 'networkidle' });
		await withdraw(page.locator('main'), 'another hub');
		await page.goto('/wheels/1/inspections', { waitUntil: 'networkidle' });
		expect(await page.getByRole('article').count()).toBe(1);
		await page.getByRole('button', { name: 'Put it back' }).click();
		await expect.poll(() => page.getByRole('article').count()).toBe(2);

		await page.goto('/builds/1/stack', { waitUntil: 'networkidle' });
		await withdraw(page.locator('main'), 'measured wrongly');
		expect(await page.getByRole('columnheader', { name: 'body A' }).count()).toBe(0);
		await page.keyboard.press('Enter');
		await page.getByRole('columnheader', { name: 'body A' }).waitFor();
		await page.goto('/ledger/trail');
		expect(await page.getByText('put back').count()).toBeGreaterThanOrEqual(3);
		expect(unexpected()).toEqual([]);
		desk.complaints.length = 0;
	});

	for (const [name, screen] of [
		['a desk, dark', { ...DESK, colorScheme: 'dark' as const }],
		['a phone', PHONE]
	] as const)
		it(`keeps every page of stacks, inspections and incidents sound on ${name}`, async () => {
			const visit = await workshop.open(screen);
			await visit.context.addCookies(await desk.context.cookies());
			await expectEveryPageIsSound(visit, [
				'/builds/1/stack',
				'/builds/1/stack/edit',
				'/builds/1/stack/edit?stack=1',
				'/wheels/1/inspections',
				'/wheels/1/inspections/write',
				'/wheels/1/inspections/1',
				'/wheels/1/incidents',
				'/wheels/1/incidents/1'
			]);
			await visit.context.close();
		});
});
