import { createServer, request as ask, type IncomingHttpHeaders, type RequestListener } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterEach, describe, expect, it } from 'vitest';
import { CLIENT_HEADER, frontDoor } from '$lib/server';
import { askedThrough } from '$lib/server/access/askedThrough';
import { blockListOf } from '$lib/server/access/frontDoor';

const trusted = blockListOf(['127.0.0.1', '10.0.0.0/8']);

describe('askedThrough', () => {
	it('believes nothing that anybody could have written', () => {
		const said = { host: 'a.example', 'x-forwarded-for': '1.1.1.1', 'x-forwarded-proto': 'https' };
		expect(askedThrough('198.51.100.7', said, trusted)).toEqual({
			client: '198.51.100.7',
			host: 'a.example',
			scheme: 'http',
			passedOn: true
		});
	});

	it('takes the word of known proxies, also written as IPv6', () => {
		const said = {
			host: '127.0.0.1:4710',
			'x-forwarded-for': '203.0.113.9',
			'x-forwarded-host': 'ledger.example.org',
			'x-forwarded-proto': 'https'
		};
		expect(askedThrough('::ffff:127.0.0.1', said, trusted)).toEqual({
			client: '203.0.113.9',
			host: 'ledger.example.org',
			scheme: 'https',
			passedOn: true
		});
	});

	it('goes back along the list to the last address that is no proxy of ours', () => {
		const client = (list: string) => askedThrough('127.0.0.1', { 'x-forwarded-for': list }, trusted).client;
		expect(client('1.2.3.4, 203.0.113.9, 10.0.0.4')).toBe('203.0.113.9');
		expect(client('203.0.113.9, rubbish')).toBe('127.0.0.1');
		expect(client('')).toBe('127.0.0.1');
		expect(client('2001:db8::5')).toBe('2001:db8::5');
	});
});

describe('frontDoor', () => {
	const servers: ReturnType<typeof createServer>[] = [];
	afterEach(() => servers.splice(0).forEach((server) => server.close()));

	async function door(origin: string, guarded: boolean, proxies: string[] = []) {
		let seen: IncomingHttpHeaders | null = null;
		const app: RequestListener = (request, response) => {
			seen = request.headers;
			response.end('app');
		};
		const server = createServer(frontDoor({ origin, guarded }, proxies, app));
		servers.push(server);
		await new Promise<void>((open) => server.listen(0, '127.0.0.1', open));
		const { port } = server.address() as AddressInfo;
		return (path: string, headers: Record<string, string> = {}, method = 'GET') =>
			new Promise<{ status: number; location?: string; seen: IncomingHttpHeaders | null }>((done, fail) => {
				seen = null;
				ask({ port, host: '127.0.0.1', path, method, headers }, (response) => {
					response.resume();
					response.on('end', () =>
						done({ status: response.statusCode!, location: response.headers.location, seen })
					);
				})
					.on('error', fail)
					.end();
			});
	}

	it('refuses what a proxy passes on to a server that is open on its machine alone', async () => {
		const get = await door('http://127.0.0.1:4710', false);
		expect((await get('/')).status).toBe(200);
		for (const header of ['forwarded', 'via', 'x-forwarded-for', 'x-real-ip'])
			expect(await get('/', { [header]: 'for=1.2.3.4' })).toMatchObject({ status: 421, seen: null });
	});

	it('writes who asks itself, whatever the request says', async () => {
		const get = await door('http://192.168.1.5:4710', true);
		const { seen } = await get('/', { [CLIENT_HEADER]: '9.9.9.9', 'x-forwarded-for': '8.8.8.8' });
		expect(seen).toMatchObject({ [CLIENT_HEADER]: '127.0.0.1' });
		expect(seen).not.toHaveProperty('x-forwarded-for');
	});

	it('sends readers on to https and acts on nothing that came in the clear', async () => {
		const get = await door('https://ledger.example.org', true, ['127.0.0.1']);
		expect(await get('/rides?page=2')).toEqual({
			status: 308,
			location: 'https://ledger.example.org/rides?page=2',
			seen: null
		});
		expect((await get('//evil.example')).location).toBe('https://ledger.example.org/');
		expect(await get('/uploads', { 'x-forwarded-proto': 'http' }, 'POST')).toMatchObject({
			status: 421,
			seen: null
		});
		const through = {
			'x-forwarded-proto': 'https',
			'x-forwarded-host': 'ledger.example.org',
			'x-forwarded-for': '203.0.113.9'
		};
		expect((await get('/', through)).seen).toMatchObject({
			host: 'ledger.example.org',
			[CLIENT_HEADER]: '203.0.113.9'
		});
	});

	it('answers a watcher on the same machine, and nobody else, in the clear', async () => {
		const get = await door('https://ledger.example.org', true, ['127.0.0.1']);
		expect((await get('/ready.json')).seen).toMatchObject({ host: 'ledger.example.org' });
		expect((await get('/ready.json', { 'x-forwarded-for': '203.0.113.9' })).status).toBe(308);
	});
});
