import { fork, type ChildProcess } from 'node:child_process';
import type { FileRefusal } from '../../../jobs/analysis/messages';
import type { MemberFacts, MemberOutcome, UnpackMessage, UnpackRequest } from '../../../jobs/unpack/messages';
import { log } from '../log/log';
import { residentBytes } from '../queue/residentBytes';

export interface UnpackChildLimits {
	/** wall time for one file of an archive, milliseconds */
	readonly wallMs: number;
	/** resident memory of the process, bytes */
	readonly residentBytes: number;
	readonly checkEveryMs: number;
}

export const UNPACK_CHILD_LIMITS: UnpackChildLimits = {
	wallMs: 180_000,
	residentBytes: 400 * 2 ** 20,
	checkEveryMs: 200
};

export type UnpackEnd =
	| { readonly kind: 'end' }
	| { readonly kind: 'refused'; readonly refusal: FileRefusal }
	/** ended by us, or by itself: `at` is the file it was at */
	| { readonly kind: 'stopped'; readonly refusal: FileRefusal; readonly at: MemberFacts | null }
	| { readonly kind: 'broke'; readonly detail: string; readonly at: MemberFacts | null };

export interface Unpacking {
	readonly end: Promise<UnpackEnd>;
	stop(): void;
}

/**
 * Unpacks an archive in a process of its own, which is watched from here: one that takes too long over a file, or
 * too much memory, is ended.
 *
 * @param onMember writes down what became of a file; false = stop; what it throws ends the unpacking, and the end waits for it
 */
export function unpackInChild(
	entry: string,
	request: UnpackRequest,
	limits: UnpackChildLimits,
	onMember: (facts: MemberFacts, outcome: MemberOutcome) => Promise<boolean>
): Unpacking {
	const child = start(entry);
	const end = new Promise<UnpackEnd>((resolve) => {
		let at: MemberFacts | null = null;
		let sinceMs = performance.now();
		/** what is being written down just now: the time it takes is not the child's */
		let writing: Promise<unknown> | null = null;
		const settle = (outcome: UnpackEnd) => {
			clearInterval(watch);
			child.removeAllListeners('message').removeAllListeners('exit').removeAllListeners('error');
			child.on('error', () => {});
			child.kill('SIGKILL');
			void Promise.resolve(writing).then(() => resolve(outcome));
		};
		const broke = (detail: string) => settle({ kind: 'broke', detail, at });
		const hear = (message: UnpackMessage) => {
			sinceMs = performance.now();
			if (message.kind === 'broke') broke(message.detail);
			else if (message.kind === 'begun') at = message.facts;
			else if (message.kind !== 'member') settle(message);
			else writing = write(message.facts, message.outcome);
		};
		const write = async (facts: MemberFacts, outcome: MemberOutcome) => {
			try {
				const written = await onMember(facts, outcome);
				writing = null;
				sinceMs = performance.now();
				if (!written) return broke('the right to unpack was lost');
				at = null;
				if (child.connected) child.send({ kind: 'next' }, (error) => error && broke(error.message));
			} catch (error) {
				writing = null;
				log.failure('file of an archive not written down', error);
				broke(error instanceof Error ? error.message : String(error));
			}
		};
		child.on('message', hear);
		child.on('exit', (code, signal) => broke(`the process ended with ${signal ?? `code ${code}`}`));
		child.on('error', (error) => broke(error.message));
		const watch = setInterval(() => {
			if (writing) return;
			const resident = child.pid === undefined ? null : residentBytes(child.pid);
			if (performance.now() - sinceMs > limits.wallMs)
				settle({ kind: 'stopped', at, refusal: tooSlow(performance.now() - sinceMs) });
			else if (resident !== null && resident > limits.residentBytes)
				settle({ kind: 'stopped', at, refusal: tooMuchMemory(resident) });
		}, limits.checkEveryMs);
		child.send(request, (error) => error && broke(error.message));
	});
	return { end, stop: () => void child.kill('SIGKILL') };
}

function start(entry: string): ChildProcess {
	const child = fork(entry, [String(process.pid)], {
		serialization: 'advanced',
		execArgv: ['--max-old-space-size=256'],
		stdio: ['ignore', 'ignore', 'pipe', 'ipc']
	});
	child.stderr?.on('data', (piece: Buffer) => log.warn('child said something', { bytes: piece.length }));
	return child;
}

function tooSlow(ms: number): FileRefusal {
	return {
		code: 'too-slow',
		sentence: 'Unpacking this took too long and was stopped; it may be damaged or far too large.',
		detail: `stopped after ${Math.round(ms / 1000)} s`
	};
}

function tooMuchMemory(resident: number): FileRefusal {
	return {
		code: 'too-much-memory',
		sentence: 'Unpacking this needed too much memory and was stopped; it may be damaged or far too large.',
		detail: `stopped at ${Math.round(resident / 2 ** 20)} MB`
	};
}
