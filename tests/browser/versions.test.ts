import Database from 'better-sqlite3';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runCommand } from '../faults/runCommand';
import { smallRides } from '../faults/program';
import { expectEveryPageIsSound } from './everyPage';
import { startEmpty } from './firstSteps';
import { DESK, openWorkshop, PHONE, type Visit, type Workshop } from './workshop';

/** Copies rows of the newest version as those of the one before. */
function copyAsOlder(database: Database.Database, table: string, but: readonly string[] = []): void {
	const columns = (database.pragma(`table_info(${table})`) as { name: string }[])
		.map(({ name }) => name)
		.filter((name) => !but.includes(name));
	const values = columns.map((name) => (name === 'version' ? 'version - 1' : name));
	database.exec(`INSERT INTO ${table} (${columns.join()}) SELECT ${values.join()} FROM ${table}`);
}

/** Gives the ledger what an older program would have left: its results, differing in one event, as current. */
function leaveOlderVersion(folder: string): { rideId: number; version: number } {
	const channels = new Database(join(folder, 'channels.sqlite'), { timeout: 10_000 });
	for (const table of ['channel', 'channel_chunk']) copyAsOlder(channels, table);
	channels.close();
	const database = new Database(join(folder, 'ledger.sqlite'), { timeout: 10_000 });
	database.pragma('foreign_keys = ON');
	try {
		return database.transaction(() => {
			const [{ rideId, version }] = database
				.prepare<[], { rideId: number; version: number }>('SELECT ride_id AS rideId, version FROM result')
				.all();
			for (const table of ['result', 'result_detail', 'observed_stretch']) copyAsOlder(database, table);
			copyAsOlder(database, 'slip_event', ['id']);
			database
				.prepare(
					"UPDATE slip_event SET overrun_crank_deg = 3 * overrun_crank_deg, kind = 'slip' WHERE version = ?"
				)
				.run(version - 1);
			database
				.prepare("UPDATE setting SET value = ? WHERE name = 'analysisVersion'")
				.run(String(version - 1));
			return { rideId, version };
		})();
	} finally {
		database.close();
	}
}

describe('a newer analysis version that waits', () => {
	let workshop: Workshop;
	let desk: Visit;
	let older: { rideId: number; version: number };

	beforeAll(async () => {
		workshop = await openWorkshop();
		desk = await workshop.open(DESK);
		const { page } = desk;
		await startEmpty(desk, 'Ada Nowhere');
		await page.goto('/versions');
		expect(await page.getByText('Nothing is analysed yet').count()).toBe(1);
		const folder = join(workshop.dataFolder, 'ledger');
		const { status, stderr } = await runCommand('import', ['--data', folder, ...smallRides(1)]);
		if (status !== 0) throw new Error(stderr);
		older = leaveOlderVersion(folder);
	});
	afterAll(() => workshop?.close());

	it('is announced on the programme page and shows what it would change', async () => {
		const { page } = desk;
		await page.goto('/');
		await page.getByRole('link', { name: 'Look at it' }).click();
		await page.getByRole('heading', { name: 'Analysis versions' }).waitFor();
		expect(await page.getByText(`Version ${older.version - 1} is current.`).count()).toBe(1);
		expect(
			await page
				.getByRole('heading', {
					name: `What version ${older.version} would change against version ${older.version - 1}`
				})
				.count()
		).toBe(1);
		await page.getByText('Rides that nobody has reviewed').click();
		expect(await page.locator('details').getByText('beyond its limits').count()).toBeGreaterThan(0);
	});

	for (const [name, screen] of [
		['a desk', DESK],
		['a dark phone', { ...PHONE, colorScheme: 'dark' as const }]
	] as const) {
		it(`is shown soundly on ${name}`, async () => {
			const visit = await workshop.open(screen);
			await visit.context.addCookies(await desk.context.cookies());
			await expectEveryPageIsSound(visit, ['/versions', `/rides/${older.rideId}`]);
			await visit.context.close();
		});
	}

	it('becomes current by one button and can be left again, each step in the trail', async () => {
		const { page } = desk;
		await page.goto('/versions');
		await page.getByRole('button', { name: `Make version ${older.version} current` }).click();
		await page.getByText(`Pages and rates read version ${older.version}.`).waitFor();
		await page.goto(`/versions?with=${older.version - 1}`);
		await page.getByRole('button', { name: `Go back to version ${older.version - 1}` }).click();
		await page.getByText(`Pages and rates read version ${older.version - 1}.`).waitFor();
		const database = new Database(join(workshop.dataFolder, 'ledger', 'ledger.sqlite'), { readonly: true });
		const steps = database
			.prepare("SELECT subject_id AS version FROM trail WHERE action = 'changed over' ORDER BY id")
			.all();
		database.close();
		expect(steps).toEqual([{ version: String(older.version) }, { version: String(older.version - 1) }]);
	});

	it('is told from one page to another: a second switch from an old page is refused', async () => {
		const first = desk.page;
		await first.goto('/versions');
		const second = await desk.context.newPage();
		await second.goto('/versions');
		await first.getByRole('button', { name: `Make version ${older.version} current` }).click();
		await first.getByText(`Pages and rates read version ${older.version}.`).waitFor();
		await second.getByRole('button', { name: `Make version ${older.version} current` }).click();
		await second.getByText('is current meanwhile').waitFor();
		await second.close();
	});

	it('tells on the page of a ride which slips put into it were found', async () => {
		const { page } = desk;
		const line = page.getByText('Of slips of 90 crank degrees put into this ride');
		await expect
			.poll(async () => (await page.goto(`/rides/${older.rideId}`), line.count()), {
				timeout: 60_000,
				interval: 1000
			})
			.toBe(1);
		expect(await line.innerText()).toMatch(/\d+ of \d+ \(\d+\s%\sto\s\d+\s%\)/);
	});
});
