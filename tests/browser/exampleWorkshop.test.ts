import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { EVERY_PAGE_WITHIN_MS, EVERY_SCREEN } from './everyPage';
import { expectEvidenceHoldsTruth } from './exampleTruth';
import { everyPath, firstEvent, originalCounts, seconds } from './exampleWords';
import { expectGuidedStartLeads, expectPagesAreLight, expectWordsAreExplained } from './guidedStart';
import { expectRideViewsAgree } from './rideViews';
import { expectReviewByKeys } from './reviewByKeys';
import { EXPLAINED, expectFiguresExplained } from './numbersExplained';
import { expectReportPrints } from './reportPrints';
import { expectFullPagesByTab, expectStripsByKeys } from './walkFullPages';
import { DESK, openWorkshop, PHONE, type Visit, type Workshop } from './workshop';

/** 42 files are read by one child process on the smallest machine. */
const READ_WITHIN_MS = 280_000;

const openEvent = ({ page }: Visit, nth: number) =>
	page
		.getByRole('link', { name: /^Open event/ })
		.nth(nth)
		.click();

describe('the example workshop, from the first start to a comparison', () => {
	let workshop: Workshop;
	let desk: Visit;
	let ridePath = '';

	beforeAll(async () => {
		workshop = await openWorkshop();
		desk = await workshop.open(DESK);
	});
	afterAll(() => workshop?.close());

	it('asks for a name first, then offers the example or an empty ledger', async () => {
		const { page } = desk;
		await page.goto('/');
		expect(new URL(page.url()).pathname).toBe('/welcome');
		expect(await desk.accessibility()).toEqual([]);
		await page.getByLabel('Your name').fill('Ada Nowhere');
		await page.getByRole('button', { name: 'Go on' }).click();
		await page.getByRole('button', { name: 'Start empty' }).waitFor();
		expect(await desk.accessibility()).toEqual([]);
		await page.getByRole('button', { name: 'Set up the example' }).click();
		await page.getByRole('heading', { name: 'Programme' }).waitFor();
	});

	it(
		'reads every ride of the example and shows each build with its observed distance and rate',
		async () => {
			const { page } = desk;
			await page
				.getByText('The example workshop is being read')
				.waitFor({ state: 'hidden', timeout: READ_WITHIN_MS });
			await page.goto('/');
			const builds = page.locator('article');
			expect(await builds.count()).toBe(3);
			for (const build of await builds.all()) {
				expect(await build.getByText('invented example').count()).toBe(1);
				expect(await build.innerText()).toMatch(/[\d,.]+\skm \(\d+\s%\)/);
				expect(await build.innerText()).toMatch(/observed\skm/);
			}
		},
		READ_WITHIN_MS + 20_000
	);

	it('holds the truth of the example within its limits, and says in the terminal what the page says', async () => {
		const { request } = desk.page;
		const choices = await (await request.get('/report')).text();
		const idOf = (name: string) => new RegExp(`<option value="(\\d+)"[^>]*>\\s*${name}`).exec(choices)![1];
		const query = `before=${idOf('Original')}&after=${idOf('Retrofit')}`;
		const { told } = await (await request.get(`/report/figures.json?${query}`)).json();
		await expectEvidenceHoldsTruth(told, join(workshop.dataFolder, 'ledger'));
	});

	it('opens fifteen seconds around a slip that is chosen from the list of a ride', async () => {
		const { page } = desk;
		await page.getByRole('link', { name: 'Original', exact: true }).click();
		await page.locator('#unreviewed tbody a').first().click();
		await page.locator('[data-stage="shown"]').waitFor();
		ridePath = new URL(page.url()).pathname;
		expect(await page.getByText('A slip that is felt ends the test').count()).toBe(1);
		await openEvent(desk, 0);
		await page.getByRole('heading', { name: /^Event \d+, slip at/ }).waitFor();
		const [from, to] = (await page.locator('#strips-heading').innerText()).split(' to ').map(seconds);
		expect(to - from).toBe(15);
	});

	it('shows the stretch as a gear fan, on the track and as a table of every second, without a violation', async () => {
		const { page } = desk;
		await page.getByText('Cadence against speed: where').click();
		await page.getByRole('img', { name: /^Cadence against speed with a ray/ }).waitFor();
		await page.getByText('Where it was ridden').click();
		await page.getByRole('img', { name: /^Track of the ride/ }).waitFor();
		await page.getByText('The shown stretch as a table').click();
		const rows = page.getByRole('region', { name: 'Values of the shown stretch' }).locator('tbody tr');
		await expect.poll(() => rows.count()).toBe(16);
		expect(await desk.accessibility()).toEqual([]);
	});

	it('counts a confirmed slip in the rate, leaves a rejected one out, and takes a verdict back', async () => {
		const { page } = desk;
		await page.getByRole('button', { name: 'Confirm: it is a slip' }).click();
		await page.getByText('It stands as: confirmed.').waitFor();
		expect(await originalCounts(desk)).toMatch(/1 confirmed, (\d+) not reviewed/);

		await page.goto(ridePath);
		await openEvent(desk, 1);
		await page.getByLabel('a shift').check();
		await page.getByRole('button', { name: 'Reject' }).click();
		await page.getByText('It stands as: rejected: shift.').waitFor();
		expect(await originalCounts(desk)).toMatch(/1 confirmed.*, 1 rejected/s);

		await page.goto(ridePath);
		await openEvent(desk, 1);
		await page.getByRole('button', { name: 'Take the verdict back' }).click();
		await page.getByText('It stands as: not reviewed.').waitFor();
		expect(await originalCounts(desk)).not.toMatch(/rejected/);
	});

	it('does not reject an event without a reason, and says so', async () => {
		const { page } = desk;
		await page.goto(ridePath);
		await openEvent(desk, 1);
		await page.getByRole('button', { name: 'Reject' }).click();
		await page.getByRole('alert').getByText('Say why it is no slip').waitFor();
		// the browser reports the refused form as a failed request; nothing else may be there
		expect(desk.complaints.filter((complaint) => !complaint.includes('status of 400'))).toEqual([]);
		desk.complaints.length = 0;
	});

	it('moves all strips by keyboard, and speaks what is read out there', async () => {
		const { page } = desk;
		await page.goto(ridePath);
		await page.locator('[data-stage="shown"]').waitFor();
		await expectStripsByKeys(desk, async () =>
			(await page.locator('#strips-heading').innerText()).split(' to ').map(seconds)
		);
	});

	it('keeps one read-out and one open event in all views of a ride, and gives its charts away', async () => {
		await expectRideViewsAgree(desk, ridePath);
	});

	it('asks what a lap without an event was, keeps the answer, and takes it back', async () => {
		const { page } = desk;
		await page.goto('/rides?needs=1');
		await page
			.locator('tbody tr', { hasText: /laps? that mean/ })
			.first()
			.locator('th a')
			.click();
		const laps = page.getByRole('region', { name: 'What the laps meant' });
		const open = laps.getByText('Needs an answer:');
		await open.first().waitFor();
		const before = await open.count();
		await laps
			.getByRole('button', { name: /something else$/ })
			.first()
			.click();
		await laps.getByText('something else; nothing was found before it').waitFor();
		expect(await open.count()).toBe(before - 1);
		await laps.getByRole('button', { name: 'Take the answer back' }).click();
		await laps.getByText('something else; nothing was found before it').waitFor({ state: 'detached' });
		expect(await open.count()).toBe(before);
	});

	it('says at every rate that false alarms are not known, and how often they come once a good wheel is named', async () => {
		const { page } = desk;
		await page.goto('/');
		const unknown = page.locator('article').getByText('no ride of a wheel known to be good yet');
		expect(await unknown.count()).toBe(3);
		const tick = async (good: boolean) => {
			await page.goto('/wheels');
			await page.locator('a[href^="/wheels/"]').last().click();
			await page.getByLabel(/A reference wheel/).setChecked(good);
			await page.locator('form[action="?/good"] button').click();
			await page.waitForLoadState('networkidle');
			await page.goto('/');
		};
		await tick(true);
		expect(await page.locator('article').getByText('On wheels known to be good').count()).toBe(3);
		await page.getByText('The same by kind of recording').click();
		expect(await page.getByRole('rowheader', { name: 'a wheel sensor' }).count()).toBeGreaterThan(0);
		await tick(false);
		expect(await unknown.count()).toBe(3);
	});

	it('draws the confirmed slip in the comparison and names every build there', async () => {
		const { page } = desk;
		await page.goto('/compare');
		const chart = page.getByRole('img', { name: /^Counted slips against distance since fitting/ });
		expect(await chart.locator('.confirmed').count()).toBe(1);
		for (const build of ['Original', 'Prototype 1', 'Retrofit']) {
			expect(await chart.getAttribute('aria-label')).toContain(`${build} on Wheel 1`);
		}
		expect(await page.getByRole('heading', { name: 'Set against Original' }).count()).toBe(1);
	});

	it('prints the report of one build against another, and gives its figures and charts as files', async () => {
		await expectReportPrints(desk, 'before=1&after=3');
	});

	it.each(EXPLAINED)('has the meaning of every figure on %s one press away', (path) =>
		expectFiguresExplained(desk, path)
	);

	it('tells what was on a wheel at any kilometre of its axis, by keys and from the table behind it', async () => {
		const { page } = desk;
		await page.goto('/wheels');
		await page.locator('a[href^="/wheels/"]').first().click();
		const slider = page.getByRole('slider', { name: 'Where to look on the distance axis' });
		const then = page.locator('section[aria-labelledby="then-heading"]');
		await slider.focus();
		await page.keyboard.press('Home');
		await then.getByRole('link', { name: 'Original', exact: true }).waitFor();
		expect(await then.innerText()).toMatch(/none is written down before/);
		await slider.focus();
		await page.keyboard.press('End');
		await then.getByRole('link', { name: 'Retrofit', exact: true }).waitFor();
		expect(await then.innerText()).toMatch(/since the one of .* thin freehub grease/s);
		expect(await desk.accessibility()).toEqual([]);
		await page.locator('details', { hasText: 'The same as a table' }).locator('summary').first().click();
		await page
			.getByRole('row', { name: /Prototype 1 fitted/ })
			.getByRole('link', { name: 'look there' })
			.click();
		await then.getByRole('link', { name: 'Prototype 1', exact: true }).waitFor();
	});

	it('offers the sprocket that the rides of a bike speak for, and takes it over with one click', async () => {
		const { page } = desk;
		await page.goto('/bikes');
		await page.getByRole('link', { name: 'Touring bike 2' }).click();
		await page.getByText('a sprocket of 32 teeth instead of 33').waitFor();
		await page.getByRole('button', { name: 'Take it over' }).click();
		await page.getByText('a sprocket of 32 teeth instead of 33').waitFor({ state: 'detached' });
		expect(await page.getByText(/The stated gears explain 100/).count()).toBe(1);
	});

	for (const [name, screen, expectSound] of EVERY_SCREEN) {
		it(
			`keeps every page sound on ${name}`,
			async () => {
				const visit = await workshop.open(screen);
				await visit.context.addCookies(await desk.context.cookies());
				const event = await firstEvent(desk, ridePath);
				await expectSound(visit, everyPath(ridePath, event));
				await visit.context.close();
			},
			EVERY_PAGE_WITHIN_MS
		);
	}

	it(
		'is walked through by Tab on pages that are full: every control in order, in sight, with its focus shown',
		async () => {
			const event = await firstEvent(desk, ridePath);
			await expectFullPagesByTab(desk, ridePath, event);
		},
		EVERY_PAGE_WITHIN_MS
	);

	it('leads a newcomer through the example, step by step', () => expectGuidedStartLeads(desk));

	it('explains a word where it stands, by keyboard and by mouse', () =>
		expectWordsAreExplained(desk, '/', 'Observed'));

	it('asks for at most 90 KB of script a page, the ride with an event open among them', async () =>
		expectPagesAreLight(desk, workshop.origin, [
			'/',
			'/rides',
			ridePath,
			`${ridePath}?event=${await firstEvent(desk, ridePath)}`,
			'/wheels/1',
			'/builds/1',
			'/compare'
		]));

	it('reviews events by keys, without telling whose they are', () => expectReviewByKeys(desk));

	it('answers a page that does not exist with a way back', async () => {
		const visit = await workshop.open(PHONE);
		await visit.context.addCookies(await desk.context.cookies());
		await visit.page.goto('/rides/999999');
		expect(await visit.page.getByRole('link', { name: 'To the programme' }).count()).toBe(1);
		expect(await visit.accessibility()).toEqual([]);
		await visit.context.close();
	});

	it('removes the example as a whole', async () => {
		const { page } = desk;
		await page.goto('/settings');
		await page.getByRole('button', { name: 'Remove the example' }).click();
		await page.getByRole('button', { name: 'Set up the example' }).waitFor();
		await page.goto('/rides');
		expect(await page.getByText('No rides yet').count()).toBe(1);
		await page.goto('/wheels');
		expect(await page.getByText('No wheel yet').count()).toBe(1);
	});
});
