import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { layoutTroubles } from './layoutTroubles';
import { startEmpty, unexpectedOn } from './firstSteps';
import { steadyRide } from './steadyRide';
import { DESK, openWorkshop, PHONE, type Visit, type Workshop } from './workshop';

const PROJECT = fileURLToPath(new URL('../..', import.meta.url));
/** from 400 rides on pages show figures that miss rides, and say so */
const RIDES = 450;
const COME_IN = 40;
const READ_WITHIN_MS = 400_000;

describe('states that are seldom seen', () => {
	let workshop: Workshop;
	let desk: Visit;
	let phone: Visit;

	beforeAll(async () => {
		workshop = await openWorkshop();
		desk = await workshop.open(DESK);
		await startEmpty(desk, 'Ada Nowhere');
		phone = await workshop.open({ ...PHONE, colorScheme: 'dark' });
		await phone.context.addCookies(await desk.context.cookies());
	});
	afterAll(() => workshop?.close());

	const handIn = (files: readonly { name: string; buffer: Buffer }[]) =>
		desk.page
			.locator('input[type=file][accept]')
			.setInputFiles(files.map((file) => ({ ...file, mimeType: 'application/octet-stream' })));
	const sound = async (visit: Visit, fingers: boolean) => {
		expect(await visit.accessibility()).toEqual([]);
		expect(await layoutTroubles(visit.page, fingers)).toEqual([]);
	};

	it('says of every file that it does not take what is wrong with it and what to do', async () => {
		const { page } = desk;
		await page.goto('/rides');
		await handIn([
			{ name: 'notes.fit', buffer: Buffer.from('no ride at all') },
			{ name: 'empty.gpx', buffer: Buffer.from('<?xml version="1.0"?><gpx></gpx>') },
			{ name: 'half.tcx', buffer: steadyRide(Date.UTC(2026, 3, 1)).subarray(0, 150) },
			{ name: 'rows.csv', buffer: Buffer.from('time_s,crank_rpm,wheel_rpm,crank_torque_nm\n') },
			{ name: 'photo.png', buffer: Buffer.from('\u0089PNG\r\n\u001a\n0000', 'latin1') }
		]);
		const refused = page.locator('strong', { hasText: 'refused' });
		await expect.poll(() => refused.count(), { timeout: 90_000 }).toBe(5);
		await page.reload();
		const list = page.getByRole('region', { name: 'Files received' });
		for (const name of ['notes.fit', 'empty.gpx', 'half.tcx', 'rows.csv', 'photo.png']) {
			const said = await list.getByRole('listitem').filter({ hasText: name }).first().innerText();
			// a whole sentence for whoever sent it, no code and no stack trace
			expect(said, name).toMatch(/refused\s+[A-Z][^]{30,}\./);
			expect(said, name).not.toMatch(/Error|undefined|null|NaN|\n\s+at /);
		}
		expect(unexpectedOn(desk)).toEqual([]);
	});

	it(
		'says how old figures are while files come into a full ledger',
		async () => {
			const fill = ['--import', 'tsx', 'tests/bench/manyRides.ts', '--fill'];
			const run = spawnSync(
				process.execPath,
				[...fill, join(workshop.dataFolder, 'ledger/ledger.sqlite'), String(RIDES)],
				{ cwd: PROJECT, encoding: 'utf8' }
			);
			expect(run.stderr).toBe('');
			const { page } = desk;
			await page.goto('/');
			await page.getByRole('article').first().waitFor({ timeout: READ_WITHIN_MS });
			// twenty wheels do not push what a build tells out of sight
			expect(await page.getByRole('link', { name: 'and 17 more' }).count()).toBe(2);
			const wheels = await page.getByRole('article').first().locator('dd').first().innerText();
			expect(wheels).toMatch(/^Wheel 1, Wheel 2, Wheel 3, and 17 more$/);
			await page.goto('/rides');
			await handIn(
				Array.from({ length: COME_IN }, (_, i) => ({
					name: `ride ${i}.tcx`,
					buffer: steadyRide(Date.UTC(2026, 4, 1 + i, 8), 1800)
				}))
			);
			const says = phone.page.getByRole('status').filter({ hasText: 'Figures of' });
			await expect
				.poll(
					async () => {
						await phone.page.goto('/');
						return says.count();
					},
					{ timeout: READ_WITHIN_MS, interval: 100 }
				)
				.toBe(1);
			expect(await says.innerText()).toMatch(/counted|computed anew/);
			const line = (await says.boundingBox())!;
			const heading = (await phone.page.getByRole('heading', { level: 1 }).boundingBox())!;
			expect(heading.y - (line.y + line.height)).toBeGreaterThanOrEqual(8);
			expect(await phone.overhang()).toBe(0);
			expect(unexpectedOn(desk)).toEqual([]);
		},
		2 * READ_WITHIN_MS
	);

	it('asks about a clock that looks wrong, and leads from the top of the ride to the answer', async () => {
		const { page } = desk;
		await page.goto('/rides');
		await handIn([{ name: 'clock.tcx', buffer: steadyRide(Date.UTC(2001, 0, 1, 0, 5)) }]);
		await page.getByText('1 file: 1 arrived').waitFor({ timeout: 90_000 });
		const asking = page.locator('tbody tr', { hasText: 'clock looks wrong' });
		await expect
			.poll(
				async () => {
					await page.goto('/rides?needs=1');
					return asking.count();
				},
				{ timeout: READ_WITHIN_MS, interval: 500 }
			)
			.toBe(1);
		const path = (await asking.locator('th a').getAttribute('href'))!;
		await phone.page.goto(path);
		await phone.page.locator('[data-stage="shown"]').waitFor();
		await sound(phone, true);
		await page.goto(path);
		await page.locator('[data-stage="shown"]').waitFor();
		await sound(desk, false);
		await page.getByRole('link', { name: 'Answer below' }).first().click();
		const asks = page.locator('section:target');
		await asks.getByRole('heading', { name: "The recording's clock looks wrong" }).waitFor();
		await asks.getByLabel(/^It began/).fill('2026-04-01T09:00');
		await asks.getByRole('button', { name: 'Keep this start' }).click();
		await page.getByText('its start was corrected').waitFor();
		expect(await page.getByRole('heading', { level: 1 }).innerText()).toContain('1 Apr 2026');
		expect(unexpectedOn(desk)).toEqual([]);
	});
});
