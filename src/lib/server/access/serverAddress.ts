import { networkInterfaces } from 'node:os';
import type { Config } from '../ledger/readConfig';
import { LedgerRefusal } from '../refusal';
import { isLoopbackName } from './isLoopback';

export interface ServerAddress {
	/** what a browser has in its address line, without a path */
	readonly origin: string;
	/** reachable from elsewhere, so that everybody has to sign in */
	readonly guarded: boolean;
}

/**
 * What the server is known as and whether people have to sign in. Only a server that listens on this machine
 * alone, is known by a name of this machine alone and has no proxy in front goes without.
 *
 * @param port the port that was taken
 * @throws LedgerRefusal address-not-allowed when it listens everywhere and nobody said what it is called: the
 *   name is what tells our own requests from those that another site makes up
 */
export function serverAddress(config: Config, port: number): ServerAddress {
	const { host, address, proxies } = config;
	if (!address && /^(0\.0\.0\.0|::)$/.test(host))
		throw new LedgerRefusal(
			'address-not-allowed',
			`The server is to listen on every address of this machine: say by which one people open it, for instance --address http://${someAddress()}:${port}`
		);
	const origin = address ?? `http://${host.includes(':') ? `[${host}]` : host}:${port}`;
	const here = isLoopbackName(host) && isLoopbackName(new URL(origin).hostname) && proxies.length === 0;
	return { origin, guarded: !here };
}

/** an address that other machines may know this one by */
function someAddress(): string {
	const own = Object.values(networkInterfaces())
		.flatMap((addresses) => addresses ?? [])
		.find(({ internal, family }) => !internal && family === 'IPv4');
	return own?.address ?? '192.168.1.5';
}
