import { PREFIX } from '$lib/address/prefix';
import { resolve } from 'node:path';
import { blockListOf } from '../access/frontDoor';
import { LedgerRefusal } from '../refusal';
import { programLimits } from './programLimits';
import { splitFlags } from './splitFlags';

export interface Config {
	/** absolute path of the folder that holds the ledger */
	readonly dataFolder: string;
	readonly host: string;
	/** 0 = any free port */
	readonly port: number;
	/** what people have in their browser's address line, when it is not host and port; without a path, which is the prefix's to say */
	readonly address: string | null;
	/** addresses or networks of proxies whose word on who asks is taken */
	readonly proxies: readonly string[];
}

const DEFAULTS = { data: './data', host: '127.0.0.1', port: '4710' };
const HOST = /^(\[?[0-9a-f:]*:[0-9a-f:.]*\]?|[a-z0-9.-]+)$/i;

/**
 * Where the ledger lies, where the server listens and how it is reached. Flags (--data, --port, --host,
 * --address, --proxy) win over environment variables (SLIP_LEDGER_DATA, PORT, HOST, SLIP_LEDGER_ADDRESS,
 * SLIP_LEDGER_PROXY), these over the defaults (./data, 127.0.0.1:4710, no proxy). An empty variable counts as
 * not set; an empty flag is a mistake.
 *
 * @throws LedgerRefusal wrong-setting
 */
export function readConfig(
	env: Readonly<Record<string, string | undefined>>,
	argv: readonly string[]
): Config {
	const { flags } = splitFlags(argv, ['data', 'host', 'port', 'address', 'proxy']);
	const host = (flags.host ?? (env.HOST || DEFAULTS.host)).trim();
	const portText = flags.port ?? (env.PORT || DEFAULTS.port);
	const port = Number(portText);
	if (!/^\d{1,5}$/.test(portText) || port > 65535)
		throw new LedgerRefusal('wrong-setting', `"${portText}" is no port: give a number from 0 to 65535.`);
	if (!HOST.test(host)) throw new LedgerRefusal('wrong-setting', `"${host}" is no address to listen on.`);
	// said at the start, not when the first file comes
	programLimits(env);
	return {
		dataFolder: resolve(flags.data ?? (env.SLIP_LEDGER_DATA || DEFAULTS.data)),
		host: host.replace(/^\[|\]$/g, ''),
		port,
		address: addressOf(flags.address ?? env.SLIP_LEDGER_ADDRESS ?? ''),
		proxies: proxiesOf(flags.proxy ?? env.SLIP_LEDGER_PROXY ?? '')
	};
}

function addressOf(text: string): string | null {
	if (text.trim() === '') return null;
	const url = parsed(text.trim());
	if (!url || !/^https?:$/.test(url.protocol) || url.username || url.password || url.search || url.hash)
		throw new LedgerRefusal(
			'wrong-setting',
			`"${text.slice(0, 100)}" is no address for a browser: give one like https://ledger.example.org.`
		);
	if (url.pathname !== '/' && url.pathname.replace(/\/$/, '') !== PREFIX)
		throw new LedgerRefusal(
			'wrong-setting',
			`Slip Ledger was built to lie under "${PREFIX}/", not under "${url.pathname.slice(0, 100)}": set SLIP_LEDGER_PREFIX to that folder, or give the ledger a name of its own, like https://ledger.${url.hostname}.`
		);
	return url.origin;
}

function parsed(text: string): URL | null {
	try {
		return new URL(text);
	} catch {
		return null;
	}
}

function proxiesOf(text: string): string[] {
	const proxies = text
		.split(',')
		.map((one) => one.trim())
		.filter(Boolean);
	try {
		blockListOf(proxies);
	} catch (error) {
		throw new LedgerRefusal(
			'wrong-setting',
			`Of the proxies ${(error as Error).message}: give addresses like 127.0.0.1 or networks like 10.0.0.0/8, with commas.`
		);
	}
	return proxies;
}
