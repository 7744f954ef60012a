import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { Agent, request, type IncomingMessage } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { builtProgram, freePort, smallRides, start, until, type Running } from './program';

let server: Running;
let folder: string;
let port: number;
let cookie = '';

beforeAll(async () => {
	const build = await builtProgram();
	folder = mkdtempSync(join(tmpdir(), 'slip-ledger-guards-'));
	port = await freePort();
	server = start(build, 'serve', ['--port', String(port), '--data', folder]);
	await until('the server', () => server.output().includes('is open at'));
	const named = await ask('POST', '/welcome?/name', {
		headers: { 'content-type': 'application/x-www-form-urlencoded' },
		body: 'name=Tester'
	});
	cookie = String(named.headers['set-cookie']?.[0]).split(';')[0];
});
afterAll(async () => {
	server.child.kill('SIGTERM');
	await server.ended;
	rmSync(folder, { recursive: true, force: true });
});

interface Answer {
	status: number;
	headers: IncomingMessage['headers'];
	body: Buffer;
}

/** Over node:http, because fetch does not let a test set the Host header. */
function ask(
	method: string,
	path: string,
	options: {
		headers?: Record<string, string>;
		body?: string | Buffer;
		anonymous?: boolean;
		agent?: Agent;
	} = {}
): Promise<Answer> {
	const origin = `http://127.0.0.1:${port}`;
	const headers = { origin, ...(options.anonymous ? {} : { cookie }), ...options.headers };
	return new Promise((resolve, reject) => {
		const asked = request(
			{ host: '127.0.0.1', port, method, path, headers, agent: options.agent ?? false },
			(response) => {
				const pieces: Buffer[] = [];
				response.on('data', (piece: Buffer) => pieces.push(piece));
				response.on('end', () =>
					resolve({
						status: response.statusCode ?? 0,
						headers: response.headers,
						body: Buffer.concat(pieces)
					})
				);
			}
		);
		asked.on('error', reject);
		asked.end(options.body);
	});
}

async function announce(size: number): Promise<string> {
	const answer = await ask('POST', '/uploads', {
		headers: { 'content-type': 'application/json' },
		body: JSON.stringify({ name: 'a.fit', size })
	});
	return (JSON.parse(String(answer.body)) as { id: string }).id;
}

