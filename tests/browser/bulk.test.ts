import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { smallRides } from '../faults/program';
import { zipBytes } from '../jobs/unpack/zipBytes';
import { startEmpty } from './firstSteps';
import { DESK, openWorkshop, type Visit, type Workshop } from './workshop';

const NO_RIDES = 60;

describe('a folder of files', () => {
	let workshop: Workshop;
	let desk: Visit;
	let folder: string;

	beforeAll(async () => {
		workshop = await openWorkshop();
		desk = await workshop.open(DESK);
		folder = mkdtempSync(join(tmpdir(), 'slip-ledger-bulk-'));
		mkdirSync(join(folder, 'spring'));
		const rides = smallRides(3).map((file) => readFileSync(file));
		for (let i = 0; i < NO_RIDES; i++)
			writeFileSync(join(folder, 'spring', `${i}.fit`), `no ride, number ${i}`);
		writeFileSync(join(folder, 'spring', 'good.fit'), rides[0]);
		writeFileSync(join(folder, 'cat.jpg'), 'no ride');
		writeFileSync(
			join(folder, 'more.zip'),
			zipBytes([
				{ name: 'autumn/a.fit', content: rides[1] },
				{ name: 'autumn/b.fit', content: rides[2] },
				{ name: 'cat.jpg', content: 'no ride' },
				{ name: '../out.fit', content: rides[2] }
			])
		);
	});
	afterAll(async () => {
		await workshop?.close();
		rmSync(folder, { recursive: true, force: true });
	});

	const chooseFolder = () => desk.page.locator('input[webkitdirectory]').setInputFiles(folder);
	const bulk = () => desk.page.locator('[data-bulk]');

	it('is sent with progress, can be paused and gone on with', async () => {
		const { page } = desk;
		await startEmpty(desk, 'Bo Nobody');
		await page.goto('/rides');
		await chooseFolder();
		await page.getByRole('button', { name: 'Pause' }).click();
		await page.locator('[data-bulk="paused"]').waitFor();
		expect(await bulk().innerText()).toMatch(/62 files.*to go/);
		expect(await page.getByText('1 other file of the folder left out').count()).toBe(1);
		expect(await bulk().locator('li').count()).toBeLessThanOrEqual(12);
		expect(await desk.accessibility()).toEqual([]);
		await page.getByRole('button', { name: 'Go on' }).click();
		await page.locator('[data-bulk="idle"]').waitFor({ timeout: 60_000 });
		expect(await bulk().innerText()).toMatch(/62 files: 62 arrived\./);
	});

	it('has lines for what was refused, numbers for the rest, and one line for each file of an archive', async () => {
		const { page } = desk;
		await page.getByText('In the ledger: 3 rides').waitFor({ timeout: 90_000 });
		await page.getByText('Everything that arrived has been read.').waitFor({ timeout: 90_000 });
		const list = page.locator('section', { hasText: 'Files received' }).last();
		expect(await list.innerText()).toMatch(/3 read into rides · 1 left out of archives · 61 refused/);
		expect(await list.innerText()).toMatch(/\d+ more of this kind are not shown here/);
		expect(await list.getByRole('listitem').count()).toBeLessThanOrEqual(50);
		await list.getByText(/that need nothing/).click();
		expect(
			await list.getByText('2 files taken out, 1 left out because they are no rides, 1 refused.').count()
		).toBe(1);
		expect(await list.getByText('autumn/').count()).toBe(2);
		expect(await desk.overhang()).toBe(0);
		expect(desk.complaints).toEqual([]);
	});

	it('chosen again after the page was closed sends only what is not there', async () => {
		const { page } = desk;
		await page.goto('/rides');
		await chooseFolder();
		await page.locator('[data-bulk="idle"]').waitFor({ timeout: 60_000 });
		// refused files are sent again, since a newer program may read them; the archive had a refused one
		expect(await bulk().innerText()).toMatch(/62 files: 61 arrived · 1 already in the ledger\./);
		expect(desk.complaints).toEqual([]);
	});

	it('can be given up: what arrived stays', async () => {
		const { page } = desk;
		await page.goto('/rides');
		for (let i = 0; i < 20; i++) writeFileSync(join(folder, `late ${i}.fit`), Buffer.alloc(3_000_000, i + 1));
		await page
			.locator('input[type=file][accept]')
			.setInputFiles(Array.from({ length: 20 }, (_, i) => join(folder, `late ${i}.fit`)));
		await page.getByRole('button', { name: 'Pause' }).click();
		await page.locator('[data-bulk="paused"]').waitFor();
		await page.getByRole('button', { name: /^Stop; what arrived stays/ }).click();
		await page.getByRole('button', { name: /^Stop;/ }).waitFor({ state: 'detached' });
		await page.waitForLoadState('networkidle');
		const answer = await page.request.get('/imports.json?overview');
		const { underWay } = (await answer.json()) as { underWay: { receiving: number } };
		expect(underWay.receiving).toBe(0);
	});

	it('goes on by itself after the line was away, and the page with its list of files stays', async () => {
		const { page, context } = desk;
		const names = Array.from({ length: 40 }, (_, i) => join(folder, `away ${i}.fit`));
		names.forEach((name, i) => writeFileSync(name, Buffer.alloc(1_500_000, 100 + i)));
		await page.goto('/rides');
		await page.locator('input[type=file][accept]').setInputFiles(names);
		await page.getByText(/\d+ arrived/).waitFor();
		// by now the page wants its data anew
		await context.setOffline(true);
		await page.waitForTimeout(5000);
		expect(await bulk().innerText()).toMatch(/40 files.*to go/);
		await context.setOffline(false);
		await page.locator('[data-bulk="idle"]').waitFor({ timeout: 90_000 });
		expect(await bulk().innerText()).toMatch(/40 files: 40 arrived\./);
	});
});
