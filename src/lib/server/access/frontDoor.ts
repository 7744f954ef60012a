import { pathWithin, PREFIX } from '$lib/address/prefix';
import { BlockList, isIP } from 'node:net';
import type { IncomingMessage, RequestListener, ServerResponse } from 'node:http';
import { askedThrough, PROXY_HEADERS } from './askedThrough';
import { isLoopbackAddress } from './isLoopback';
import type { ServerAddress } from './serverAddress';
import { throwAwayRest } from './throwAwayRest';
import { WATCHED_ROUTES } from './watchedRoutes';

/** in which header the app finds the address of whoever asks; written here alone */
export const CLIENT_HEADER = 'x-slip-ledger-client';

/**
 * Stands before the app: reads what a proxy says of a request if that proxy is known, takes out what anybody
 * could have written, and sends on to https what has to be on https. An answered request leaves its connection free.
 */
export function frontDoor(
	address: ServerAddress,
	proxies: readonly string[],
	app: RequestListener
): RequestListener {
	const trusted = blockListOf(proxies);
	const secure = address.origin.startsWith('https:');
	const ownHost = new URL(address.origin).host;
	return (request, response) => {
		throwAwayRest(request, response);
		if (pathWithin(pathOf(request)) === null) return notHere(response);
		const remote = request.socket.remoteAddress ?? '';
		const asked = askedThrough(remote, request.headers, trusted);
		for (const name of PROXY_HEADERS) delete request.headers[name];
		request.headers[CLIENT_HEADER] = asked.client;
		if (asked.host !== null) request.headers.host = asked.host;
		if (!address.guarded && (asked.passedOn || !isLoopbackAddress(remote)))
			return refuse(
				response,
				'This Slip Ledger is open on its own machine only. To reach it through a proxy, start it with --address and --proxy.'
			);
		// a watcher on this machine asks under whatever name it knows the server by
		if (
			isLoopbackAddress(remote) &&
			!asked.passedOn &&
			WATCHED_ROUTES.has(pathWithin(request.url ?? '') ?? '')
		)
			request.headers.host = ownHost;
		else if (secure && asked.scheme !== 'https') return toHttps(request, response, address.origin);
		return app(request, response);
	};
}

/** Passwords and cookies must not travel in the clear; what was sent in the clear is not acted on. */
function toHttps(request: IncomingMessage, response: ServerResponse, origin: string): void {
	const reads = request.method === 'GET' || request.method === 'HEAD';
	const path = request.url?.startsWith('/') && !request.url.startsWith('//') ? request.url : `${PREFIX}/`;
	if (!reads) return refuse(response, 'This Slip Ledger is open over https only.');
	response.writeHead(308, { location: `${origin}${path}`, 'cache-control': 'no-store' }).end();
}

const pathOf = (request: IncomingMessage) => (request.url ?? '').split('?', 1)[0];

/** What does not lie under the prefix is not ours, the watched addresses included. */
function notHere(response: ServerResponse): void {
	response
		.writeHead(404, { 'content-type': 'application/json; charset=utf-8', 'cache-control': 'no-store' })
		.end(JSON.stringify({ sentence: `This Slip Ledger is served under ${PREFIX}/ and nowhere else.` }));
}

function refuse(response: ServerResponse, sentence: string): void {
	response
		.writeHead(421, { 'content-type': 'application/json; charset=utf-8', 'cache-control': 'no-store' })
		.end(JSON.stringify({ sentence }));
}

/**
 * The addresses of proxies: single ones or networks ("10.0.0.0/8").
 *
 * @throws RangeError for what is neither
 */
export function blockListOf(proxies: readonly string[]): BlockList {
	const list = new BlockList();
	for (const one of proxies) {
		const [address, bits, ...more] = one.split('/');
		const family = isIP(address) === 6 ? 'ipv6' : 'ipv4';
		const most = family === 'ipv6' ? 128 : 32;
		if (isIP(address) === 0 || more.length > 0 || (bits !== undefined && !/^\d{1,3}$/.test(bits)))
			throw new RangeError(`"${one}" is no address and no network`);
		if (bits !== undefined && (Number(bits) > most || Number(bits) === 0))
			throw new RangeError(`"${one}" is no network`);
		if (bits === undefined) list.addAddress(address, family);
		else list.addSubnet(address, Number(bits), family);
	}
	return list;
}