describe('the server', () => {
	it('answers only to its own names, and leads other names of this machine to its address', async () => {
		expect((await ask('GET', '/', { headers: { host: `evil.example:${port}` } })).status).toBe(421);
		expect((await ask('GET', '/', { headers: { host: '127.0.0.1:1' } })).status).toBe(421);
		const other = await ask('GET', '/rides?page=2', { headers: { host: `localhost:${port}` } });
		expect(other.status).toBe(307);
		expect(other.headers.location).toBe(`http://127.0.0.1:${port}/rides?page=2`);
	});

	it('takes no write from a page of another origin, not even of this machine', async () => {
		for (const origin of ['http://127.0.0.1:1', 'https://evil.example', 'null'])
			expect((await ask('POST', '/uploads', { headers: { origin } })).status).toBe(403);
	});

	it('asks who is there: pages lead to the welcome, endpoints answer 401', async () => {
		const page = await ask('GET', '/rides', { anonymous: true, headers: { accept: 'text/html' } });
		expect([page.status, page.headers.location]).toEqual([303, '/welcome']);
		expect((await ask('GET', '/imports.json', { anonymous: true })).status).toBe(401);
		expect((await ask('POST', '/uploads', { anonymous: true })).status).toBe(401);
		expect(
			(await ask('GET', '/imports.json', { headers: { cookie: 'person=1' }, anonymous: true })).status
		).toBe(401);
	});

	it('keeps the name in a cookie that scripts and other sites do not get', async () => {
		const named = await ask('POST', '/welcome?/name', {
			anonymous: true,
			headers: { 'content-type': 'application/x-www-form-urlencoded' },
			body: 'name=Tester'
		});
		const set = String(named.headers['set-cookie']?.[0]).toLowerCase();
		expect(set).toContain('httponly');
		expect(set).toContain('samesite=strict');
	});

	it('sends a strict content policy and nosniff with its pages', async () => {
		const { headers, status } = await ask('GET', '/rides', { headers: { accept: 'text/html' } });
		expect(status).toBe(200);
		expect(headers['content-security-policy']).toContain("default-src 'none'");
		expect(headers['content-security-policy']).not.toMatch(/script-src[^;]*unsafe/);
		expect(headers['x-content-type-options']).toBe('nosniff');
		expect(headers['referrer-policy']).toBe('same-origin');
	});

	it('gives each page whole, with its length and a nonce of its own, and asks no browser to know it again', async () => {
		const [once, twice] = [await ask('GET', '/rides'), await ask('GET', '/rides')];
		for (const { status, headers, body } of [once, twice, await ask('GET', '/nothing')]) {
			expect(String(body).trimEnd().endsWith('</html>'), String(status)).toBe(true);
			expect(headers['content-length']).toBe(String(body.length));
			expect(headers.etag).toBeUndefined();
		}
		const nonce = ({ body }: Answer) => String(body).match(/nonce="([^"]+)"/)![1];
		expect(nonce(once)).not.toBe(nonce(twice));
		const head = await ask('HEAD', '/rides');
		expect([head.status, head.body.length]).toEqual([200, 0]);
	});

	it('shows no inner workings when something is not there or not understood', async () => {
		const answers = [
			await ask('GET', '/nothing'),
			await ask('GET', '/rides/999999999999999999'),
			await ask('GET', '/rides/1/channels'),
			await ask('GET', '/rides/x/events.csv'),
			await ask('GET', '/uploads/%2e%2e%2fledger.sqlite'),
			await ask('POST', '/uploads', { headers: { 'content-type': 'application/json' }, body: '{' }),
			await ask('PATCH', '/uploads/0123', { headers: { 'content-type': 'application/octet-stream' } })
		];
		for (const { status, body } of answers) {
			expect(status).toBeGreaterThanOrEqual(400);
			expect(status).toBeLessThan(500);
			expect(String(body)).not.toMatch(/node_modules|\.ts:|\.js:|SQLITE|at Object/);
		}
	});

	it('takes no piece larger than its route allows, and keeps none of it twice', async () => {
		const id = await announce(12 * 2 ** 20);
		const answer = await ask('PATCH', `/uploads/${id}`, {
			headers: { 'upload-offset': '0', 'content-type': 'application/octet-stream' },
			body: Buffer.alloc(12 * 2 ** 20)
		});
		expect(answer.status).toBe(413);
		const { offset } = JSON.parse(String((await ask('GET', `/uploads/${id}`)).body)) as { offset: number };
		expect(offset).toBeLessThanOrEqual(8 * 2 ** 20);
		const wrong = await ask('PATCH', `/uploads/${id}`, {
			headers: { 'upload-offset': String(offset + 1), 'content-type': 'application/octet-stream' },
			body: Buffer.alloc(1)
		});
		expect(wrong.status).toBe(409);
	});

	it('reads a piece that is too large to its end, so that its sender hears why and can ask again', async () => {
		const agent = new Agent({ keepAlive: true, maxSockets: 1 });
		try {
			for (let time = 0; time < 5; time++) {
				const id = await announce(15 * 2 ** 20);
				const answer = await ask('PATCH', `/uploads/${id}`, {
					headers: { 'upload-offset': '0', 'content-type': 'application/octet-stream' },
					body: Buffer.alloc(15 * 2 ** 20),
					agent
				});
				expect(answer.status).toBe(413);
				// over the same connection, which a body left unread would have closed or held up
				const { offset } = JSON.parse(String((await ask('GET', `/uploads/${id}`, { agent })).body)) as {
					offset: number;
				};
				expect(offset).toBeLessThanOrEqual(8 * 2 ** 20);
				const wrong = await ask('PATCH', `/uploads/${id}`, {
					headers: { 'upload-offset': String(offset + 1), 'content-type': 'application/octet-stream' },
					body: Buffer.alloc(8 * 2 ** 20),
					agent
				});
				expect(wrong.status).toBe(409);
				expect((await ask('GET', `/uploads/${id}`, { agent })).status).toBe(200);
			}
		} finally {
			agent.destroy();
		}
	});

	it('gives the lines of a ride as floats and its events as a table', async () => {
		const bytes = readFileSync(smallRides(1)[0]);
		const id = await announce(bytes.length);
		await ask('PATCH', `/uploads/${id}`, {
			headers: { 'upload-offset': '0', 'content-type': 'application/octet-stream' },
			body: bytes
		});
		await ask('POST', `/uploads/${id}/finish`);
		const lines = await until('the ride', async () => {
			const answer = await ask('GET', '/rides/1/channels');
			return answer.status === 200 ? answer : null;
		});
		const headerBytes = lines.body.readUInt32LE(0);
		const header = JSON.parse(lines.body.toString('utf8', 4, 4 + headerBytes)) as {
			length: number;
			names: string[];
		};
		expect(header.names).toEqual(
			expect.arrayContaining([
				'cadenceRpm',
				'engagedCadenceRpm',
				'gainedHubDeg',
				'hubTorqueNm',
				'speedMps',
				'state'
			])
		);
		expect(lines.body.length).toBe(4 + headerBytes + 4 * header.length * header.names.length);
		const table = await ask('GET', '/rides/1/events.csv');
		expect(table.headers['content-type']).toContain('text/csv');
		expect(String(table.body).split('\r\n')[0]).toContain('overrun_crank_deg');
	});

	it('says how it is to a watcher, without naming anybody', async () => {
		const { status, body } = await ask('GET', '/health.json', { anonymous: true });
		expect(status).toBe(200);
		expect(JSON.parse(String(body))).toMatchObject({ state: 'open', runner: true });
		expect(String(body)).not.toContain('Tester');
	});
});
