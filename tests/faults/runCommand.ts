import { spawn, type ChildProcess } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const project = fileURLToPath(new URL('../..', import.meta.url));

export interface Finished {
	status: number | null;
	stdout: string;
	stderr: string;
}

/** What the package script of a command tells the engine; `npm start` is the one of "serve". */
export function nodeFlags(name: string): string[] {
	const { scripts } = JSON.parse(readFileSync(join(project, 'package.json'), 'utf8')) as {
		scripts: Record<string, string>;
	};
	const script = scripts[name === 'serve' ? 'start' : name] ?? '';
	return script.split(' ').filter((word) => word.startsWith('--'));
}

/** Starts a terminal command of the build as the package scripts do, with a clean set of settings. */
export function startCommand(
	name: string,
	args: readonly string[],
	env: Record<string, string> = {}
): ChildProcess {
	const inherited = Object.fromEntries(
		Object.entries(process.env).filter(
			([key]) => !/^(PORT|HOST|ORIGIN|SLIP_LEDGER_|VITEST|NODE_OPTIONS)/.test(key)
		)
	);
	return spawn(process.execPath, [...nodeFlags(name), 'src/cli/run.mjs', name, ...args], {
		cwd: project,
		env: { ...inherited, ...env },
		stdio: ['ignore', 'pipe', 'pipe']
	});
}

/** Runs a terminal command to its end. */
export function runCommand(
	name: string,
	args: readonly string[],
	env: Record<string, string> = {}
): Promise<Finished> {
	return new Promise((resolve, reject) => {
		const child = startCommand(name, args, env);
		let stdout = '';
		let stderr = '';
		child.stdout!.on('data', (piece) => (stdout += piece));
		child.stderr!.on('data', (piece) => (stderr += piece));
		child.once('error', reject);
		child.once('close', (status) => resolve({ status, stdout, stderr }));
	});
}

/** Starts the server on a free port and waits for its line; `stop` ends it as a person would. */
export async function startServer(dataFolder: string, env: Record<string, string> = {}) {
	const child = startCommand('serve', ['--port', '0', '--data', dataFolder], env);
	let stderr = '';
	child.stderr!.on('data', (piece) => (stderr += piece));
	const line = await new Promise<string>((resolve, reject) => {
		let text = '';
		child.stdout!.on('data', (piece) => {
			text += piece;
			if (text.includes('\n')) resolve(text);
		});
		child.once('close', (status) => reject(new Error(`the server left with ${status}: ${stderr}`)));
	});
	const origin = /http:\/\/\S+/.exec(line)![0];
	const stop = (signal: NodeJS.Signals = 'SIGTERM') =>
		new Promise<number | null>((resolve) => {
			if (child.exitCode !== null || child.signalCode !== null) return resolve(child.exitCode);
			child.once('close', (status) => resolve(status));
			child.kill(signal);
		});
	return { child, origin, line, stop, errors: () => stderr };
}
