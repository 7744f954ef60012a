import { ANALYSIS_VERSION } from '$lib/slip/analysisVersion';
import { cpus } from 'node:os';
import type { FileToRead } from '../../../jobs/analysis/messages';
import type { Ledger } from '../ledger/openLedger';
import { askForColumns } from '../columns/askForColumns';
import { sourceColumns } from '../columns/sourceColumns';
import { readLimits } from '../ledger/programLimits';
import { inTurn } from '../inTurn';
import { log } from '../log/log';
import { faultPoint } from '../store/faultPoint';
import { sourcePath } from '../store/sourceStore';
import { AnalysisChild, childLimits, type ChildLimits } from './analysisChild';
import { ArchiveUnpacker } from '../unpack/archiveUnpacker';
import { analyseFileEntry, unpackArchiveEntry } from './analyseFileEntry';
import { currentVersion, keepFirstVersion } from './analysisVersions';
import { bikesOfRides } from './bikeOfRide';
import {
	beginDerivation,
	failDerivation,
	releaseDerivation,
	saveDerivation,
	type Derivation
} from './derivations';
import { putBack, refuseImport, releaseImports, requeueAbandoned, type QueuedImport } from './importQueue';
import {
	beginInsertion,
	failInsertion,
	releaseInsertion,
	saveInsertion,
	type Insertion
} from './insertionQueue';
import { giveLeaseBack, HEARTBEAT_EVERY_MS, keepLease, newHolder, takeLease } from './lease';
import { logOutcome } from './logOutcome';
import { readHints } from './rideHints';
import { saveImport } from './saveImport';
import { STANDS_BACK } from './standBack';
import { WaitingWork, type Task } from './waitingWork';

export interface RunnerOptions {
	/** entry file of the child process; found beside this program when not given */
	readonly entry?: string;
	/** entry file of the child process that unpacks archives; found as the other one when not given */
	readonly unpackEntry?: string;
	/**
	 * Children at a time. When not given, one less than processors, and one more that works with what these, the server
	 * and other programs leave over: files go to it last.
	 */
	readonly children?: number;
	readonly limits?: ChildLimits;
	/** how often an idle runner looks for work, milliseconds */
	readonly lookEveryMs?: number;
}

/** A file that is read, or whose result waits to be stored. */
interface UnderWay {
	readonly task: Task;
	readonly work: Promise<void>;
}

/** results that may wait to be stored, for each child; then it gets no other file */
const MOST_WAITING = 2;

/**
 * Analyses what waits in the queue while it holds the ledger's runner lease. Every process may have one;
 * only the holder works, the others look whether the lease has become free.
 */
export class ImportRunner {
	readonly #holder = newHolder();
	readonly #children: AnalysisChild[];
	/** children that read a file */
	readonly #busy = new Set<AnalysisChild>();
	readonly #underWay = new Set<UnderWay>();
	readonly #unpacker: ArchiveUnpacker;
	readonly #lookEveryMs: number;
	/** tasks whose result could not be written (a full disk, say); said so as soon as the ledger can be */
	readonly #failures: { task: Task; detail: string }[] = [];
	readonly #waiting: WaitingWork;
	#holding = false;
	#stopped = false;
	#lastHeartbeat = 0;
	#looking: ReturnType<typeof setInterval> | null = null;

