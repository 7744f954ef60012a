import { createHash } from 'node:crypto';
import { fileURLToPath } from 'node:url';
import { chromium, type Browser, type BrowserContext, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { findChromium } from './findChromium.mjs';
import { expectPhotoOfFelt, expectPhotoSeen } from './feltPhoto';
import { comeIn } from './firstSteps';
import { expectNotCopied } from './linkNotCopied';
import { openGuarded, OWNER, type GuardedServer } from './guardedServer';
import { watch, type Visit } from './workshop';

const RIDE = fileURLToPath(new URL('../../sample-rides/2026-04-22-w1-r1.fit', import.meta.url));
const SECOND = fileURLToPath(new URL('../../sample-rides/2026-05-02-w1-r1.fit', import.meta.url));
const NAME = 'ledger.test';

describe("a rider's phone and the owner's desk", () => {
	let server: GuardedServer;
	let browser: Browser;
	let desk: Visit;
	let phone: Visit;
	let link = '';

	beforeAll(async () => {
		server = await openGuarded(['--address', `http://${NAME}:PORT`]);
		browser = await chromium.launch({
			executablePath: findChromium() ?? undefined,
			args: ['--no-sandbox', '--disable-gpu', '--disable-quic', `--host-resolver-rules=MAP ${NAME} 127.0.0.1`]
		});
		desk = await visit({ viewport: { width: 1440, height: 1000 } });
		phone = await visit({
			viewport: { width: 390, height: 844 },
			hasTouch: true,
			isMobile: true,
			userAgent: 'A test (Mobile)'
		});
	});
	afterAll(async () => {
		await browser?.close();
		await server?.stop();
	});

	async function visit(options: object): Promise<Visit> {
		const context: BrowserContext = await browser.newContext({
			baseURL: server.origin,
			locale: 'en-GB',
			timezoneId: 'Europe/Berlin',
			reducedMotion: 'reduce',
			...options
		});
		return watch(await context.newPage(), context, server.origin);
	}

	/** everything that a finger has to hit is at least 44 px high */
	const tooSmall = (page: Page) =>
		page.evaluate(() =>
			[...document.querySelectorAll<HTMLElement>('main :is(a, button, input, select, summary, label.drop)')]
				.filter(
					(one) =>
						!one.closest('p:not(:has(> :only-child)), .caution, .hint') || one.matches('.target, .button')
				)
				.map((one) => ({ what: one.outerHTML.slice(0, 80), box: one.getBoundingClientRect() }))
				.filter(({ box }) => box.width > 1 && box.height > 1 && box.height < 44)
				.map(({ what, box }) => `${what} ${Math.round(box.height)} px`)
		);

	it('lets the owner in by password and make a link with a square for the camera', async () => {
		const { page } = desk;
		await comeIn(page, OWNER, '/people');
		await page.getByRole('heading', { name: 'People' }).waitFor();
		const form = page.locator('form', { hasText: 'New person' });
		await form.getByLabel('Name').fill('Ro Nowhere');
		await form.getByRole('button', { name: 'Add the person' }).click();
		await page.getByRole('rowheader', { name: /Ro Nowhere/ }).waitFor();
		await page.goto('/access');
		await page
			.locator('article', { hasText: 'Ro Nowhere' })
			.getByRole('button', { name: 'Link to hand in rides' })
			.click();
		await page.getByRole('img', { name: /square for a phone/ }).waitFor();
		link = await page.locator('code').innerText();
		expect(link).toMatch(new RegExp(`^http://${NAME}:${server.port}/come#[\\w-]{43}$`));
		await expectNotCopied(desk, link);
		expect(await desk.accessibility()).toEqual([]);
		await page.reload();
		expect(await page.locator('code').count()).toBe(0);
		expect(desk.complaints).toEqual([]);
	});

	it('lets the phone in by the link, to a page that a thumb can use and that says what to do', async () => {
		const { page } = phone;
		await page.goto(link);
		await page.getByRole('heading', { name: 'My rides' }).waitFor();
		expect(page.url()).toBe(`${server.origin}/own`);
		await page.getByText('No ride yet').waitFor();
		expect(await page.getByText('A slip that is felt ends the test').count()).toBe(1);
		expect(await phone.accessibility()).toEqual([]);
		expect([await phone.overhang(), await tooSmall(page)]).toEqual([0, []]);
		const areas = await page.getByRole('navigation', { name: 'Main' }).getByRole('link').allInnerTexts();
		expect(areas).toEqual(['My rides', 'How to record', 'Help']);
	});

	it('says whose page it is where a rider may not go, and leads back to the own rides', async () => {
		const { page } = phone;
		for (const [path, status, sentence, link] of [
			['/rides', 403, /^This page is for the workshop/, 'To the first page'],
			['/settings', 403, /^This page is for the workshop/, 'To the first page'],
			['/own/999', 404, /^There is no such page/, 'To the first page'],
			['/nosuch', 404, /^There is no such page/, 'To my rides']
		] as const) {
			expect((await page.goto(path))?.status(), path).toBe(status);
			expect(await page.getByRole('heading').first().innerText(), path).toMatch(sentence);
			expect(await phone.accessibility(), path).toEqual([]);
			expect(await phone.overhang(), path).toBe(0);
			expect(await tooSmall(page), path).toEqual([]);
			expect(await page.getByRole('link', { name: /programme|the rides/ }).count(), path).toBe(0);
			await page.getByRole('link', { name: link }).click();
			await page.getByRole('heading', { name: 'My rides' }).waitFor();
		}
		// the browser reports each of those answers as a failed request; nothing else may be there
		const other = phone.complaints.filter((complaint) => !/status of 40[34]/.test(complaint));
		expect(other).toEqual([]);
		phone.complaints.length = 0;
	});

	it('goes on with an upload when the line comes back, without sending again what arrived', async () => {
		const { page, context } = phone;
		let pieces = 0;
		await context.route('**/uploads/*', (route) =>
			route.request().method() === 'PATCH' ? route.abort('internetdisconnected') : route.continue()
		);
		await page.locator('input[type=file]').first().setInputFiles(RIDE);
		await page.getByText('it goes on when the line is back').waitFor({ timeout: 60_000 });
		await context.unroute('**/uploads/*');
		page.on('request', (request) => {
			if (request.method() === 'PATCH') pieces++;
		});
		await page.evaluate(() => dispatchEvent(new Event('online')));
		await page.getByRole('heading', { name: '1 ride handed in' }).waitFor({ timeout: 60_000 });
		expect(pieces).toBe(1);
		const uploads = server.ledger().database.prepare('SELECT count(*) AS n FROM import').get();
		expect(uploads).toEqual({ n: 1 });
		phone.complaints.length = 0;
	});

	it('says of the ride what it could have shown, never that there were no slips', async () => {
		const { page } = phone;
		await page.goto('/own');
		const card = page.getByRole('article').first();
		await card.waitFor();
		expect(await card.innerText()).toMatch(/of this ride that could have shown one/);
		expect(await page.locator('main').innerText()).not.toMatch(/no slips/i);
		expect([await phone.overhang(), await tooSmall(page)]).toEqual([0, []]);
	});

	it('takes down what was felt, shows the caution, and lets it be taken back', async () => {
		const { page } = phone;
		await page.goto('/own');
		await page.getByRole('link', { name: 'I felt a slip on this ride' }).click();
		await page.getByRole('heading', { name: 'What you felt' }).waitFor();
		const middle = await page.evaluate(() => document.querySelector('main .soft')?.textContent ?? '');
		expect(middle).toMatch(/until/);
		const ride = server
			.ledger()
			.database.prepare<[], { startMs: number; offsetS: number }>(
				'SELECT started_ms AS startMs, local_offset_s AS offsetS FROM ride'
			)
			.get()!;
		const clock = (afterMin: number) =>
			new Date(ride.startMs + (ride.offsetS + 60 * afterMin) * 1000).toISOString().slice(11, 16);
		await page.getByLabel(/I felt a slip/).fill(clock(20));
		await page.getByLabel(/What it was like/).fill('seated, crank went through');
		await page.getByRole('button', { name: 'Write it down' }).click();
		await page.getByText('It is written down').waitFor();
		expect(await page.getByText('A slip that is felt ends the test').count()).toBe(1);
		expect(await page.getByRole('listitem').filter({ hasText: 'crank went through' }).innerText()).toContain(
			clock(20)
		);
		expect(await phone.accessibility()).toEqual([]);
		expect(await phone.overhang()).toBe(0);
		expect(await tooSmall(page)).toEqual([]);
		await page.getByLabel(/I felt a slip/).fill(clock(-90));
		await page.getByRole('button', { name: 'Write it down' }).click();
		await page.getByText('was not under way at that time').waitFor();
		phone.complaints.length = 0;
	});

	it('sends a photo of what slipped, without the place where it was taken, and refuses what is none', async () => {
		await expectPhotoOfFelt(phone);
		expect(await phone.accessibility()).toEqual([]);
		expect([await phone.overhang(), await tooSmall(phone.page)]).toEqual([0, []]);
	});

	it('shows the workshop what was felt beside what was found', async () => {
		const { page } = desk;
		await page.goto('/rides');
		await page.getByRole('link', { name: 'The rider felt a slip.' }).click();
		await page.getByRole('heading', { name: 'Felt, about when' }).waitFor();
		const felt = page.locator('#felt');
		expect(await felt.innerText()).toMatch(/A slip about .*20:00 into the ride|A slip about .*\(\d+:\d\d/s);
		await expectPhotoSeen(desk);
		expect(await felt.innerText()).toMatch(/near it event|nothing was found within three minutes/);
		expect(await desk.accessibility()).toEqual([]);
		expect(await desk.overhang()).toBe(0);
	});

	it('goes on over a slow line with a file that broke off, also after the page was closed', async () => {
		const { page, context } = phone;
		await page.goto('/own');
		// 4 minutes at 200 Hz, about 1.3 MB
		const rows = Array.from(
			{ length: 48_000 },
			(_, i) => `${(i / 200).toFixed(3)},${80 + (i % 3)},240.0,${20 + (i % 9)}`
		);
		const buffer = Buffer.from(`time_s,crank_rpm,wheel_rpm,crank_torque_nm\n${rows.join('\n')}\n`);
		const choose = () =>
			page
				.locator('input[type=file]')
				.first()
				.setInputFiles({ name: 'rig.csv', mimeType: 'text/csv', buffer });
		const slow = await context.newCDPSession(page);
		await slow.send('Network.enable');
		const line = { offline: false, latency: 50, downloadThroughput: 1e6, uploadThroughput: 400_000 };
		await slow.send('Network.emulateNetworkConditions', line);
		const sent: number[] = [];
		let cutAfter = 2;
		await context.route('**/uploads/*', (route) => {
			if (route.request().method() !== 'PATCH') return route.continue();
			if (sent.length >= cutAfter) return route.abort('internetdisconnected');
			sent.push(route.request().postDataBuffer()?.length ?? 0);
			return route.continue();
		});
		const held = () =>
			server
				.ledger()
				.database.prepare<[], { id: string; touchedMs: number }>(
					'SELECT id, touched_ms AS touchedMs FROM upload WHERE finished = 0'
				)
				.get();
		await choose();
		await expect.poll(() => sent.length, { timeout: 60_000 }).toBe(2);
		// nothing comes any more: for the server it has broken off
		await expect
			.poll(() => Date.now() - (held()?.touchedMs ?? Date.now()), { timeout: 60_000 })
			.toBeGreaterThan(3500);
		const before = held()!.id;
		cutAfter = Infinity;
		// on such a line a file can be chosen before the page's script has come
		await context.route('**/entry/**', (route) => setTimeout(() => route.continue(), 1500));
		await page.goto('/own', { waitUntil: 'commit' });
		await choose();
		await page.locator('[data-bulk="idle"]').waitFor({ timeout: 90_000 });
		expect(await page.locator('[data-bulk]').innerText()).toMatch(/1 file: 1 arrived/);
		// what had come in whole pieces was not sent again, and it is the same upload
		expect(sent[0]).toBe(2 ** 18);
		expect(sent.reduce((sum, bytes) => sum + bytes, 0)).toBeLessThan(buffer.length + 2 ** 18);
		const { sha256 } = server
			.ledger()
			.database.prepare<[string], { sha256: string }>('SELECT sha256 FROM upload WHERE id = ?')
			.get(before)!;
		expect(sha256).toBe(createHash('sha256').update(buffer).digest('hex'));
		expect(await phone.overhang()).toBe(0);
		expect(await tooSmall(page)).toEqual([]);
		const quick = { ...line, downloadThroughput: -1, uploadThroughput: -1 };
		await slow.send('Network.emulateNetworkConditions', quick);
		await context.unrouteAll();
		phone.complaints.length = 0;
	});

	it('hands in a second ride, and is shut out with its link', async () => {
		const { page } = phone;
		await page.goto('/own');
		await page.locator('input[type=file]').first().setInputFiles(SECOND);
		await page.getByRole('heading', { name: '3 rides handed in' }).waitFor({ timeout: 60_000 });
		expect((await page.goto('/rides'))?.status()).toBe(403);
		await desk.page.goto('/access');
		const article = desk.page.locator('article', { hasText: 'Ro Nowhere' });
		expect(await article.innerText()).toMatch(/In on a phone by the link/);
		await article.getByRole('button', { name: 'Withdraw the link' }).click();
		await desk.page.getByText('No link yet').waitFor();
		await page.goto('/own');
		expect(page.url()).toContain('/sign-in');
		await page.goto(link);
		await page.getByText('does not stand any more').waitFor();
		// a link put into the address line of the page that is open already is asked as well
		await page.goto('/come');
		await page.evaluate((word) => (location.hash = word), link.split('#')[1]);
		await page.getByText('does not stand any more').waitFor();
		expect(desk.complaints).toEqual([]);
	});

	it('keeps links, passwords and names out of the log', () => {
		const said = server.said();
		expect(said).toContain('"event":"file done"');
		for (const secret of [link.split('#')[1], OWNER.password, 'Ro Nowhere', '2026-04-22'])
			expect(said.includes(secret)).toBe(false);
	});
});
