import { fork, type ChildProcess } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { familyOf } from './families';

export interface Finding {
	readonly number: number;
	readonly family: string;
	readonly detail: string;
}

export interface FuzzOutcome {
	readonly cases: number;
	readonly byFamily: Readonly<Record<string, number>>;
	readonly findings: readonly Finding[];
	readonly slowestMs: number;
}

const BATCH = 400;
/** twenty cases that take longer hang */
const HANGS_AFTER_MS = 20_000;
const PROJECT = fileURLToPath(new URL('../..', import.meta.url));

/**
 * Runs numbered cases in child processes and gathers what broke. A case that ends its process, or takes endless
 * time, is a finding as well; the range goes on behind it.
 *
 * @param onProgress told how many cases are done
 */
export async function runFuzz(
	from: number,
	to: number,
	children: number,
	onProgress: (done: number) => void = () => {}
): Promise<FuzzOutcome> {
	const findings: Finding[] = [];
	let next = from;
	let done = 0;
	let slowestMs = 0;
	const take = (): [number, number] | null => {
		if (next >= to) return null;
		const range: [number, number] = [next, Math.min(to, next + BATCH)];
		next = range[1];
		return range;
	};
	const find = (number: number, detail: string) => {
		findings.push({ number, family: familyOf(number).name, detail });
	};
	async function worker(): Promise<void> {
		let child = startChild();
		for (let range = take(); range; range = take()) {
			let [at] = range;
			while (at < range[1]) {
				const ended = await oneRange(
					child,
					at,
					range[1],
					find,
					(ms) => (slowestMs = Math.max(slowestMs, ms))
				);
				if (ended === null) break;
				find(ended.number, ended.detail);
				child.kill('SIGKILL');
				child = startChild();
				at = ended.number + 1;
			}
			done += range[1] - range[0];
			onProgress(done);
		}
		child.kill('SIGKILL');
	}
	await Promise.all(Array.from({ length: children }, worker));
	const byFamily: Record<string, number> = {};
	for (let number = from; number < to; number++) {
		const { name } = familyOf(number);
		byFamily[name] = (byFamily[name] ?? 0) + 1;
	}
	return { cases: to - from, byFamily, findings, slowestMs };
}

function startChild(): ChildProcess {
	return fork(fileURLToPath(new URL('./child.ts', import.meta.url)), [], {
		cwd: PROJECT,
		execArgv: ['--import', 'tsx', '--max-old-space-size=1024'],
		stdio: ['ignore', 'ignore', 'inherit', 'ipc']
	});
}

type Said =
	| { kind: 'at'; number: number }
	| { kind: 'broke'; number: number; detail: string }
	| { kind: 'slow'; number: number; tookMs: number }
	| { kind: 'done'; to: number };

/** null = the range was run to its end; else the case at which the process ended or hung */
function oneRange(
	child: ChildProcess,
	from: number,
	to: number,
	find: (number: number, detail: string) => void,
	slow: (tookMs: number) => void
): Promise<{ number: number; detail: string } | null> {
	return new Promise((resolve) => {
		let at = from;
		let timer = setTimeout(hung, HANGS_AFTER_MS);
		function hung() {
			settle({ number: at, detail: `no end of this or the next 19 cases within ${HANGS_AFTER_MS / 1000} s` });
		}
		const settle = (ended: { number: number; detail: string } | null) => {
			clearTimeout(timer);
			child.removeAllListeners();
			resolve(ended);
		};
		child.on('message', (said: Said) => {
			clearTimeout(timer);
			timer = setTimeout(hung, HANGS_AFTER_MS);
			if (said.kind === 'done') settle(null);
			else if (said.kind === 'at') at = said.number;
			else if (said.kind === 'broke') find(said.number, said.detail);
			else slow(said.tookMs);
		});
		child.on('exit', (code, signal) =>
			settle({ number: at, detail: `the process ended with ${signal ?? code}` })
		);
		child.send({ from, to });
	});
}
