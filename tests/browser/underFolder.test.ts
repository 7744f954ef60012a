import { request as httpsRequest } from 'node:https';
import { fileURLToPath } from 'node:url';
import { chromium, type Browser, type BrowserContext } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { everyPath, firstEvent } from './exampleWords';
import { findChromium } from './findChromium.mjs';
import { comeIn } from './firstSteps';
import { openGuarded, OWNER, send, type GuardedServer } from './guardedServer';
import { steadyRide } from './steadyRide';
import { openTlsProxy, type TlsProxy } from './tlsProxy';
import { addressesOf, builtForPrefix } from './underFolder';
import { watch, type Visit } from './workshop';

const RIDE = fileURLToPath(new URL('../../sample-rides/2026-04-22-w1-r1.fit', import.meta.url));
const NAME = 'ledger.test';
const PREFIX = '/slips';
const PROXY = '127.0.0.2';
const BUILT_WITHIN_MS = 600_000;
const READ_WITHIN_MS = 400_000;
/** of pages that differ in their numbers alone so many are asked for */
const OF_A_KIND = 3;

interface Answer {
	readonly status: number;
	readonly headers: Readonly<Record<string, string | string[] | undefined>>;
	readonly body: string;
}

describe('under a folder of a site, behind a proxy with a certificate', () => {
	let proxy: TlsProxy;
	let server: GuardedServer;
	let browser: Browser;
	let desk: Visit;
	let address = '';
	let cookie = '';
	let paths: readonly string[] = [];

	beforeAll(async () => {
		process.env.SLIP_LEDGER_PREFIX = PREFIX;
		await builtForPrefix();
		proxy = await openTlsProxy(PROXY);
		address = `https://${NAME}:${proxy.port}`;
		server = await openGuarded(['--address', `${address}${PREFIX}/`, '--proxy', PROXY]);
		proxy.passTo(server.port);
		browser = await chromium.launch({
			executablePath: findChromium() ?? undefined,
			args: ['--no-sandbox', '--disable-gpu', '--disable-quic', `--host-resolver-rules=MAP ${NAME} 127.0.0.1`]
		});
		desk = await visit({ viewport: { width: 1440, height: 1000 } });
	}, BUILT_WITHIN_MS);
	afterAll(async () => {
		delete process.env.SLIP_LEDGER_PREFIX;
		await browser?.close();
		proxy?.close();
		await server?.stop();
	});

	async function visit(options: object): Promise<Visit> {
		const context: BrowserContext = await browser.newContext({
			// paths of these tests are given without their slash, so that they lie within
			baseURL: `${address}${PREFIX}/`,
			ignoreHTTPSErrors: true,
			locale: 'en-GB',
			timezoneId: 'Europe/Berlin',
			reducedMotion: 'reduce',
			...options
		});
		return watch(await context.newPage(), context, `${address}${PREFIX}`);
	}

	const ask = (path: string, headers: Record<string, string> = {}) =>
		new Promise<Answer>((done, fail) => {
			const sent = httpsRequest(
				{
					host: '127.0.0.1',
					port: proxy.port,
					servername: NAME,
					ca: proxy.certificate,
					agent: false,
					path,
					headers: { host: `${NAME}:${proxy.port}`, accept: 'text/html', cookie, ...headers }
				},
				(answer) => {
					const pieces: Buffer[] = [];
					answer.on('data', (piece: Buffer) => pieces.push(piece));
					answer.on('end', () =>
						done({
							status: answer.statusCode ?? 0,
							headers: answer.headers,
							body: Buffer.concat(pieces).toString('utf8')
						})
					);
				}
			);
			sent.on('error', fail);
			sent.end();
		});

	it('answers nothing outside the folder, and says at which address its health is asked', async () => {
		expect(server.origin).toBe(`${address}${PREFIX}`);
		for (const path of ['/', '/sign-in', '/health.json', '/slipstream', '/Slips/sign-in', '/favicon.svg']) {
			const answer = await ask(path);
			expect(answer.status, path).toBe(404);
			expect(answer.body, path).toContain('is served under /slips/ and nowhere else');
		}
		expect((await ask(PREFIX)).headers.location).toMatch(/^\/slips\//);
		const watcher = (path: string) =>
			send(server, path, { headers: { host: `127.0.0.1:${server.port}` } }).then(({ status }) => status);
		expect(await watcher('/health.json')).toBe(404);
		expect(await watcher('/slips/health.json')).toBe(200);
		expect(await watcher('/slips/ready.json')).toBe(200);
		const clear = await send(server, '/slips/rides', { headers: { host: `${NAME}:${proxy.port}` } });
		expect([clear.status, clear.headers.location]).toEqual([308, `${address}/slips/rides`]);
	});

	it('signs in on the way to a page, by a cookie of the folder alone', async () => {
		const sentOn = await ask('/slips/people');
		expect([sentOn.status, sentOn.headers.location]).toEqual([303, '/slips/sign-in?to=%2Fpeople']);
		const { page, context } = desk;
		await comeIn(page, OWNER, 'people');
		await page.getByRole('heading', { name: 'People' }).waitFor();
		expect(page.url()).toBe(`${address}/slips/people`);
		const kept = await context.cookies(`${address}/slips/`);
		expect(await context.cookies(address)).toEqual([]);
		expect(kept).toEqual([
			expect.objectContaining({
				name: '__Secure-session',
				domain: NAME,
				path: PREFIX,
				secure: true,
				httpOnly: true,
				sameSite: 'Lax'
			})
		]);
		cookie = `${kept[0].name}=${kept[0].value}`;
	});

	it('posts forms, and puts the folder into the link for a rider, by whose phone a ride is handed in', async () => {
		const { page } = desk;
		const form = page.locator('form', { hasText: 'New person' });
		await form.getByLabel('Name').fill('Ro Nowhere');
		await form.getByRole('button', { name: 'Add the person' }).click();
		await page.getByRole('rowheader', { name: /Ro Nowhere/ }).waitFor();
		await page.goto('access');
		await page
			.locator('article', { hasText: 'Ro Nowhere' })
			.getByRole('button', { name: 'Link to hand in rides' })
			.click();
		await page.getByRole('img', { name: /square for a phone/ }).waitFor();
		const link = await page.locator('code').innerText();
		expect(link).toMatch(new RegExp(`^${address}/slips/come#[\\w-]{43}$`));

		const phone = await visit({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
		await phone.page.goto(link);
		await phone.page.waitForURL(`${address}/slips/own`);
		await phone.page.locator('input[type=file][accept]').setInputFiles({
			name: 'steady.tcx',
			mimeType: 'application/xml',
			buffer: steadyRide(Date.UTC(2026, 3, 1, 8))
		});
		await phone.page.locator('a[href^="/slips/own/"]').first().waitFor({ timeout: 90_000 });
		expect(phone.complaints).toEqual([]);
		// what is refused before any page leads back into the folder as well
		const refused = await phone.page.goto('rides');
		expect(refused?.status()).toBe(403);
		const ways = await phone.page.evaluate(() =>
			[...document.querySelectorAll<HTMLAnchorElement | HTMLLinkElement>('[href]')].map(({ href }) => href)
		);
		expect(ways).toEqual(ways.map(() => expect.stringContaining(`${address}/slips/`)));
		expect((await ask('/slips/error.css')).status).toBe(200);
		await phone.page.getByRole('link', { name: 'To the first page' }).click();
		await phone.page.waitForURL(`${address}/slips/own`);
		await phone.context.close();
	});

	it(
		'sets up the example, and leads through its pages without loading them anew',
		async () => {
			const { page } = desk;
			await page.goto('settings');
			await page.getByRole('button', { name: 'Set up the example' }).click();
			const reading = page.getByText('The example workshop is being read');
			await page.getByText('It is in the ledger:').waitFor();
			await page.goto('');
			// on a busy machine all may have been read before this page is there
			await reading.waitFor({ state: 'hidden', timeout: READ_WITHIN_MS });
			expect(await page.getByText('invented example').count()).toBeGreaterThan(2);
			await page.evaluate(() => ((window as unknown as { kept: boolean }).kept = true));
			const nav = page.getByRole('navigation', { name: 'Main' });
			for (const [name, path] of [
				['Rides', 'rides'],
				['Builds', 'builds'],
				['Programme', '']
			]) {
				await nav.getByRole('link', { name, exact: true }).click();
				await page.waitForURL(`${address}/slips/${path}`);
				expect(await nav.locator('[aria-current=page]').innerText()).toBe(name);
			}
			expect(await page.evaluate(() => (window as unknown as { kept?: boolean }).kept)).toBe(true);
			expect(desk.complaints).toEqual([]);
		},
		READ_WITHIN_MS + 60_000
	);

	it(
		'leads from no page out of the folder, and every link answers',
		async () => {
			const { page } = desk;
			await page.goto('builds/1');
			const ride = await page.locator('#unreviewed tbody a').first().getAttribute('href');
			expect(ride).toMatch(/^\/slips\/rides\/\d+$/);
			paths = everyPath(ride!.slice(PREFIX.length), await firstEvent(desk, ride!));
			const waiting = paths.map((path) => PREFIX + path);
			const seen = new Set<string>();
			const kinds = new Map<string, number>();
			const wrong: string[] = [];
			while (waiting.length > 0) {
				const path = waiting.shift()!.split('#')[0];
				if (seen.has(path)) continue;
				seen.add(path);
				const answer = await ask(path);
				const to = answer.headers.location;
				if (answer.status === 303 && String(to).startsWith(`${PREFIX}/`)) waiting.push(String(to));
				else if (answer.status !== 200) wrong.push(`${path} answers ${answer.status} ${to ?? ''}`);
				if (!String(answer.headers['content-type']).startsWith('text/html')) continue;
				for (const one of addressesOf(answer.body)) {
					if (/^(#|\?|data:)/.test(one)) continue;
					if (!one.startsWith(`${PREFIX}/`)) {
						wrong.push(`${path} leads to ${one}`);
						continue;
					}
					// answers a form alone
					if (one === `${PREFIX}/sign-out` || /\.zip$/.test(one)) continue;
					const kind = one.replace(/\d+/g, '0');
					kinds.set(kind, (kinds.get(kind) ?? 0) + 1);
					if (kinds.get(kind)! <= OF_A_KIND) waiting.push(one);
				}
			}
			expect(wrong).toEqual([]);
			expect(seen.size).toBeGreaterThan(100);
		},
		READ_WITHIN_MS
	);

	it('gives tables and drawings to take away, and a ride handed in at the desk', async () => {
		const { page } = desk;
		for (const [file, type, holds] of [
			['rates.csv', 'text/csv', 'Retrofit'],
			['rates.svg', 'image/svg+xml', '<svg']
		]) {
			const answer = await ask(`/slips/report/charts/${file}?before=1&after=3`);
			expect([answer.status, answer.headers['content-type']], file).toEqual([
				200,
				expect.stringContaining(type)
			]);
			expect(answer.body, file).toContain(holds);
		}
		await page.goto('report?before=1&after=3');
		const coming = page.waitForEvent('download');
		await page.getByRole('link', { name: 'rates.csv' }).click();
		expect((await coming).url()).toContain(`${address}/slips/report/charts/rates.csv?`);
		await page.goto('rides');
		await page.locator('input[type=file][accept]').setInputFiles(RIDE);
		await page
			.getByText(/already in the ledger/)
			.first()
			.waitFor({ timeout: 90_000 });
		expect(desk.complaints).toEqual([]);
	});

	it(
		'draws and works on every page without a complaint of the browser',
		async () => {
			const { page } = desk;
			expect(paths.length).toBeGreaterThan(40);
			for (const path of paths) {
				await page.goto(path.slice(1), { waitUntil: 'networkidle' });
				expect(page.url(), path).toContain(`${address}/slips`);
			}
			expect(desk.complaints).toEqual([]);
		},
		READ_WITHIN_MS
	);

	it('forgets the browser when somebody leaves, and leads to the sign-in of the folder', async () => {
		const { page, context } = desk;
		await page.goto('password');
		await page.getByRole('button', { name: 'Leave on this browser' }).click();
		await page.waitForURL(`${address}/slips/sign-in`);
		expect(await context.cookies(`${address}/slips/`)).toEqual([]);
		expect((await ask('/slips/people')).status).toBe(303);
	});
});
