import { ANALYSIS_VERSION } from '$lib/slip/analysisVersion';
import { cpus } from 'node:os';
import type { FileToRead } from '../../../jobs/analysis/messages';
import type { Ledger } from '../ledger/openLedger';
import { askForColumns } from '../columns/askForColumns';
import { sourceColumns } from '../columns/sourceColumns';
import { readLimits } from '../ledger/programLimits';
import { evidenceKey } from '../ledger/remember';
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
	listDerivations,
	releaseDerivation,
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
import {
	beginInsertion,
	failInsertion,
	nextInsertion,
	releaseInsertion,
	saveInsertion,
	type Insertion
} from './insertionQueue';
import { giveLeaseBack, HEARTBEAT_EVERY_MS, keepLease, newHolder, takeLease } from './lease';
import { logOutcome } from './logOutcome';
import { readHints } from './rideHints';
import { ridesTouchedSince } from './ridesTouchedSince';
import { saveImport } from './saveImport';

export interface RunnerOptions {
	/** entry file of the child process; found beside this program when not given */
	readonly entry?: string;
	/** entry file of the child process that unpacks archives; found as the other one when not given */
	readonly unpackEntry?: string;
	/** children at a time; one processor is left for the server */
	readonly children?: number;
	readonly limits?: ChildLimits;
	/** how often an idle runner looks for work, milliseconds */
	readonly lookEveryMs?: number;
}

type Task = { import: QueuedImport } | { derivation: Derivation } | { insertion: Insertion };

/**
 * Analyses what waits in the queue while it holds the ledger's runner lease. Every process may have one;
 * only the holder works, the others look whether the lease has become free.
 */
