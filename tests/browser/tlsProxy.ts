import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { request } from 'node:http';
import { createServer, type Server } from 'node:https';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A proxy that ends https, as the README asks of one. */
export interface TlsProxy {
	readonly port: number;
	/** its certificate, PEM: who trusts it alone talks to this proxy and no other */
	readonly certificate: string;
	/** where it passes requests on to, once that is known */
	passTo(port: number): void;
	close(): void;
}

/** A certificate for a name that lives for a day, with its key; made by openssl, which the test machine must have. */
function selfMade(name: string): { cert: string; key: string } {
	const folder = mkdtempSync(join(tmpdir(), 'slip-ledger-tls-'));
	try {
		const [key, cert] = [join(folder, 'key.pem'), join(folder, 'cert.pem')];
		execFileSync(
			'openssl',
			[
				...[
					'req',
					'-x509',
					'-newkey',
					'ec',
					'-pkeyopt',
					'ec_paramgen_curve:prime256v1',
					'-nodes',
					'-days',
					'1'
				],
				...['-subj', `/CN=${name}`, '-addext', `subjectAltName=DNS:${name}`, '-keyout', key, '-out', cert]
			],
			{ stdio: 'pipe' }
		);
		return { cert: readFileSync(cert, 'utf8'), key: readFileSync(key, 'utf8') };
	} finally {
		rmSync(folder, { recursive: true, force: true });
	}
}

/**
 * @param name that people have in their address line
 * @param from address of this machine that its requests come from; no other is the proxy's
 */
export async function openTlsProxy(name: string, from: string): Promise<TlsProxy> {
	const { cert, key } = selfMade(name);
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
