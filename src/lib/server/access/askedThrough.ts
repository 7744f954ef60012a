import { isIPv6, type BlockList } from 'node:net';

type Headers = Readonly<Record<string, string | string[] | undefined>>;

/** Where a request really comes from and what for. */
export interface Asked {
	/** address of whoever asks */
	client: string;
	/** the host that they asked for; null = not said */
	host: string | null;
	scheme: 'http' | 'https';
	/** something says that it was passed on */
	passedOn: boolean;
}

/** What a proxy adds. Anybody can write them, so they count from known proxies alone. */
export const PROXY_HEADERS = [
	'forwarded',
	'via',
	'x-forwarded-for',
	'x-forwarded-host',
	'x-forwarded-port',
	'x-forwarded-prefix',
	'x-forwarded-proto',
	'x-forwarded-server',
	'x-real-ip'
] as const;

/**
 * Reads what a trusted proxy says of a request. From anybody else nothing of it counts.
 *
 * @param remote address of the other end of the connection
 * @param proxies addresses whose word is taken
 */
export function askedThrough(remote: string, headers: Headers, proxies: BlockList): Asked {
	const passedOn = PROXY_HEADERS.some((name) => headers[name] !== undefined);
	const host = text(headers.host) || null;
	if (!isIn(proxies, remote)) return { client: bare(remote), host, scheme: 'http', passedOn };
	return {
		client: clientOf(remote, text(headers['x-forwarded-for']), proxies),
		host: text(headers['x-forwarded-host']) || host,
		scheme: text(headers['x-forwarded-proto']).toLowerCase() === 'https' ? 'https' : 'http',
		passedOn
	};
}

/**
 * The last address in the list that is no proxy of ours. What stands before it was written by whoever asked and
 * may be made up.
 */
function clientOf(remote: string, list: string, proxies: BlockList): string {
	const addresses = list.split(',').map((one) => bare(one.trim()));
	for (const address of addresses.reverse()) {
		if (!/^[0-9a-f:.]{2,45}$/i.test(address)) break;
		if (!isIn(proxies, address)) return address;
	}
	return bare(remote);
}

function isIn(proxies: BlockList, address: string): boolean {
	const plain = bare(address);
	return proxies.check(plain, isIPv6(plain) ? 'ipv6' : 'ipv4');
}

function bare(address: string): string {
	return address.replace(/^::ffff:(?=\d+\.)/i, '').replace(/^\[|\]$/g, '');
}

/** a header that comes twice is not believed: which of the two is ours nobody knows */
function text(value: string | string[] | undefined): string {
	return typeof value === 'string' ? value.trim() : '';
}
