import { ANALYSIS_VERSION } from '$lib/slip/analysisVersion';
import { cpus } from 'node:os';
import type { Ledger } from '../ledger/openLedger';
import { faultPoint } from '../store/faultPoint';
import { sourcePath } from '../store/sourceStore';
import { AnalysisChild, DEFAULT_LIMITS, type ChildLimits } from './analysisChild';
import { analyseFileEntry } from './analyseFileEntry';
import { currentVersion, keepFirstVersion, switchVersionWhenComplete } from './analysisVersions';
import {
	beginDerivation,
	failDerivation,
	listDerivations,
	saveDerivation,
	type Derivation
} from './derivations';
import {
	putBack,
	refuseImport,
	releaseImports,
	requeueAbandoned,
	takeNextImport,
	type QueuedImport
} from './importQueue';
import { giveLeaseBack, HEARTBEAT_EVERY_MS, keepLease, newHolder, takeLease } from './lease';
import { saveImport } from './saveImport';

export interface RunnerOptions {
	/** entry file of the child process; found beside this program when not given */
	readonly entry?: string;
	/** children at a time; one processor is left for the server */
	readonly children?: number;
	readonly limits?: ChildLimits;
	/** how often an idle runner looks for work, milliseconds */
	readonly lookEveryMs?: number;
}

type Task = { import: QueuedImport } | { derivation: Derivation };

/**
 * Analyses what waits in the queue while it holds the ledger's runner lease. Every process may have one;
 * only the holder works, the others look whether the lease has become free.
 */
export class ImportRunner {
	readonly #holder = newHolder();
	readonly #children: AnalysisChild[];
	readonly #busy = new Map<AnalysisChild, Promise<void>>();
	readonly #lookEveryMs: number;
	/** tasks whose result could not be written (a full disk, say); said so as soon as the ledger can be */
	readonly #failures: { task: Task; detail: string }[] = [];
	#derivations: Derivation[] | null = null;
	#holding = false;
	#stopped = false;
	#lastHeartbeat = 0;
	#looking: ReturnType<typeof setInterval> | null = null;

	constructor(
		private readonly ledger: Ledger,
		options: RunnerOptions = {}
	) {
		const entry = options.entry ?? analyseFileEntry();
		const count = options.children ?? Math.max(1, cpus().length - 1);
		this.#children = Array.from(
			{ length: count },
			() => new AnalysisChild(entry, options.limits ?? DEFAULT_LIMITS)
		);
		this.#lookEveryMs = options.lookEveryMs ?? 400;
	}

	/** true while this process is the one that analyses */
	get holding(): boolean {
		return this.#holding;
	}

	/** true when this process analyses and nothing is left to do */
	get idle(): boolean {
		return this.#holding && this.#busy.size === 0 && (this.#derivations?.length ?? 1) === 0;
	}

	start(): void {
		this.#looking = setInterval(() => this.look(), this.#lookEveryMs);
		this.look();
	}

	/**
	 * Puts unfinished files back into the queue, hands the lease back and ends the children. All that touches
	 * the ledger is done when this returns its promise, so that a process which is told to end may end; the
	 * promise resolves when no work is left.
	 */
	stop(): Promise<void> {
		if (this.#looking) clearInterval(this.#looking);
		if (!this.#stopped) {
			this.#stopped = true;
			if (this.#holding) {
				releaseImports(this.ledger, this.#holder);
				giveLeaseBack(this.ledger, 'runner', this.#holder);
			}
			this.#holding = false;
			for (const child of this.#children) child.stop();
		}
		return Promise.all(this.#busy.values()).then(() => undefined);
	}

	/** One look at lease and queue; called on a timer, and at once when something was queued. */
	look(): void {
		try {
			this.#look();
		} catch (error) {
			// a locked or full disk passes; the next look tries again
			console.error('The import queue could not be read:', error);
		}
	}

	#look(): void {
		if (this.#stopped || !this.#holdLease()) return;
		for (; this.#failures.length > 0; this.#failures.shift()) {
			const [{ task, detail }] = this.#failures;
			if ('import' in task) putBack(this.ledger, task.import, detail);
			else failDerivation(this.ledger, task.derivation, detail);
		}
		for (const child of this.#children) {
			if (this.#busy.has(child)) continue;
			const task = this.#nextTask();
			if (!task) return;
			const work = this.#work(child, task).finally(() => {
				this.#busy.delete(child);
				this.look();
			});
			this.#busy.set(child, work);
		}
	}

	#holdLease(): boolean {
		const now = Date.now();
		if (this.#holding && now - this.#lastHeartbeat < HEARTBEAT_EVERY_MS) return true;
		if (this.#holding && keepLease(this.ledger, 'runner', this.#holder)) {
			this.#lastHeartbeat = now;
			return true;
		}
		// an older program must not mix its results into a ledger that has moved on
		if (currentVersion(this.ledger) > ANALYSIS_VERSION) return false;
		this.#holding = takeLease(this.ledger, 'runner', this.#holder);
		if (this.#holding) {
			this.#lastHeartbeat = now;
			this.#derivations = null;
			requeueAbandoned(this.ledger, this.#holder);
		}
		return this.#holding;
	}

	/** New files first: somebody waits for them. */
	#nextTask(): Task | null {
		const queued = takeNextImport(this.ledger, this.#holder);
		if (queued) return { import: queued };
		this.#derivations ??= listDerivations(this.ledger);
		const derivation = this.#derivations.shift();
		if (derivation) return { derivation };
		if (this.#busy.size === 0) switchVersionWhenComplete(this.ledger);
		return null;
	}

	async #work(child: AnalysisChild, task: Task): Promise<void> {
		try {
			if ('import' in task) await this.#analyseImport(child, task.import);
			else await this.#derive(child, task.derivation);
		} catch (error) {
			const detail = error instanceof Error ? (error.stack ?? error.message) : String(error);
			this.#failures.push({ task, detail });
		}
	}

	async #analyseImport(child: AnalysisChild, queued: QueuedImport): Promise<void> {
		faultPoint('leased');
		const path = sourcePath(this.ledger.folder, queued.sha256);
		const outcome = await child.analyse(path, queued.fileName);
		if (this.#stopped) return;
		if (outcome.kind === 'refused') refuseImport(this.ledger, queued, outcome.refusal);
		else if (outcome.kind === 'broke') putBack(this.ledger, queued, outcome.detail);
		else {
			keepFirstVersion(this.ledger);
			saveImport(this.ledger, this.#holder, queued, outcome.file);
		}
	}

	async #derive(child: AnalysisChild, derivation: Derivation): Promise<void> {
		beginDerivation(this.ledger, derivation);
		const path = sourcePath(this.ledger.folder, derivation.sha256);
		const outcome = await child.analyse(path, derivation.fileName);
		if (this.#stopped) return;
		if (outcome.kind === 'analysed') saveDerivation(this.ledger, this.#holder, derivation, outcome.file);
		else if (outcome.kind === 'refused') failDerivation(this.ledger, derivation, outcome.refusal.sentence);
		else this.#derivations = null;
	}
}
