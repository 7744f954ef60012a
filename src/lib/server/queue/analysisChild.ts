import { fork, type ChildProcess } from 'node:child_process';
import type { InsertionResult } from '$lib/slip/insertionTest';
import type {
	AnalyseAnswer,
	AnalysedFile,
	ChildRequest,
	FileRefusal,
	FileToRead
} from '../../../jobs/analysis/messages';
import { programLimits } from '../ledger/programLimits';
import { log } from '../log/log';
import { processorMs } from './processorMs';
import { residentBytes } from './residentBytes';
import { standBack, STANDS_BACK } from './standBack';
import { tookTooLong } from './tookTooLong';

export interface ChildLimits {
	/** time for one file by the clock, milliseconds; up to four times as long where the machine is busy with other work */
	readonly wallMs: number;
	/** resident memory of the process, bytes */
	readonly residentBytes: number;
	/** how often time and memory are looked at, milliseconds */
	readonly checkEveryMs: number;
	/** files after which a fresh process takes over */
	readonly filesPerChild: number;
}

/** The limits that the settings give. */
export function childLimits(): ChildLimits {
	const { jobSeconds, jobMegabytes } = programLimits();
	return {
		wallMs: jobSeconds * 1000,
		residentBytes: jobMegabytes * 2 ** 20,
		checkEveryMs: 200,
		// its memory stays flat (measured over 600 files), and a fresh one is slow until it is compiled
		filesPerChild: 1000
	};
}

export type ChildOutcome<Done> =
	| Done
	| { readonly kind: 'refused'; readonly refusal: FileRefusal }
	/** the process ended or failed by itself: may be tried again */
	| { readonly kind: 'broke'; readonly detail: string };

export type Analysed = { readonly kind: 'analysed'; readonly file: AnalysedFile };
export type Inserted = { readonly kind: 'inserted'; readonly result: InsertionResult };

/**
 * One child process that analyses one file at a time, watched from here: a file that takes too long or
 * too much memory is refused and its process ended. The next file gets a fresh one.
 */
export class AnalysisChild {
	#child: ChildProcess | null = null;
	#files = 0;
	#requests = 0;

	constructor(
		private readonly entry: string,
		private readonly limits: ChildLimits = childLimits(),
		/** how far it stands back behind the server, which has people waiting */
		private readonly standsBackBy: number = STANDS_BACK.little
	) {}

	analyse(file: FileToRead): Promise<ChildOutcome<Analysed>> {
		return this.#work<Analysed>({ ...file, requestId: ++this.#requests, kind: 'analyse' });
	}

	insertSlips(file: FileToRead, seed: number): Promise<ChildOutcome<Inserted>> {
		return this.#work<Inserted>({ ...file, requestId: ++this.#requests, kind: 'insert slips', seed });
	}

	async #work<Done>(request: ChildRequest): Promise<ChildOutcome<Done>> {
		if (this.#files >= this.limits.filesPerChild) this.stop();
		const child = (this.#child ??= this.#start());
		this.#files++;
		const outcome = await this.#ask<Done>(child, request);
		if (child.exitCode !== null || child.signalCode !== null || child.killed) this.#forget(child);
		return outcome;
	}

	stop(): void {
		const child = this.#child;
		if (!child) return;
		this.#forget(child);
		child.kill('SIGKILL');
	}

	#start(): ChildProcess {
		this.#files = 0;
		const heapMegabytes = Math.ceil((this.limits.residentBytes * 1.5) / 2 ** 20);
		const child = fork(this.entry, [String(process.pid)], {
			serialization: 'advanced',
			execArgv: [`--max-old-space-size=${heapMegabytes}`],
			stdio: ['ignore', 'ignore', 'pipe', 'ipc']
		});
		standBack(child.pid, this.standsBackBy);
		// what a child prints may quote the file it reads: the log learns how much it was
		child.stderr?.on('data', (piece: Buffer) => log.warn('child said something', { bytes: piece.length }));
		return child;
	}

	#forget(child: ChildProcess): void {
		if (this.#child === child) this.#child = null;
	}

	#ask<Done>(child: ChildProcess, request: ChildRequest): Promise<ChildOutcome<Done>> {
		return new Promise((resolve) => {
			const startedMs = performance.now();
			const busyBeforeMs = (child.pid !== undefined && processorMs(child.pid)) || 0;
			const settle = (outcome: ChildOutcome<Done>) => {
				clearInterval(watch);
				child.off('message', onMessage).off('exit', onExit).off('error', onError);
				resolve(outcome);
			};
			const end = (code: string, sentence: string, detail: string) => {
				this.#forget(child);
				child.kill('SIGKILL');
				settle({ kind: 'refused', refusal: { code, sentence, detail } });
			};
			const onMessage = (answer: AnalyseAnswer) => {
				if (answer.requestId === request.requestId) settle(answer as ChildOutcome<Done>);
			};
			const onExit = (code: number | null, signal: string | null) =>
				settle({ kind: 'broke', detail: `the process ended with ${signal ?? `code ${code}`}` });
			// whom nothing can be sent is of no use any more, even if the news of its end has not come yet
			const onError = (error: Error) => {
				this.#forget(child);
				child.kill('SIGKILL');
				settle({ kind: 'broke', detail: error.message });
			};
			const watch = setInterval(() => {
				const ranMs = performance.now() - startedMs;
				const resident = child.pid === undefined ? null : residentBytes(child.pid);
				const busyMs = child.pid === undefined ? null : processorMs(child.pid);
				if (tookTooLong(ranMs, busyMs === null ? null : busyMs - busyBeforeMs, this.limits.wallMs))
					end('too-slow', TOO_SLOW, `stopped after ${Math.round(ranMs / 1000)} s`);
				else if (resident !== null && resident > this.limits.residentBytes)
					end('too-much-memory', TOO_MUCH_MEMORY, `stopped at ${Math.round(resident / 2 ** 20)} MB`);
			}, this.limits.checkEveryMs);
			child.on('message', onMessage).on('exit', onExit).on('error', onError);
			child.send(request, (error) => error && onError(error));
		});
	}
}

const TOO_SLOW = 'Reading this file took too long and was stopped; it may be damaged or far too large.';
const TOO_MUCH_MEMORY =
	'Reading this file needed too much memory and was stopped; it may be damaged or far too large.';
