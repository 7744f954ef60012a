import { Agent, createServer, request, type RequestListener, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterEach, describe, expect, it } from 'vitest';
import { throwAwayRest } from '$lib/server/access/throwAwayRest';

/** Reads the beginning of the body and pauses, as the app does whose route refuses early. */
const refusesEarly: RequestListener = (asked, response) => {
	throwAwayRest(asked, response);
	if (asked.method === 'GET') return void response.end('there');
	asked.on('data', () => asked.pause());
	asked.once('data', () => response.writeHead(413).end('too large'));
};

describe('throwAwayRest', () => {
	let server: Server;
	const agent = new Agent({ keepAlive: true, maxSockets: 1 });
	afterEach(() => {
		agent.destroy();
		server.closeAllConnections();
		server.close();
	});

	async function ask(method: string, body?: Buffer): Promise<number> {
		const { port } = server.address() as AddressInfo;
		return new Promise((resolve, reject) => {
			const asked = request({ host: '127.0.0.1', port, method, agent }, (response) => {
				response.resume();
				response.on('end', () => resolve(response.statusCode ?? 0));
			});
			asked.on('error', reject);
			asked.end(body);
		});
	}

	it('leaves the connection free for the next request', async () => {
		server = createServer({ keepAliveTimeout: 600_000 }, refusesEarly);
		let connections = 0;
		server.on('connection', () => connections++);
		await new Promise<void>((open) => server.listen(0, '127.0.0.1', open));
		for (let time = 0; time < 3; time++) {
			expect(await ask('PATCH', Buffer.alloc(12 * 2 ** 20))).toBe(413);
			expect(await ask('GET')).toBe(200);
		}
		expect(connections).toBe(1);
	});

	it('ends a connection whose sender does not stop', async () => {
		server = createServer(refusesEarly);
		await new Promise<void>((open) => server.listen(0, '127.0.0.1', open));
		const { port } = server.address() as AddressInfo;
		const piece = Buffer.alloc(2 ** 20);
		let sent = 0;
		const code = await new Promise<string>((resolve) => {
			const asked = request({ host: '127.0.0.1', port, method: 'PATCH' });
			const send = () => {
				if (sent > 200 * piece.length) return resolve('was let send on');
				sent += piece.length;
				asked.write(piece, (error) => (error ? undefined : setImmediate(send)));
			};
			asked.on('response', (response) => response.resume());
			asked.on('error', (error: NodeJS.ErrnoException) => resolve(error.code ?? error.message));
			asked.on('close', () => resolve('closed'));
			send();
		});
		expect(['ECONNRESET', 'EPIPE', 'closed']).toContain(code);
		expect(sent).toBeGreaterThan(60 * piece.length);
	});
});
