import { PREFIX } from '$lib/address/prefix';
import { createServer, type RequestListener, type Server } from 'node:http';
import {
	CLIENT_HEADER,
	frontDoor,
	LedgerRefusal,
	log,
	logLevel,
	openLedger,
	ownerHasPassword,
	readConfig,
	serverAddress,
	uploadsInTurn,
	type Config
} from '$lib/server';
import { spareMemory } from './serve/spareMemory';

/** the largest request body; uploads come in pieces and state their own, smaller, limit */
const BODY_SIZE_LIMIT = '16M';
const STOP_WITHIN_MS = 10_000;

/** The built web app lies beside the entries: build/<stamp>/handler.js. */
const HANDLER = new URL('../../handler.js', import.meta.url).href;

spareMemory();
try {
	await serve(readConfig(process.env, process.argv.slice(2)));
} catch (error) {
	process.stderr.write(`${sentenceOf(error)}\n`);
	process.exit(1);
}

/**
 * Takes the port first, so that nothing is changed when it is busy; then opens and migrates the ledger;
 * then lets requests in.
 */
async function serve(config: Config): Promise<void> {
	// a log gets what happens, a person at a terminal what went wrong
	process.env.SLIP_LEDGER_LOG_LEVEL ||= process.stderr.isTTY ? 'warn' : 'info';
	logLevel(process.env);
	let answer: RequestListener = (_request, response) => {
		response.writeHead(503, { 'retry-after': '1' }).end('Slip Ledger is starting.\n');
	};
	const server = createServer((request, response) => answer(request, response));
	const port = await listen(server, config);
	const address = serverAddress(config, port);
	openAndLookForOwner(config.dataFolder, address.guarded);
	Object.assign(process.env, {
		ORIGIN: address.origin,
		SLIP_LEDGER_SIGN_IN: address.guarded ? 'needed' : 'not needed',
		ADDRESS_HEADER: CLIENT_HEADER,
		BODY_SIZE_LIMIT,
		HOST: config.host,
		PORT: String(port),
		SLIP_LEDGER_DATA: config.dataFolder
	});
	const { handler } = (await import(/* @vite-ignore */ HANDLER)) as { handler: RequestListener };
	answer = frontDoor(address, config.proxies, uploadsInTurn(handler));
	for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => stop(server, signal));
	log.info('server open', { port });
	process.stdout.write(
		`Slip Ledger is open at ${address.origin}${PREFIX} (ledger in ${config.dataFolder})\n`
	);
}

/**
 * Brings the ledger to this program's layout. Where others reach the server, an owner must be able to come in
 * and let them in.
 */
function openAndLookForOwner(dataFolder: string, guarded: boolean): void {
	const ledger = openLedger(dataFolder, { migrate: true });
	try {
		if (guarded && !ownerHasPassword(ledger))
			throw new LedgerRefusal(
				'no-password',
				'Other machines could reach this server, and no owner has a password yet. Set one first: npm run access -- set-password "NAME OF THE OWNER"'
			);
	} finally {
		ledger.close();
	}
}

function listen(server: Server, config: Config): Promise<number> {
	return new Promise((resolve, reject) => {
		server.once('error', (error: NodeJS.ErrnoException) => {
			const busy = error.code === 'EADDRINUSE';
			const sentence = busy
				? `Port ${config.port} is taken by another program; choose one with --port or PORT.`
				: `Port ${config.port} on ${config.host} cannot be opened (${error.code}).`;
			reject(new LedgerRefusal(busy ? 'port-busy' : 'port-refused', sentence));
		});
		server.listen(config.port, config.host, () => {
			const address = server.address();
			resolve(typeof address === 'object' && address ? address.port : config.port);
		});
	});
}

/** Lets running answers end, gives everybody who holds something the chance to hand it back, leaves. */
function stop(server: Server, signal: string): void {
	log.info('server stops', { signal });
	server.close(() => process.exit(0));
	server.closeIdleConnections();
	process.emit('sveltekit:shutdown' as 'exit', signal as unknown as number);
	setTimeout(() => process.exit(0), STOP_WITHIN_MS).unref();
}

function sentenceOf(error: unknown): string {
	if (error instanceof LedgerRefusal) return error.sentence;
	return `Slip Ledger could not start: ${error instanceof Error ? error.message : String(error)}`;
}
