import { spawn, spawnSync, type ChildProcess } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { request } from 'node:http';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { openLedger, type Ledger } from '$lib/server';

const PROJECT = fileURLToPath(new URL('../..', import.meta.url));
const RUN = 'src/cli/run.mjs';
const START_WITHIN_MS = 110_000;
export const OWNER = { name: 'Ada Nowhere', password: 'seven green bicycles' };

/** The built server as others reach it: known by a name of its own, so that everybody signs in. */
export interface GuardedServer {
	readonly port: number;
	readonly origin: string;
	readonly dataFolder: string;
	/** all that the server wrote to its output and its log so far */
	said(): string;
	/** the same ledger, opened beside the server and with its clock */
	ledger(): Ledger;
	stop(): Promise<void>;
	/** ends the server and leaves its folder, for another one that goes on with it */
	leave(): Promise<void>;
}

export interface Answer {
	readonly status: number;
	readonly headers: Readonly<Record<string, string | string[] | undefined>>;
	readonly body: string;
}

/** What runs the start command with these flags until it ends: for starts that are refused. */
export function startsNot(...flags: string[]): { status: number | null; said: string } {
	const dataFolder = mkdtempSync(join(tmpdir(), 'slip-ledger-guarded-'));
	const run = command(['serve', '--port', '0', '--data', dataFolder, ...flags]);
	rmSync(dataFolder, { recursive: true, force: true });
	return { status: run.status, said: run.stdout + run.stderr };
}

/**
 * @param flags beside port and folder; `PORT` in them is the port
 * @param goesOn `dataFolder`: of a server that was left; `startsAtMs`: what the clock of the server and its children
 *   says when it starts, instead of the machine's
 */
export async function openGuarded(
	flags: readonly string[],
	goesOn: { dataFolder?: string; startsAtMs?: number } = {}
): Promise<GuardedServer> {
	const aheadMs = goesOn.startsAtMs === undefined ? 0 : goesOn.startsAtMs - Date.now();
	const dataFolder = goesOn.dataFolder ?? mkdtempSync(join(tmpdir(), 'slip-ledger-guarded-'));
	if (!goesOn.dataFolder) {
		const set = command(['access', 'set-password', OWNER.name, '--data', dataFolder], `${OWNER.password}\n`);
		if (set.status !== 0) throw new Error(`no password was set:\n${set.stderr}`);
	}
	const port = await freePort();
	const told = flags.map((flag) => flag.replace('PORT', String(port)));
	const server = spawn(
		process.execPath,
		[RUN, 'serve', '--port', String(port), '--data', dataFolder, ...told],
		{ cwd: PROJECT, stdio: ['ignore', 'pipe', 'pipe'], env: { ...environment(), ...clockOf(aheadMs) } }
	);
	let said = '';
	server.stdout.on('data', (bytes) => (said += String(bytes)));
	server.stderr.on('data', (bytes) => (said += String(bytes)));
	const ledgers: Ledger[] = [];
	const origin = await openedAt(server, () => said);
	async function leave(): Promise<void> {
		for (const ledger of ledgers.splice(0)) ledger.close();
		await stopped(server);
	}
	return {
		port,
		origin,
		dataFolder,
		said: () => said,
		ledger() {
			const ledger = openLedger(dataFolder, { migrate: false, now: () => Date.now() + aheadMs });
			ledgers.push(ledger);
			return ledger;
		},
		leave,
		async stop() {
			await leave();
			rmSync(dataFolder, { recursive: true, force: true });
		}
	};
}

/** What makes every process of the server take another time for now; it goes on as clocks do. */
function clockOf(aheadMs: number): { NODE_OPTIONS?: string } {
	if (aheadMs === 0) return {};
	const script = `const Real = Date;
		globalThis.Date = class Date extends Real {
			constructor(...given) { if (given.length === 0) super(Real.now() + ${aheadMs}); else super(...given); }
			static now() { return Real.now() + ${aheadMs}; }
		};`;
	return { NODE_OPTIONS: `--import=data:text/javascript,${encodeURIComponent(script)}` };
}

function command(args: string[], input = '') {
	return spawnSync(process.execPath, [RUN, ...args], {
		cwd: PROJECT,
		input,
		encoding: 'utf8',
		timeout: START_WITHIN_MS,
		env: environment()
	});
}

const environment = () => ({ ...process.env, PORT: '', HOST: '', SLIP_LEDGER_DATA: '', ORIGIN: '' });

/** One request as it goes over the line, with whatever Host it is to have; redirects are not followed. */
export function send(
	to: { port: number; host?: string; from?: string },
	path: string,
	options: { method?: string; headers?: Record<string, string>; body?: string | Uint8Array } = {}
): Promise<Answer> {
	return new Promise((done, fail) => {
		const sent = request(
			{
				host: to.host ?? '127.0.0.1',
				port: to.port,
				localAddress: to.from,
				// a connection of its own: one that is kept may be closed by the server just then
				agent: false,
				path,
				method: options.method ?? 'GET',
				headers: options.headers
			},
			(response) => {
				const pieces: Buffer[] = [];
				response.on('data', (piece: Buffer) => pieces.push(piece));
				response.on('end', () =>
					done({
						status: response.statusCode ?? 0,
						headers: response.headers,
						body: Buffer.concat(pieces).toString('utf8')
					})
				);
			}
		);
		sent.on('error', fail);
		sent.end(options.body);
	});
}

/** "name=value" of what an answer sets, for the next request. */
export function cookieOf(answer: Answer): string {
	return String(answer.headers['set-cookie']?.[0] ?? '').split(';')[0];
}

async function freePort(): Promise<number> {
	const probe = createServer();
	await new Promise<void>((open) => probe.listen(0, '127.0.0.1', open));
	const address = probe.address();
	await new Promise((closed) => probe.close(closed));
	if (address === null || typeof address === 'string') throw new Error('no port');
	return address.port;
}

async function openedAt(server: ChildProcess, said: () => string): Promise<string> {
	const giveUpAt = Date.now() + START_WITHIN_MS;
	for (;;) {
		const found = /is open at (\S+)/.exec(said());
		if (found) return found[1];
		if (server.exitCode !== null || Date.now() > giveUpAt)
			throw new Error(`The server did not start:\n${said()}`);
		await new Promise((wait) => setTimeout(wait, 50));
	}
}

async function stopped(server: ChildProcess): Promise<void> {
	if (server.exitCode !== null || server.signalCode !== null) return;
	const ended = new Promise((resolve) => server.once('exit', resolve));
	server.kill('SIGTERM');
	const late = setTimeout(() => server.kill('SIGKILL'), 15_000);
	await ended;
	clearTimeout(late);
}
