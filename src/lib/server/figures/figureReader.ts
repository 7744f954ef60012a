import { fork, type ChildProcess } from 'node:child_process';
import { log } from '../log/log';
import { standBack, STANDS_BACK } from '../queue/standBack';
import { LedgerRefusal, type LedgerRefusalCode } from '../refusal';
import type { ComputedFigures, FigureAnswer, FigureRequest } from './figureMessages';

/** no page is worth more */
const LONGEST_MS = 120_000;
/** what it has read is kept for so long after the last page, then its memory is given back */
const IDLE_MS = 120_000;
const HEAP_MB = 1536;
/** a page's figures make much that is gone at once: collected sooner it takes a third less memory */
const SPARE_MEMORY = ['--heap-growing-percent=30', '--max-semi-space-size=4'];

interface Waiting {
	readonly request: FigureRequest;
	readonly resolve: (computed: ComputedFigures) => void;
	readonly reject: (error: Error) => void;
	/** a process ended by itself over it */
	brokeOff: boolean;
}

/** The child process that computes figures, one page's after the other; started when first asked. */
export class FigureReader {
	#child: ChildProcess | null = null;
	#waiting: Waiting[] = [];
	#current: Waiting | null = null;
	#timer: ReturnType<typeof setTimeout> | null = null;
	#requests = 0;
	#stopped = false;

	constructor(
		private readonly entry: string,
		private readonly folder: string,
		private readonly longestMs = LONGEST_MS
	) {}

	/** @param somebodyWaits goes before what is only computed in advance */
	compute(asked: Omit<FigureRequest, 'requestId'>, somebodyWaits: boolean): Promise<ComputedFigures> {
		if (this.#stopped) return Promise.reject(new Error('the server stops'));
		return new Promise((resolve, reject) => {
			const request = { ...asked, requestId: ++this.#requests };
			const waiting = { request, resolve, reject, brokeOff: false };
			if (somebodyWaits) this.#waiting.unshift(waiting);
			else this.#waiting.push(waiting);
			this.#next();
		});
	}

	stop(): void {
		this.#stopped = true;
		this.#end(new Error('the server stops'));
		for (const { reject } of this.#waiting.splice(0)) reject(new Error('the server stops'));
	}

	#next(): void {
		if (this.#current) return;
		if (this.#timer) clearTimeout(this.#timer);
		this.#current = this.#waiting.shift() ?? null;
		const idle = this.#current === null;
		const detail = idle ? 'not needed for a while' : `took longer than ${this.longestMs} ms`;
		this.#timer = setTimeout(() => this.#end(new Error(detail)), idle ? IDLE_MS : this.longestMs);
		this.#timer.unref();
		if (!this.#current) return;
		const child = (this.#child ??= this.#start());
		child.send(this.#current.request, (error) => error && this.#child === child && this.#broke(error));
	}

	#start(): ChildProcess {
		const child = fork(this.entry, [String(process.pid), this.folder], {
			serialization: 'advanced',
			execArgv: [`--max-old-space-size=${HEAP_MB}`, ...SPARE_MEMORY],
			stdio: ['ignore', 'ignore', 'pipe', 'ipc']
		});
		// computed beside what people wait for, and shown when it is there
		standBack(child.pid, STANDS_BACK.little);
		child.stderr?.on('data', (piece: Buffer) => log.warn('child said something', { bytes: piece.length }));
		const ended = (why: string) => this.#child === child && this.#broke(new Error(why));
		child.on('message', (answer: FigureAnswer) => this.#child === child && this.#answered(answer));
		child.on('error', (error) => ended(error.message));
		child.on('exit', (code, signal) => ended(`the process ended with ${signal ?? `code ${code}`}`));
		// an idle reader keeps no command and no test from ending
		child.unref();
		child.channel?.unref();
		return child;
	}

	#answered(answer: FigureAnswer): void {
		const current = this.#current;
		if (!current || current.request.requestId !== answer.requestId) return;
		this.#current = null;
		if (answer.kind === 'computed') current.resolve(answer);
		else if (answer.kind === 'refused')
			current.reject(new LedgerRefusal(answer.code as LedgerRefusalCode, answer.sentence));
		else current.reject(new Error(answer.detail));
		this.#next();
	}

	/** The process ended by itself: a fresh one tries once more what it was at. */
	#broke(why: Error): void {
		const current = this.#current;
		if (current && !current.brokeOff) {
			current.brokeOff = true;
			this.#waiting.unshift(current);
			this.#current = null;
		}
		this.#end(why);
	}

	/** Ends the process; what it was at is told why, what waits gets a fresh one. */
	#end(why: Error): void {
		if (this.#timer) clearTimeout(this.#timer);
		const child = this.#child;
		this.#child = null;
		child?.kill('SIGKILL');
		const current = this.#current;
		this.#current = null;
		current?.reject(why);
		if (!this.#stopped && this.#waiting.length > 0) this.#next();
	}
}
