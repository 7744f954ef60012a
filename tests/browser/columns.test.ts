import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { giveName, startEmpty } from './firstSteps';
import { DESK, openWorkshop, PHONE, type Visit, type Workshop } from './workshop';

/** 40 s at 50 Hz: a crank at 80 rpm, a wheel's angle at 240 rpm, torque; named as no header of ours is */
function loggerTable(startS: number): Buffer {
	const rows = Array.from({ length: 2000 }, (_, i) => {
		const timeS = i / 50;
		const torque = 30 + 10 * Math.sin(2 * Math.PI * (80 / 60) * 2 * timeS);
		return `${((startS + timeS) * 1000).toFixed(0)};80,0;${((1440 * timeS) % 360).toFixed(1).replace('.', ',')};${torque.toFixed(1).replace('.', ',')}`;
	});
	return Buffer.from(`Stamp ms;Cad rpm;Hub angle deg;Moment\n${rows.join('\n')}\n`);
}

describe('a logger table whose columns are not known', () => {
	let workshop: Workshop;
	let desk: Visit;

	beforeAll(async () => {
		workshop = await openWorkshop();
		desk = await workshop.open(DESK);
	});
	afterAll(() => workshop?.close());

	const upload = (name: string, startS: number) =>
		desk.page
			.locator('input[type=file][accept]')
			.setInputFiles({ name, mimeType: 'text/csv', buffer: loggerTable(startS) });

	it('asks on the page of rides, and shows there what the file holds', async () => {
		const { page } = desk;
		await startEmpty(desk, 'Bo Nobody');
		await page.goto('/rides');
		await upload('rig.csv', 0);
		await page.getByRole('link', { name: 'Say what its columns are' }).click();
		await page.getByRole('heading', { name: 'What the columns of this file are' }).waitFor();
		expect(await page.getByRole('columnheader', { name: 'Hub angle deg' }).count()).toBe(1);
		expect(await desk.accessibility()).toEqual([]);
		expect(await desk.overhang()).toBe(0);
	});

	it('shows the first rows as understood while columns and units are chosen', async () => {
		const { page } = desk;
		const wheel = page.getByRole('group', { name: 'Rear wheel' });
		await wheel.getByLabel('holds').selectOption('degrees');
		// known by its name
		const load = page.getByRole('group', { name: 'Torque or power' });
		expect(await load.getByLabel('holds').inputValue()).toBe('Nm');
		const understood = page.getByRole('region', { name: 'The first rows as understood' });
		await understood.getByText('About 50 rows a second').waitFor();
		expect(await understood.getByRole('row').nth(3).innerText()).toMatch(/80\.0\s+2(39|40)\.\d\s+3\d\.\d/);
		await page.getByRole('group', { name: 'Time' }).getByLabel('written in').selectOption('s');
		await understood.getByText('A logger writes 10 to 500').waitFor();
		await page.getByRole('group', { name: 'Time' }).getByLabel('written in').selectOption('ms');
		await wheel.getByLabel('holds').selectOption('pulse count');
		await page.getByText('Say how many pulses a turn has').waitFor();
		await wheel.getByLabel('holds').selectOption('degrees');
	});

	it('is then read, and the next file of its kind without a question', async () => {
		const { page } = desk;
		await page.getByRole('button', { name: 'Read it by these columns' }).click();
		await page.getByText('In the ledger: 1 ride').waitFor({ timeout: 60_000 });
		await upload('rig again.csv', 7000);
		await page.getByText('In the ledger: 2 rides').waitFor({ timeout: 60_000 });
		expect(await page.getByRole('link', { name: 'Say what its columns are' }).count()).toBe(0);
		expect(desk.complaints).toEqual([]);
	});

	it('can be corrected once the ride stands: the old answer is filled in, the ride is computed anew', async () => {
		const { page } = desk;
		await page.getByRole('table').getByRole('link').first().click();
		await page.getByRole('heading', { name: 'Columns of the table' }).waitFor();
		const columns = page.locator('section', {
			has: page.getByRole('heading', { name: 'Columns of the table' })
		});
		expect(await columns.innerText()).toMatch(/Rear wheel\s+Hub angle deg, angle in degrees/);
		await columns.getByRole('link').click();
		await page.getByRole('heading', { name: 'Read this ride by other columns' }).waitFor();
		const wheel = page.getByRole('group', { name: 'Rear wheel' });
		expect(await wheel.getByLabel('holds').inputValue()).toBe('degrees');
		expect(await page.getByRole('checkbox', { name: /also the 1 other ride/ }).count()).toBe(1);
		// a clock of its own: here the same one, written down as such
		await wheel.getByLabel('its time stands in').selectOption({ label: 'Moment' });
		await page.getByText('A column can be one thing only.').waitFor();
		await wheel.getByLabel('its time stands in').selectOption({ label: 'Stamp ms' });
		await wheel.getByLabel('its time is written in').selectOption('ms');
		await page.getByText(/of the wheel 50 on its own clock/).waitFor();
		await wheel.getByLabel('its time stands in').selectOption({ label: 'the time of the crank' });
		await page.locator('select[name=load]').selectOption('-1');
		expect(await desk.accessibility()).toEqual([]);
		expect(await desk.overhang()).toBe(0);
		await page.getByRole('button', { name: 'Read it anew' }).click();
		await page.getByRole('heading', { name: /^Ride of/ }).waitFor();
		expect(await columns.innerText()).not.toContain('Moment');
		await expect
			.poll(
				async () => {
					await page.reload();
					return page.getByText('This ride is being computed again').count();
				},
				{ timeout: 90_000 }
			)
			.toBe(0);
		expect(await page.getByText('The ride holds no power').count()).toBe(1);
		await page.getByText('Who changed what').click();
		await page.getByText('named the columns anew of').first().waitFor();
		expect(desk.complaints).toEqual([]);
	});

	it('is remembered in the settings until somebody forgets it', async () => {
		const { page } = desk;
		await page.goto('/settings');
		const answers = page.locator('section', {
			has: page.getByRole('heading', { name: "Columns of loggers' tables" })
		});
		expect(await answers.innerText()).toMatch(/Rear wheel: hub angle deg, angle in degrees/);
		expect(await answers.innerText()).toContain('one ride was read so');
		expect(await desk.accessibility()).toEqual([]);
		expect(await desk.overhang()).toBe(0);
		await answers.getByRole('button', { name: /^Forget it/ }).click();
		await answers.waitFor({ state: 'detached' });
		await page.goto('/rides');
		await upload('rig asks.csv', 20_000);
		await page.getByRole('link', { name: 'Say what its columns are' }).waitFor({ timeout: 60_000 });
		await page.getByRole('link', { name: 'Say what its columns are' }).click();
		await page.getByRole('group', { name: 'Rear wheel' }).getByLabel('holds').selectOption('degrees');
		await page.getByRole('button', { name: 'Read it by these columns' }).click();
		await page.getByText('In the ledger: 3 rides').waitFor({ timeout: 60_000 });
		expect(desk.complaints).toEqual([]);
	});

	it('fits a phone', async () => {
		const { page } = desk;
		await page.goto('/rides');
		const other = loggerTable(0).toString().replace('Moment', 'Moment am Tretlager');
		await page
			.locator('input[type=file][accept]')
			.setInputFiles({ name: 'other.csv', mimeType: 'text/csv', buffer: Buffer.from(other) });
		const link = page.getByRole('link', { name: 'Say what its columns are' });
		const path = (await link.getAttribute('href')) ?? '';
		const phone = await workshop.open({ ...PHONE, colorScheme: 'dark' });
		await giveName(phone, 'Bo Nobody');
		await phone.page.goto(path);
		await phone.page.getByRole('button', { name: 'Read it by these columns' }).waitFor();
		expect(await phone.overhang()).toBe(0);
		expect(await phone.accessibility()).toEqual([]);
	});
});
