import { resolve } from 'node:path';
import { LedgerRefusal } from '../refusal';
import { programLimits } from './programLimits';
import { splitFlags } from './splitFlags';

export interface Config {
	/** absolute path of the folder that holds the ledger */
	readonly dataFolder: string;
	readonly host: string;
	/** 0 = any free port */
	readonly port: number;
	/** what a browser has in its address line, e.g. "http://127.0.0.1:4710" */
	readonly origin: string;
}

const DEFAULTS = { data: './data', host: '127.0.0.1', port: '4710' };
const LOOPBACK = /^(127(\.\d{1,3}){3}|localhost|::1|\[::1\])$/;

/**
 * Where the ledger lies and where the server listens. Flags (--data, --port, --host) win over environment
 * variables (SLIP_LEDGER_DATA, PORT, HOST), these over the defaults (./data, 127.0.0.1:4710). An empty
 * variable counts as not set; an empty flag is a mistake.
 *
 * @throws LedgerRefusal address-not-allowed for anything but loopback: whoever reaches the server may
 *   write, so it stays on this machine until the ledger knows who may do what; wrong-setting for the rest
 */
export function readConfig(
	env: Readonly<Record<string, string | undefined>>,
	argv: readonly string[]
): Config {
	const { flags } = splitFlags(argv, ['data', 'host', 'port']);
	const host = (flags.host ?? (env.HOST || DEFAULTS.host)).trim();
	const portText = flags.port ?? (env.PORT || DEFAULTS.port);
	const port = Number(portText);
	if (!/^\d{1,5}$/.test(portText) || port > 65535)
		throw new LedgerRefusal('wrong-setting', `"${portText}" is no port: give a number from 0 to 65535.`);
	if (!LOOPBACK.test(host))
		throw new LedgerRefusal(
			'address-not-allowed',
			`Slip Ledger listens only on this machine (127.0.0.1), not on "${host}": anyone who reached it could change the ledger.`
		);
	// said at the start, not when the first file comes
	programLimits(env);
	const bareHost = host.replace(/^\[|\]$/g, '');
	const dataFolder = resolve(flags.data ?? (env.SLIP_LEDGER_DATA || DEFAULTS.data));
	return { dataFolder, host: bareHost, port, origin: originOf(bareHost, port) };
}

function originOf(host: string, port: number): string {
	return `http://${host.includes(':') ? `[${host}]` : host}:${port}`;
}
