import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startEmpty } from './firstSteps';
import { openWorkshop, PHONE, type Visit, type Workshop } from './workshop';

const RIDE = fileURLToPath(new URL('../../sample-rides/2026-04-22-w1-r1.fit', import.meta.url));

describe('a workshop of its own, on a phone', () => {
	let workshop: Workshop;
	let phone: Visit;

	beforeAll(async () => {
		workshop = await openWorkshop();
		phone = await workshop.open(PHONE);
	});
	afterAll(() => workshop?.close());

	it('starts with an empty ledger and says on every page what to do first', async () => {
		const { page } = phone;
		await startEmpty(phone, 'Bo Nobody');
		await page.goto('/');
		expect(await page.getByRole('link', { name: 'Create a wheel and a build' }).count()).toBe(1);
		await page.goto('/compare');
		expect(await page.getByText('Nothing to set against each other yet').count()).toBe(1);
		expect(await phone.overhang()).toBe(0);
	});

	it('takes a wheel and a build and fits one on the other from an instant of the workshop', async () => {
		const { page } = phone;
		await page.goto('/wheels');
		const wheel = page.locator('form', { hasText: 'New wheel' });
		await wheel.getByLabel('Name').fill('Blue wheel');
		await wheel.getByRole('button').click();
		await page.getByRole('heading', { name: 'Blue wheel' }).waitFor();
		await page.goto('/wheels');
		const build = page.locator('form', { hasText: 'The first build' });
		await build.getByLabel('Name').fill('As found');
		await build.getByLabel('One engagement step').fill('15');
		await build.getByRole('button').click();
		await page.getByRole('heading', { name: 'As found' }).waitFor();
		await page
			.locator('form', { hasText: 'Fit this build on a wheel' })
			.getByLabel('Fitted')
			.fill('2026-04-01T08:00');
		await page.getByRole('button', { name: 'Fit it' }).click();
		await page.getByRole('cell', { name: /still fitted/ }).waitFor();
		expect(await page.locator('td[data-label="Fitted"]').innerText()).toMatch(/1 Apr 2026/);
		expect(phone.complaints).toEqual([]);
	});

	it('reads an uploaded ride, finds its build and lists its slips', async () => {
		const { page } = phone;
		await page.goto('/rides');
		await page.locator('input[type=file][accept]').setInputFiles(RIDE);
		await page.getByText('In the ledger: 1 ride').waitFor({ timeout: 60_000 });
		// whoever has just uploaded is told what a felt slip means
		expect(await page.getByText('A slip that is felt ends the test').count()).toBe(1);
		expect(await phone.accessibility()).toEqual([]);
		await page.locator('tbody th a').first().click();
		await page.locator('[data-stage="shown"]').waitFor();
		expect(await page.locator('header').last().innerText()).toMatch(/As found on Blue wheel/);
		expect(await page.getByRole('link', { name: /^Open event/ }).count()).toBeGreaterThan(0);
		expect(await page.getByText(/of this ride that could have shown one/).count()).toBe(1);
		expect(await phone.overhang()).toBe(0);
	});

	it('recognises the same file and counts it once', async () => {
		const { page } = phone;
		await page.goto('/rides');
		await page.locator('input[type=file][accept]').setInputFiles(RIDE);
		await page.getByText('1 file: 1 already in the ledger').waitFor({ timeout: 60_000 });
		expect(await page.getByText('In the ledger: 1 ride').count()).toBe(1);
	});

	it('says why it does not take a file that is no ride', async () => {
		const { page } = phone;
		await page.locator('input[type=file][accept]').setInputFiles({
			name: 'notes.fit',
			mimeType: 'application/octet-stream',
			buffer: Buffer.from('no ride at all')
		});
		await page.locator('strong', { hasText: 'refused' }).waitFor({ timeout: 60_000 });
		expect(await page.getByText('In the ledger: 1 ride').count()).toBe(1);
	});

	it('withdraws a ride with a reason, takes it out of the rate and back in', async () => {
		const { page } = phone;
		await page.goto('/rides');
		await page.locator('tbody th a').first().click();
		await page.getByText('Withdraw this ride').click();
		await page.getByLabel('Reason').fill('borrowed bicycle');
		await page.getByRole('button', { name: 'Withdraw' }).click();
		await page.getByText(/counts nowhere: .*borrowed bicycle/).waitFor();
		const ride = page.url();
		await page.goto('/');
		expect(await page.getByText('nothing observed yet').count()).toBe(1);
		await page.goto(ride);
		await page.getByRole('button', { name: 'Take it back in' }).click();
		await page.getByText('Withdraw this ride').waitFor();
		await page.goto('/');
		expect(await page.getByText('nothing observed yet').count()).toBe(0);
		expect(phone.complaints).toEqual([]);
	});

	it('does not let a second tab replace a verdict that it did not show', async () => {
		const { page, context } = phone;
		await page.goto('/rides');
		await page.locator('tbody th a').first().click();
		await page
			.getByRole('link', { name: /^Open event/ })
			.first()
			.click();
		await page.getByRole('heading', { name: /^Event 1,/ }).waitFor();
		const second = await context.newPage();
		await second.goto(page.url());
		await second.getByLabel('a shift').check();
		await page.getByRole('button', { name: 'Confirm: it is a slip' }).click();
		await page.getByRole('button', { name: 'Take the verdict back' }).waitFor();
		await second.getByRole('button', { name: 'Reject' }).click();
		const notice = second.getByRole('alert');
		await notice.waitFor();
		expect(await notice.innerText()).toMatch(/^Not done\. P1 has confirmed this event meanwhile, on /);
		// what stands is shown, and can now be decided on anew
		await second.getByRole('button', { name: 'Take the verdict back' }).click();
		await second.getByRole('button', { name: 'Confirm: it is a slip' }).waitFor();
		await second.close();
		expect(phone.complaints).toEqual([]);
	});

	it('mends a mistyped fitted period, refuses one that lies ahead and takes one in hindsight', async () => {
		const { page } = phone;
		await page.goto('/wheels/1');
		const fit = page.locator('form', { hasText: 'Fit a build on this wheel' });
		await fit.getByLabel('Fitted').fill('2091-04-01T08:00');
		await fit.getByRole('button', { name: 'Fit it' }).click();
		await page.getByRole('alert').getByText('has not come yet').waitFor();
		expect(await page.getByRole('cell', { name: /still fitted/ }).count()).toBe(1);

		// a wrong month: the ride of April no longer finds its build
		await page.getByText('Correct it').click();
		const correction = page.locator('form', { hasText: 'Keep the correction' });
		await correction.getByLabel(/^Fitted/).fill('2026-05-01T08:00');
		await correction.getByRole('button').click();
		await page.getByText('No build was fitted on this wheel at that time').waitFor();
		await correction.getByLabel(/^Fitted/).fill('2026-04-01T08:00');
		await correction.getByRole('button').click();
		await page.getByText('No build was fitted').waitFor({ state: 'detached' });
		expect(await page.locator('td[data-label="Fitted"]').innerText()).toMatch(/1 Apr 2026/);
		expect(await phone.accessibility()).toEqual([]);
		expect(await phone.overhang()).toBe(0);

		await fit.getByLabel('Fitted').fill('2026-02-01T08:00');
		await fit.getByLabel('Taken off').fill('2026-03-01T08:00');
		await fit.getByRole('button', { name: 'Fit it' }).click();
		await expect.poll(() => page.locator('td[data-label="Fitted"]').count()).toBe(2);
		const earlier = page.locator('tr', { hasText: '1 Feb 2026' });
		await earlier.getByText('Correct it').click();
		await earlier.getByLabel('It was never fitted then, because').fill('another wheel was meant');
		await earlier.getByRole('button', { name: 'Withdraw it' }).click();
		await expect.poll(() => page.locator('td[data-label="Fitted"]').count()).toBe(1);
		// the browser reports the refused form as a failed request; nothing else may be there
		expect(phone.complaints.filter((complaint) => !complaint.includes('status of 400'))).toEqual([]);
		phone.complaints.length = 0;
	});

	it('refuses a build where another one was already fitted for that time, in one sentence', async () => {
		const { page } = phone;
		await page.goto('/builds/1');
		await page
			.locator('form', { hasText: 'Fit this build on a wheel' })
			.getByLabel('Fitted')
			.fill('2026-03-01T08:00');
		await page.getByRole('button', { name: 'Fit it' }).click();
		const notice = page.getByRole('alert');
		await notice.waitFor();
		expect(await notice.innerText()).toMatch(/^Not done\. .+\.$/);
		// the form lies far down the page: the answer comes along, and can be put away
		const inSight = () =>
			notice.evaluate((element) => {
				const { top, bottom } = element.getBoundingClientRect();
				return top >= 0 && bottom <= innerHeight;
			});
		await expect.poll(inSight).toBe(true);
		expect(await phone.accessibility()).toEqual([]);
		await notice.getByRole('button', { name: 'Put away' }).click();
		await expect.poll(inSight).toBe(false);
		// sent again, it is there again
		await page.getByRole('button', { name: 'Fit it' }).click();
		await expect.poll(inSight).toBe(true);
	});
});
