import { request as httpsRequest } from 'node:https';
import { fileURLToPath } from 'node:url';
import { chromium, type Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { findChromium } from './findChromium.mjs';
import { comeIn } from './firstSteps';
import { openGuarded, OWNER, send, type GuardedServer } from './guardedServer';
import { openTlsProxy, type TlsProxy } from './tlsProxy';
import { watch, type Visit } from './workshop';

const RIDE = fileURLToPath(new URL('../../sample-rides/2026-04-22-w1-r1.fit', import.meta.url));
const NAME = 'ledger.test';
/** where the proxy's requests come from */
const PROXY = '127.0.0.2';

describe('behind a proxy with a certificate', () => {
	let proxy: TlsProxy;
	let server: GuardedServer;
	let browser: Browser;
	let desk: Visit;
	let address = '';

	beforeAll(async () => {
		proxy = await openTlsProxy(PROXY);
		address = `https://${NAME}:${proxy.port}`;
		server = await openGuarded(['--address', address, '--proxy', PROXY]);
		proxy.passTo(server.port);
		browser = await chromium.launch({
			executablePath: findChromium() ?? undefined,
			args: ['--no-sandbox', '--disable-gpu', '--disable-quic', `--host-resolver-rules=MAP ${NAME} 127.0.0.1`]
		});
		const context = await browser.newContext({
			baseURL: address,
			// nobody signed this certificate; that it is the right one is asked below
			ignoreHTTPSErrors: true,
			locale: 'en-GB',
			timezoneId: 'Europe/Berlin',
			reducedMotion: 'reduce',
			viewport: { width: 1440, height: 1000 }
		});
		desk = watch(await context.newPage(), context, address);
	});
	afterAll(async () => {
		await browser?.close();
		proxy?.close();
		await server?.stop();
	});

	/** over the line as it is: TLS that trusts this one certificate alone */
	const overTls = (path: string) =>
		new Promise<{ status: number; headers: Record<string, unknown>; authorized: boolean }>((done, fail) => {
			const sent = httpsRequest(
				{
					host: '127.0.0.1',
					port: proxy.port,
					servername: NAME,
					ca: proxy.certificate,
					agent: false,
					path,
					headers: { host: `${NAME}:${proxy.port}`, accept: 'text/html' }
				},
				(answer) => {
					answer.resume();
					const { authorized } = answer.socket as unknown as { authorized: boolean };
					answer.on('end', () =>
						done({ status: answer.statusCode ?? 0, headers: answer.headers, authorized })
					);
				}
			);
			sent.on('error', fail);
			sent.end();
		});

	it('speaks real TLS to whoever knows the certificate, and sends on within the https address', async () => {
		const answer = await overTls('/people');
		expect(answer.authorized).toBe(true);
		expect([302, 303, 307]).toContain(answer.status);
		const to = new URL(String(answer.headers.location), address);
		expect(`${to.origin}${to.pathname}`).toBe(`${address}/sign-in`);
	});

	it('lets in by a cookie that is bound to this very host and never travels in the clear', async () => {
		const { page, context } = desk;
		await comeIn(page, OWNER, '/people');
		await page.getByRole('heading', { name: 'People' }).waitFor();
		const session = (await context.cookies()).find(({ name }) => name.endsWith('session'))!;
		expect(session).toMatchObject({
			name: '__Host-session',
			domain: NAME,
			path: '/',
			secure: true,
			httpOnly: true,
			sameSite: 'Lax'
		});
	});

	it('writes the https address, with its port, into the link for a rider', async () => {
		const { page } = desk;
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
		expect(await page.locator('code').innerText()).toMatch(new RegExp(`^${address}/come#[\\w-]{43}$`));
		// no link or form of a page leads out of it
		for (const path of ['/', '/rides', '/access', '/help']) {
			await page.goto(path, { waitUntil: 'networkidle' });
			const strange = await page.evaluate(
				(own) =>
					[...document.querySelectorAll<HTMLAnchorElement | HTMLFormElement>('a[href], form')]
						.map((one) => ('href' in one ? one.href : one.action))
						.filter((to) => typeof to === 'string' && !to.startsWith(own)),
				address
			);
			expect(strange, path).toEqual([]);
		}
	});

	it('takes a ride in pieces through it, in a secure context', async () => {
		const { page } = desk;
		await page.goto('/rides');
		expect(await page.evaluate(() => isSecureContext)).toBe(true);
		await page.locator('input[type=file][accept]').setInputFiles(RIDE);
		await page.getByText('In the ledger: 1 ride').waitFor({ timeout: 90_000 });
		expect(desk.complaints).toEqual([]);
	});

	it('is built for a name of its own (underFolder.test.ts: for a folder): a folder before its paths is no page, and the clear leads to https', async () => {
		expect((await overTls('/ledger-of-ours/sign-in')).status).not.toBe(200);
		const clear = await send(server, '/rides', { headers: { host: `${NAME}:${proxy.port}` } });
		expect([clear.status, clear.headers.location]).toEqual([308, `${address}/rides`]);
	});
});
