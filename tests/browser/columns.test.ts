import { afterAll, beforeAll, describe, expect, it } from 'vitest';
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
		await page.goto('/');
		await page.getByLabel('Your name').fill('Bo Nobody');
		await page.getByRole('button', { name: 'Go on' }).click();
		await page.getByRole('button', { name: 'Start empty' }).click();
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

	it('fits a phone', async () => {
		const { page } = desk;
		const other = loggerTable(0).toString().replace('Moment', 'Moment am Tretlager');
		await page
			.locator('input[type=file][accept]')
			.setInputFiles({ name: 'other.csv', mimeType: 'text/csv', buffer: Buffer.from(other) });
		const link = page.getByRole('link', { name: 'Say what its columns are' });
		const path = (await link.getAttribute('href')) ?? '';
		const phone = await workshop.open({ ...PHONE, colorScheme: 'dark' });
		await phone.page.goto('/');
		await phone.page.getByLabel('Your name').fill('Bo Nobody');
		await phone.page.getByRole('button', { name: 'Go on' }).click();
		await phone.page.waitForLoadState('networkidle');
		await phone.page.goto(path);
		await phone.page.getByRole('button', { name: 'Read it by these columns' }).waitFor();
		expect(await phone.overhang()).toBe(0);
		expect(await phone.accessibility()).toEqual([]);
	});
});
