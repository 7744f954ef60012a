import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { loggerTable } from '../loggerTable';
import { startEmpty } from './firstSteps';
import { DESK, openWorkshop, type Visit, type Workshop } from './workshop';

const SLIP_S = 1234.5;

/** of a drawing of the strips the most points that any line has */
const mostPoints = (svg: string) =>
	Math.max(
		0,
		...[...svg.matchAll(/<path fill="none"[^>]* d="([^"]*)"/g)].map(([, d]) => d.split('L').length)
	);

describe('a ride that a logger recorded 200 times a second', { timeout: 600_000 }, () => {
	let workshop: Workshop;
	let desk: Visit;

	beforeAll(async () => {
		workshop = await openWorkshop();
		desk = await workshop.open(DESK);
		const { page } = desk;
		await startEmpty(desk, 'Bo Nobody');
		await page.goto('/rides');
		// half an hour of it: 360,000 rows
		await page.locator('input[type=file][accept]').setInputFiles({
			name: 'rig.csv',
			mimeType: 'text/csv',
			buffer: loggerTable({ rateHz: 200, seconds: 1800, slipsS: [SLIP_S] })
		});
		await page.locator('table a[href^="/rides/"]').first().waitFor({ timeout: 500_000 });
	}, 600_000);
	afterAll(() => workshop?.close());

	const saved = async () => {
		const coming = desk.page.waitForEvent('download');
		await desk.page.getByRole('button', { name: /^Save ride \d+ \d.* as a drawing/ }).click();
		return readFileSync(await (await coming).path(), 'utf8');
	};

	it('shows the seconds of a slip as the logger saw them', async () => {
		const { page } = desk;
		const answers: { near: boolean; bytes: number }[] = [];
		page.on('response', async (response) => {
			if (!/\/channels\?from=/.test(response.url())) return;
			const { searchParams } = new URL(response.url());
			const length = Number(searchParams.get('to')) - Number(searchParams.get('from'));
			answers.push({ near: length < 100, bytes: (await response.body()).length });
		});
		await page.locator('table a[href^="/rides/"]').first().click();
		await page.locator('[data-stage="shown"]').waitFor();
		// the whole ride: what fits its pixels, whatever was recorded
		await expect.poll(() => answers.length).toBeGreaterThan(0);
		const slip = page.locator('a.open').first();
		await slip.click();
		await page.getByRole('heading', { name: /^Event 1, / }).waitFor();
		await expect.poll(() => answers.filter(({ near }) => near).length).toBeGreaterThan(0);
		for (const { bytes } of answers) expect(bytes).toBeLessThan(500_000);
		// 15 s hold 3000 values; one a second would make 17
		await expect.poll(async () => mostPoints(await saved()), { timeout: 30_000 }).toBeGreaterThan(1000);
		expect(await page.getByText('Crank torque at each instant').count()).toBe(1);
		expect(await desk.accessibility()).toEqual([]);
		expect(desk.complaints).toEqual([]);
	});

	it('refuses to answer for what is no stretch, or for more pixels than a screen has', async () => {
		const { page } = desk;
		const path = new URL(page.url()).pathname;
		for (const query of ['from=5&to=1&pixels=10', 'from=0&to=10&pixels=9999999', 'from=x&to=10&pixels=10'])
			expect((await page.request.get(`${path}/channels?${query}`)).status()).toBe(400);
		const whole = await page.request.get(`${path}/channels`);
		// one value a second, a dozen lines
		expect((await whole.body()).length).toBeLessThan(120_000);
	});
});