	constructor(
		private readonly ledger: Ledger,
		options: RunnerOptions = {}
	) {
		const entry = options.entry ?? analyseFileEntry();
		const limits = options.limits ?? childLimits();
		const newChild = (standsBackBy: number) => new AnalysisChild(entry, limits, standsBackBy);
		const count = options.children ?? Math.max(1, cpus().length - 1);
		const spare = options.children === undefined && cpus().length > 1 ? 1 : 0;
		this.#children = [
			...Array.from({ length: count }, () => newChild(STANDS_BACK.little)),
			...Array.from({ length: spare }, () => newChild(STANDS_BACK.far))
		];
		this.#unpacker = new ArchiveUnpacker(
			this.ledger,
			this.#holder,
			() => options.unpackEntry ?? unpackArchiveEntry(),
			() => this.look()
		);
		this.#waiting = new WaitingWork(ledger, this.#holder, () => [...this.#underWay].map(({ task }) => task));
		this.#lookEveryMs = options.lookEveryMs ?? 400;
	}

	/** true while this process is the one that analyses */
	get holding(): boolean {
		return this.#holding;
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
			try {
				this.#handBack();
			} catch (error) {
				// a full disk must not keep a server from stopping: whoever comes next takes over, as after a kill
				log.failure('work not handed back', error);
			}
			this.#holding = false;
			for (const child of this.#children) child.stop();
		}
		const works = [this.#unpacker.stop(), ...[...this.#underWay].map(({ work }) => work)];
		return Promise.all(works).then(() => undefined);
	}

	#handBack(): void {
		void this.#unpacker.stop();
		if (!this.#holding) return;
		releaseImports(this.ledger, this.#holder);
		for (const { task } of this.#underWay) {
			if ('derivation' in task) releaseDerivation(this.ledger, task.derivation);
			if ('insertion' in task) releaseInsertion(this.ledger, task.insertion);
		}
		giveLeaseBack(this.ledger, 'runner', this.#holder);
		log.info('lease given back', { underWay: this.#underWay.size });
	}

	/** One look at lease and queue; called on a timer, and at once when something was queued. */
	look(): void {
		try {
			this.#look();
		} catch (error) {
			// a locked or full disk passes; the next look tries again
			log.failure('queue could not be read', error);
		}
	}

	#look(): void {
		if (this.#stopped || !this.#holdLease()) return;
		for (; this.#failures.length > 0; this.#failures.shift()) {
			const [{ task, detail }] = this.#failures;
			if ('import' in task) putBack(this.ledger, task.import, detail);
			else if ('derivation' in task) failDerivation(this.ledger, task.derivation, detail);
			// the attempt to put slips in was counted when it began
		}
		this.#unpacker.look();
		for (const child of this.#children) {
			if (this.#busy.has(child)) continue;
			if (this.#underWay.size >= this.#children.length * (1 + MOST_WAITING)) return;
			const task = this.#waiting.next();
			if (!task) return;
			this.#busy.add(child);
			const work = this.#work(child, task).finally(() => {
				this.#underWay.delete(underWay);
				this.look();
			});
			const underWay = { task, work };
			this.#underWay.add(underWay);
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
			log.info('lease taken');
			this.#waiting.lookAnew();
			requeueAbandoned(this.ledger, this.#holder);
		}
		return this.#holding;
	}

	async #work(child: AnalysisChild, task: Task): Promise<void> {
		try {
			const store = await this.#read(child, task).finally(() => this.#busy.delete(child));
			// the child reads the next file while this one's result is stored
			this.look();
			await inTurn(() => this.#stopped || store());
		} catch (error) {
			log.failure('result not stored', error);
			const detail = error instanceof Error ? (error.stack ?? error.message) : String(error);
			this.#failures.push({ task, detail });
		}
	}

	/** Has a child read the file; what it found is stored by what this returns. */
	#read(child: AnalysisChild, task: Task): Promise<() => void> {
		if ('import' in task) return this.#analyseImport(child, task.import);
		if ('derivation' in task) return this.#derive(child, task.derivation);
		return this.#insertSlips(child, task.insertion);
	}

	async #analyseImport(child: AnalysisChild, queued: QueuedImport): Promise<() => void> {
		faultPoint('leased');
		const { wheelId = null, bikeId = null } = readHints(this.ledger, queued.hints);
		const bike = bikesOfRides(this.ledger)({ bikeId, wheelId, startMs: null });
		const begunMs = performance.now();
		log.info('file taken up', { import: queued.id, attempt: queued.attempts });
		const outcome = await child.analyse(
			this.#fileOf({ ...queued, bike, columns: sourceColumns(this.ledger.database, queued.sha256) })
		);
		return () => {
			logOutcome(queued.id, begunMs, outcome);
			if (outcome.kind === 'refused' && outcome.refusal.code === 'columns-not-known')
				askForColumns(this.ledger, queued, outcome.refusal);
			else if (outcome.kind === 'refused') refuseImport(this.ledger, queued, outcome.refusal);
			else if (outcome.kind === 'broke') putBack(this.ledger, queued, outcome.detail);
			else {
				keepFirstVersion(this.ledger);
				saveImport(this.ledger, this.#holder, queued, outcome.file);
			}
		};
	}

	async #derive(child: AnalysisChild, derivation: Derivation): Promise<() => void> {
		beginDerivation(this.ledger, derivation);
		faultPoint('deriving');
		const outcome = await child.analyse(this.#fileOf(derivation));
		return () => {
			if (outcome.kind === 'analysed') saveDerivation(this.ledger, this.#holder, derivation, outcome.file);
			else if (outcome.kind === 'refused') failDerivation(this.ledger, derivation, outcome.refusal.sentence);
			else this.#waiting.lookAnew();
		};
	}

	async #insertSlips(child: AnalysisChild, insertion: Insertion): Promise<() => void> {
		beginInsertion(this.ledger, insertion);
		faultPoint('inserting');
		const outcome = await child.insertSlips(this.#fileOf(insertion), insertion.seed);
		return () => {
			if (outcome.kind === 'inserted') saveInsertion(this.ledger, this.#holder, insertion, outcome.result);
			else if (outcome.kind === 'refused') failInsertion(this.ledger, insertion, outcome.refusal.sentence);
		};
	}

	#fileOf({ sha256, ...told }: { sha256: string } & Omit<FileToRead, 'path' | 'limits'>): FileToRead {
		const { fileName, bike, columns } = told;
		return {
			path: sourcePath(this.ledger.folder, sha256),
			fileName,
			bike,
			limits: readLimits(),
			columns
		};
	}
}
