import { spawn, type ChildProcess } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ensureBuild } from '../../src/cli/build.mjs';

/** The built program: web app and entries. SLIP_LEDGER_TEST_BUILD names one that is there already. */
export async function builtProgram(): Promise<string> {
	return process.env.SLIP_LEDGER_TEST_BUILD ?? (await ensureBuild());
}

export interface Ended {
	code: number | null;
	signal: string | null;
	output: string;
}

export interface Running {
	child: ChildProcess;
	/** resolves when the process has ended */
	ended: Promise<Ended>;
	/** what it has printed so far */
	output(): string;
}

/** Starts one of the commands as a process of its own. */
export function start(
	build: string,
	command: string,
	args: readonly string[],
	env: Record<string, string> = {}
): Running {
	const entry = join(build, 'entries', 'cli', `${command}.js`);
	const child = spawn(process.execPath, [entry, ...args], {
		env: { ...process.env, ...env },
		stdio: ['ignore', 'pipe', 'pipe']
	});
	let output = '';
	for (const stream of [child.stdout, child.stderr]) stream!.on('data', (piece) => (output += String(piece)));
	const ended = new Promise<Ended>((resolve) =>
		child.on('close', (code, signal) => resolve({ code, signal, output }))
	);
	return { child, ended, output: () => output };
}

const sampleFolder = fileURLToPath(new URL('../../sample-rides', import.meta.url));

/** The smallest rides of the example workshop, whole files that become rides. */
export function smallRides(count: number): string[] {
	const programme = JSON.parse(readFileSync(join(sampleFolder, 'programme.json'), 'utf8')) as {
		rides: { file: string; note: string | null; sameAs: string | null; trainer: boolean }[];
	};
	const plain = programme.rides
		.filter(({ note, sameAs, trainer }) => note === null && sameAs === null && !trainer)
		.map(({ file }) => join(sampleFolder, file))
		.filter((file) => existsSync(file))
		.sort((a, b) => statSync(a).size - statSync(b).size || (a < b ? -1 : 1));
	if (plain.length < count) throw new Error(`sample-rides has only ${plain.length} plain rides`);
	return plain.slice(0, count);
}

/** Names of all files in the store: hashes. */
export function storedSources(folder: string): string[] {
	return readdirSync(join(folder, 'sources'), { recursive: true, withFileTypes: true })
		.filter((entry) => entry.isFile())
		.map((entry) => entry.name)
		.sort();
}

/** Asks again until the answer is there; fails after a while with what was waited for. */
export async function until<T>(
	what: string,
	look: () => T | Promise<T>,
	withinMs = 30_000
): Promise<NonNullable<T>> {
	const deadline = Date.now() + withinMs;
	for (;;) {
		const found = await look();
		if (found) return found;
		if (Date.now() > deadline) throw new Error(`waited in vain: ${what}`);
		await new Promise((resolve) => setTimeout(resolve, 50));
	}
}

export async function freePort(): Promise<number> {
	const server = createServer();
	await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
	const address = server.address();
	await new Promise((resolve) => server.close(resolve));
	if (address === null || typeof address === 'string') throw new Error('no port');
	return address.port;
}