export class ImportRunner {
	readonly #holder = newHolder();
	readonly #children: AnalysisChild[];
	readonly #busy = new Map<AnalysisChild, { task: Task; work: Promise<void> }>();
	readonly #unpacker: ArchiveUnpacker;
	readonly #lookEveryMs: number;
	/** tasks whose result could not be written (a full disk, say); said so as soon as the ledger can be */
	readonly #failures: { task: Task; detail: string }[] = [];
	/** what has to be derived, as it was at the last entry of the trail that was seen */
	#derivations: Derivation[] | null = null;
	#seenTrail = -1;
	/** evidence at which every ride had its slips put in; nothing is looked for until it changes */
	#allInsertedAt = -1;
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
			() => new AnalysisChild(entry, options.limits ?? childLimits())
		);
		this.#unpacker = new ArchiveUnpacker(
			this.ledger,
			this.#holder,
			() => options.unpackEntry ?? unpackArchiveEntry(),
			() => this.look()
		);
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
			void this.#unpacker.stop();
			if (this.#holding) {
				releaseImports(this.ledger, this.#holder);
				for (const { task } of this.#busy.values()) {
					if ('derivation' in task) releaseDerivation(this.ledger, task.derivation);
					if ('insertion' in task) releaseInsertion(this.ledger, task.insertion);
				}
				giveLeaseBack(this.ledger, 'runner', this.#holder);
				log.info('lease given back', { underWay: this.#busy.size });
			}
			this.#holding = false;
			for (const child of this.#children) child.stop();
		}
		const works = [this.#unpacker.stop(), ...[...this.#busy.values()].map(({ work }) => work)];
		return Promise.all(works).then(() => undefined);
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
			const task = this.#nextTask();
			if (!task) return;
			const work = this.#work(child, task).finally(() => {
				this.#busy.delete(child);
				this.look();
			});
			this.#busy.set(child, { task, work });
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
			this.#derivations = null;
			requeueAbandoned(this.ledger, this.#holder);
		}
		return this.#holding;
	}

	/** New files first: somebody waits for them. Slips are put into rides when nothing else is left. */
	#nextTask(): Task | null {
		const queued = takeNextImport(this.ledger, this.#holder);
		if (queued) return { import: queued };
		const derivation = this.#nextDerivation();
		if (derivation) return { derivation };
		const insertion = this.#nextInsertion();
		return insertion ? { insertion } : null;
	}

	#nextInsertion(): Insertion | null {
		const evidence = evidenceKey(this.ledger);
		if (evidence === this.#allInsertedAt) return null;
		const insertion = nextInsertion(this.ledger, this.#busyRides());
		if (!insertion && this.#busy.size === 0) this.#allInsertedAt = evidence;
		return insertion;
	}

	/** People's corrections leave a trail and may change what a ride's analysis is told: then all is listed anew. */
	#nextDerivation(): Derivation | null {
		const trail = newestTrail(this.ledger);
		if (!this.#derivations || (this.#derivations.length === 0 && trail !== this.#seenTrail)) {
			const busy = new Set(this.#busyRides());
			const known = this.#derivations !== null && this.#seenTrail >= 0;
			const only = known ? ridesTouchedSince(this.ledger, this.#seenTrail) : null;
			const all = listDerivations(this.ledger, only);
			this.#derivations = all.filter(({ rideId }) => !busy.has(rideId));
			// a ride that is worked on with what was known before is looked at again when that is done
			this.#seenTrail = this.#derivations.length === all.length ? trail : -1;
			keepFirstVersion(this.ledger);
		}
		return this.#derivations.shift() ?? null;
	}

	#busyRides(): number[] {
		return [...this.#busy.values()].flatMap(({ task }) =>
			'derivation' in task ? [task.derivation.rideId] : 'insertion' in task ? [task.insertion.rideId] : []
		);
	}

	async #work(child: AnalysisChild, task: Task): Promise<void> {
		try {
			if ('import' in task) await this.#analyseImport(child, task.import);
			else if ('derivation' in task) await this.#derive(child, task.derivation);
			else await this.#insertSlips(child, task.insertion);
		} catch (error) {
			log.failure('result not stored', error);
			const detail = error instanceof Error ? (error.stack ?? error.message) : String(error);
			this.#failures.push({ task, detail });
		}
	}

	async #analyseImport(child: AnalysisChild, queued: QueuedImport): Promise<void> {
		faultPoint('leased');
		const { wheelId = null, bikeId = null } = readHints(this.ledger, queued.hints);
		const bike = bikesOfRides(this.ledger)({ bikeId, wheelId, startMs: null });
		const begunMs = performance.now();
		log.info('file taken up', { import: queued.id, attempt: queued.attempts });
		const outcome = await child.analyse(
			this.#fileOf({ ...queued, bike, columns: sourceColumns(this.ledger.database, queued.sha256) })
		);
		if (this.#stopped) return;
		logOutcome(queued.id, begunMs, outcome);
		if (outcome.kind === 'refused' && outcome.refusal.code === 'columns-not-known')
			askForColumns(this.ledger, queued, outcome.refusal);
		else if (outcome.kind === 'refused') refuseImport(this.ledger, queued, outcome.refusal);
		else if (outcome.kind === 'broke') putBack(this.ledger, queued, outcome.detail);
		else {
			keepFirstVersion(this.ledger);
			saveImport(this.ledger, this.#holder, queued, outcome.file);
		}
	}

	async #derive(child: AnalysisChild, derivation: Derivation): Promise<void> {
		beginDerivation(this.ledger, derivation);
		faultPoint('deriving');
		const outcome = await child.analyse(this.#fileOf(derivation));
		if (this.#stopped) return;
		if (outcome.kind === 'analysed') saveDerivation(this.ledger, this.#holder, derivation, outcome.file);
		else if (outcome.kind === 'refused') failDerivation(this.ledger, derivation, outcome.refusal.sentence);
		else this.#derivations = null;
	}

	async #insertSlips(child: AnalysisChild, insertion: Insertion): Promise<void> {
		beginInsertion(this.ledger, insertion);
		faultPoint('inserting');
		const outcome = await child.insertSlips(this.#fileOf(insertion), insertion.seed);
		if (this.#stopped) return;
		if (outcome.kind === 'inserted') saveInsertion(this.ledger, this.#holder, insertion, outcome.result);
		else if (outcome.kind === 'refused') failInsertion(this.ledger, insertion, outcome.refusal.sentence);
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

function newestTrail(ledger: Ledger): number {
	return ledger.database.prepare<[], { id: number | null }>('SELECT max(id) AS id FROM trail').get()!.id ?? 0;
}
