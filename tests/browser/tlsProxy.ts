import { readFileSync } from 'node:fs';
import { request } from 'node:http';
import { createServer, type Server } from 'node:https';
import type { AddressInfo } from 'node:net';

/** A proxy that ends https, as the README asks of one. */
export interface TlsProxy {
	readonly port: number;
	/** its certificate, PEM: who trusts it alone talks to this proxy and no other */
	readonly certificate: string;
	/** where it passes requests on to, once that is known */
	passTo(port: number): void;
	close(): void;
}

/** Signed by itself, for the name ledger.test and these tests alone: nobody trusts it, so its key is no secret. */
const read = (name: string) => readFileSync(new URL(`./tls/${name}.pem`, import.meta.url), 'utf8');

/**
 * Answers to https://ledger.test.
 *
 * @param from address of this machine that its requests come from; no other is the proxy's
 */
export async function openTlsProxy(from: string): Promise<TlsProxy> {
	const cert = read('certificate');
	const key = read('key');
	let target = 0;
	const server: Server = createServer({ cert, key }, (asked, answer) => {
		const onward = request(
			{
				host: '127.0.0.1',
				port: target,
				localAddress: from,
				// a connection of its own each: none can have been closed by the other side meanwhile
				agent: false,
				method: asked.method,
				path: asked.url,
				headers: {
					...asked.headers,
					host: `127.0.0.1:${target}`,
					'x-forwarded-host': asked.headers.host,
					'x-forwarded-proto': 'https',
					'x-forwarded-for': asked.socket.remoteAddress
				}
			},
			(response) => {
				answer.writeHead(response.statusCode ?? 502, response.headers);
				response.pipe(answer);
			}
		);
		onward.on('error', () => (answer.headersSent ? answer.destroy() : answer.writeHead(502).end()));
		answer.on('close', () => onward.destroy());
		asked.pipe(onward);
	});
	await new Promise<void>((open) => server.listen(0, '127.0.0.1', open));
	return {
		port: (server.address() as AddressInfo).port,
		certificate: cert,
		passTo: (port) => (target = port),
		close() {
			server.closeAllConnections();
			server.close();
		}
	};
}
