import { createReadStream } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
	actorOf,
	choosePerson,
	createBuild,
	createWheel,
	findImport,
	fitBuild,
	openLedger,
	startEmpty,
	storeFile,
	type Ledger
} from '$lib/server';
import { openArchive } from '$lib/server/archive/openArchive';
import { expectEveryPageIsSound } from './everyPage';
import { giveName } from './firstSteps';
import { openWorkshop, PHONE, type Visit, type Workshop } from './workshop';

const RIDE = '2026-04-22-w1-r1.fit';
const PATH = fileURLToPath(new URL(`../../sample-rides/${RIDE}`, import.meta.url));

describe('what a ride needs, and the ledger as a whole', () => {
	let workshop: Workshop;
	let phone: Visit;
	let ledger: Ledger;
	let rideId: number;
	/** the same person in a browser that runs no script */
	let plain: Page;

	beforeAll(async () => {
		workshop = await openWorkshop();
		phone = await workshop.open(PHONE);
		await giveName(phone, 'Cy Nowhere');
		await phone.page.getByRole('button', { name: 'Start empty' }).waitFor();
		ledger = openLedger(join(workshop.dataFolder, 'ledger'), { migrate: false });
		rideId = await rideAcrossAChange(ledger);
		const browser = phone.context.browser();
		const context = await browser!.newContext({
			baseURL: workshop.origin,
			javaScriptEnabled: false,
			storageState: await phone.context.storageState()
		});
		plain = await context.newPage();
	}, 180_000);
	afterAll(async () => {
		ledger?.close();
		await workshop?.close();
	});

	it('asks where a ride belongs during which the build changed, and takes the answer without script', async () => {
		await plain.goto('/answers');
		await plain.getByRole('heading', { name: 'The build changed during the ride' }).waitFor();
		// nothing is ticked beforehand that only a person can say
		expect(await plain.getByRole('checkbox').isChecked()).toBe(false);
		await plain.getByRole('button', { name: 'Keep the ticked answers' }).click();
		expect(await plain.getByRole('alert').innerText()).toContain('Tick at least one ride');
		await plain.getByRole('checkbox').check();
		await plain.getByRole('button', { name: 'Keep the ticked answers' }).click();
		expect(await plain.getByRole('status').innerText()).toContain('1 answer kept');
		await plain.goto(`/rides/${rideId}`);
		expect(await plain.locator('#split tbody tr').count()).toBe(2);
	});

	it('takes answers back as a whole, without script too', async () => {
		await plain.goto('/answers');
		await plain.getByRole('button', { name: /^Take back: Build changed/ }).click();
		await plain.goto(`/rides/${rideId}`);
		await plain.getByRole('heading', { name: 'The build changed during this ride' }).waitFor();
	});

	it('splits the ride on its own page: two parts that add up, each with its build', async () => {
		const { page } = phone;
		await page.goto(`/rides/${rideId}`);
		await page.getByRole('button', { name: 'Split it there' }).click();
		await page.getByRole('heading', { name: 'Split at the change of build' }).waitFor();
		const rows = page.locator('#split tbody tr');
		expect(await rows.locator('td a').allInnerTexts()).toEqual(['As found', 'Retrofit']);
		const totals = await rows.locator('td:nth-child(3)').allInnerTexts();
		const [first, second] = totals.map((text) => Number.parseFloat(text));
		const recording = page.getByRole('region', { name: 'The recording' });
		const whole = Number.parseFloat(await recording.locator('dd').first().innerText());
		expect(first).toBeGreaterThan(5);
		expect(second).toBeGreaterThan(5);
		expect(Math.abs(first + second - whole)).toBeLessThanOrEqual(0.11);
	});

	it('keeps what a rider says of the ride, with who said it', async () => {
		const { page } = phone;
		await page.goto(`/rides/${rideId}`);
		await page.getByLabel('Surface').selectOption('forest track');
		await page.getByLabel('Load in kg').fill('12,5');
		await page.getByRole('button', { name: 'Keep the answers' }).click();
		await page
			.getByText(/^said by P1/)
			.first()
			.waitFor();
		await page.reload();
		expect(await page.getByLabel('Surface').inputValue()).toBe('forest track');
		expect(await page.getByLabel('Load in kg').inputValue()).toBe('12.5');
		await page.getByText('Who changed what').click();
		expect(await page.locator('#history').innerText()).toContain('load in kg: before nothing, after 12.5');
	});

	it('shows the trail, filtered by thing', async () => {
		const { page } = phone;
		await page.goto(`/ledger/trail?thing=ride&number=${rideId}`);
		const entries = await page.locator('ol > li').allInnerTexts();
		expect(entries.filter((entry) => /\bsplit ride of/.test(entry))).toHaveLength(2);
		expect(entries.join()).not.toContain('Cy Nowhere');
	});

	it('hands the whole ledger out as one file that is an archive', async () => {
		const { page } = phone;
		await page.goto('/ledger');
		await page.getByLabel('ride files').check();
		const [download] = await Promise.all([
			page.waitForEvent('download'),
			page.getByRole('button', { name: 'Download the archive' }).click()
		]);
		expect(download.suggestedFilename()).toMatch(/^ledger-archive-\d{4}-\d\d-\d\d\.zip$/);
		const archive = await openArchive(await download.path());
		archive.close();
		expect(archive.manifest).toMatchObject({ names: false, files: [{ kind: 'source', included: true }] });
		expect(archive.manifest.tables.find(({ name }) => name === 'ride_part')).toMatchObject({ rows: 2 });
	});

	it('keeps to what every page keeps to', async () => {
		await expectEveryPageIsSound(phone, [
			'/answers',
			'/answers?question=surface',
			'/ledger',
			'/ledger/trail',
			`/rides/${rideId}`
		]);
	});
});

/** One wheel whose build was changed in the middle of its only ride. */
async function rideAcrossAChange(ledger: Ledger): Promise<number> {
	const actor = actorOf(choosePerson(ledger, 'Cy Nowhere'));
	startEmpty(ledger, actor);
	const wheelId = createWheel(ledger, actor, { name: 'Blue wheel', hub: 'a hub' });
	const [before, after] = ['As found', 'Retrofit'].map((name) =>
		createBuild(ledger, actor, { name, description: 'for the test' })
	);
	fitBuild(ledger, actor, { wheelId, buildId: before, from: '2026-04-01T08:00:00Z' });
	fitBuild(ledger, actor, { wheelId, buildId: after, from: '2026-04-22T08:00:00Z' });
	const { importId } = await storeFile(ledger, actor, {
		name: RIDE,
		bytes: createReadStream(PATH),
		hints: { wheelId }
	});
	for (;;) {
		const known = findImport(ledger, importId);
		if (known?.rideId) return known.rideId;
		if (known?.sentence) throw new Error(known.sentence);
		await new Promise((resolve) => setTimeout(resolve, 200));
	}
}
