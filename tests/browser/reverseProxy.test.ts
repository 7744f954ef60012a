import { createServer, request, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { cookieOf, openGuarded, OWNER, send, type GuardedServer } from './guardedServer';

const NAME = 'ledger.example.org';
const ADDRESS = `https://${NAME}`;
/** where the proxy stands; requests from any other address of this machine are strangers */
const PROXY = '127.0.0.2';

/** A small proxy that ends https and passes on what it was asked, as the README asks of one. */
function openProxy(port: number): Promise<Server> {
	const proxy = createServer((asked, answer) => {
		const client = String(asked.headers['x-test-client'] ?? '203.0.113.9');
		const onward = request(
			{
				host: '127.0.0.1',
				port,
				localAddress: PROXY,
				method: asked.method,
				path: asked.url,
				headers: {
					...asked.headers,
					host: `127.0.0.1:${port}`,
					'x-forwarded-host': asked.headers.host,
					'x-forwarded-proto': 'https',
					// what the client wrote itself stands before what the proxy knows
					'x-forwarded-for': [asked.headers['x-forwarded-for'], client].filter(Boolean).join(', ')
				}
			},
			(response) => {
				answer.writeHead(response.statusCode ?? 502, response.headers);
				response.pipe(answer);
			}
		);
		onward.on('error', () => answer.writeHead(502).end());
		asked.pipe(onward);
	});
	return new Promise((open) => proxy.listen(0, '127.0.0.1', () => open(proxy)));
}

describe('behind a proxy that does https', () => {
	let server: GuardedServer;
	let proxy: Server;
	let through: { port: number };

	beforeAll(async () => {
		server = await openGuarded(['--address', ADDRESS, '--proxy', PROXY]);
		proxy = await openProxy(server.port);
		through = { port: (proxy.address() as AddressInfo).port };
	});
	afterAll(async () => {
		proxy?.close();
		await server?.stop();
	});

	const signIn = (password: string, headers: Record<string, string> = {}) =>
		send(through, '/sign-in', {
			method: 'POST',
			headers: {
				host: NAME,
				origin: ADDRESS,
				accept: 'text/html',
				'content-type': 'application/x-www-form-urlencoded',
				...headers
			},
			body: `name=${encodeURIComponent(OWNER.name)}&password=${encodeURIComponent(password)}`
		});

	it('lets in by a cookie that never travels in the clear and belongs to this host', async () => {
		const opened = await signIn(OWNER.password);
		expect(opened.status).toBe(303);
		expect(opened.headers['set-cookie']).toEqual([
			expect.stringMatching(
				/^__Host-session=[\w-]{43}; Max-Age=2592000; Path=\/; HttpOnly; Secure; SameSite=Lax$/
			)
		]);
		const page = await send(through, '/access', { headers: { host: NAME, cookie: cookieOf(opened) } });
		expect(page.status).toBe(200);
		expect(page.body).toContain('Who may come in');
	});

	it('takes writes from its https address alone', async () => {
		expect((await signIn(OWNER.password, { origin: `http://${NAME}` })).status).toBe(403);
		expect((await send(through, '/sign-in', { headers: { host: 'evil.example.org' } })).status).toBe(421);
	});

	it('sends on to https what comes past the proxy, and believes none of its headers', async () => {
		const said = {
			host: NAME,
			'x-forwarded-proto': 'https',
			'x-forwarded-host': NAME,
			'x-forwarded-for': '198.51.100.7'
		};
		const read = await send(server, '/rides?page=2', { headers: said });
		expect([read.status, read.headers.location]).toEqual([308, `${ADDRESS}/rides?page=2`]);
		const written = await send(server, '/sign-in', {
			method: 'POST',
			headers: { ...said, origin: ADDRESS, 'content-type': 'application/x-www-form-urlencoded' },
			body: 'name=a&password=b'
		});
		expect(written.status).toBe(421);
	});

	it('answers a watcher on the machine by any name', async () => {
		expect(
			(await send(server, '/ready.json', { headers: { host: `127.0.0.1:${server.port}` } })).status
		).toBe(200);
		expect(
			(await send(server, '/ready.json', { headers: { host: 'x', 'x-forwarded-for': '1.2.3.4' } })).status
		).toBe(308);
	});

	it('limits attempts by the address that the proxy saw, not by one that the client wrote', async () => {
		const guess = (client: string, forged: string, name = 'Nobody') =>
			send(through, '/sign-in', {
				method: 'POST',
				headers: {
					host: NAME,
					origin: ADDRESS,
					accept: 'text/html',
					'content-type': 'application/x-www-form-urlencoded',
					'x-test-client': client,
					'x-forwarded-for': forged
				},
				body: `name=${name}&password=x`
			});
		server
			.ledger()
			.database.prepare("INSERT INTO setting (name, value) VALUES ('attemptsPerAddress', '3')")
			.run();
		const said: string[] = [];
		for (let i = 0; i < 4; i++) said.push((await guess('198.51.100.20', `10.9.8.${i}`, `N${i}`)).body);
		expect(said.map((body) => body.includes('Too many attempts'))).toEqual([false, false, false, true]);
		expect((await guess('198.51.100.21', '198.51.100.20', 'N9')).body).not.toContain('Too many attempts');
	});
});
