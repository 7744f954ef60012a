import { PREFIX } from '$lib/address/prefix';
import { sendFile, SendRefused } from '../sendFile';
import { hashOf, resumeFile } from './resumeFile';
import { timeLeft } from './timeLeft';

export type BulkStage = 'waiting' | 'sending' | 'sent' | 'known' | 'refused' | 'interrupted';

export interface BulkFile {
	readonly key: number;
	readonly file: File;
	/** where it lay in the folder that was dropped; "" = chosen by itself */
	readonly folder: string;
	readonly hints: Readonly<Record<string, unknown>>;
	stage: BulkStage;
	sentBytes: number;
	sentence: string;
	/** as the server named it, to go on after a break */
	uploadId?: string;
	/** asked whether the ledger has it */
	asked: boolean;
	/** how often it broke off since somebody wanted it sent */
	broke: number;
}

export interface BulkView {
	/** those of which somebody wants to see a line: under way, refused or broken off, and the next that wait */
	readonly shown: readonly BulkFile[];
	readonly counts: Readonly<Record<BulkStage | 'all', number>>;
	readonly doneBytes: number;
	readonly allBytes: number;
	/** seconds; null = not known yet */
	readonly leftS: number | null;
	readonly state: 'idle' | 'sending' | 'paused';
}

export interface BulkOptions {
	readonly fetch: typeof fetch;
	readonly onChange: () => void;
	/** files at a time: one is on its way while the other is announced or finished */
	readonly atOnce?: number;
	/** for a phone's line: small pieces at first, and also smaller files that broke off are gone on with */
	readonly slowLine?: boolean;
	/** said beside a file whose connection broke */
	readonly brokeSentence?: string;
	readonly nowMs?: () => number;
	readonly wait?: (ms: number) => Promise<void>;
}

const SHOWN = 12;
const ASKED_TOGETHER = 40;
/** more is not read before something is sent: large files would keep the line idle for minutes */
const ASKED_TOGETHER_BYTES = 64 * 2 ** 20;
/** so often a file that broke off is sent again by itself, once another one shows that the line is back */
const GOES_ON_BY_ITSELF = 2;
/** larger ones are asked for by the pieces that came; a hash of the whole would hold the file in memory */
const LARGEST_HASHED_BYTES = 64 * 2 ** 20;
/** a quarter of a megabyte is ten seconds of a slow line */
const SLOW_PIECE_BYTES = 2 ** 18;
const SLOW_LEAST_BYTES = 2 * SLOW_PIECE_BYTES;

/**
 * Sends any number of files one after another by the resumable protocol: can be paused, gone on with, given up and
 * repeated. A file that the ledger has already is not sent. The server holds what arrived; this holds no state that
 * a closed page could lose: the same files chosen again are asked for first.
 */
export class BulkSend {
	readonly #files: BulkFile[] = [];
	readonly #speed: ReturnType<typeof timeLeft>;
	#keys = 0;
	#workers = 0;
	#paused = false;
	#stop = new AbortController();
	#asking: Promise<void> = Promise.resolve();

	constructor(private readonly options: BulkOptions) {
		this.#speed = timeLeft(options.nowMs ?? (() => performance.now()));
	}

	add(files: readonly { file: File; folder: string }[], hints: Readonly<Record<string, unknown>>): void {
		for (const { file, folder } of files) {
			const fresh = { stage: 'waiting', sentBytes: 0, sentence: '', asked: false, broke: 0 } as const;
			this.#files.push({ key: this.#keys++, file, folder, hints, ...fresh });
		}
		this.goOn();
	}

	pause(): void {
		this.#paused = true;
		this.#stop.abort();
		this.#changed();
	}

	goOn(): void {
		this.#paused = false;
		if (this.#stop.signal.aborted) this.#stop = new AbortController();
		this.#speed.restart();
		this.#fill();
		this.#changed();
	}

	#fill(): void {
		if (this.#paused || this.#stop.signal.aborted) return;
		const wanted = Math.min(this.options.atOnce ?? 2, this.#waiting().length);
		while (this.#workers < wanted) {
			this.#workers++;
			void this.#work(this.#stop.signal).finally(() => {
				this.#workers--;
				// one that was stopped may end after somebody went on
				this.#fill();
				this.#changed();
			});
		}
	}

	/** What has arrived stays; what is on its way is taken back, what waits is forgotten. */
	async cancel(): Promise<void> {
		this.#paused = false;
		this.#stop.abort();
		const begun = this.#files.filter(({ stage, uploadId }) => isOpen(stage) && uploadId !== undefined);
		for (let i = this.#files.length - 1; i >= 0; i--)
			if (isOpen(this.#files[i].stage)) this.#files.splice(i, 1);
		this.#changed();
		for (const { uploadId } of begun) await this.#takeBack(uploadId!);
	}

	async #takeBack(uploadId: string): Promise<void> {
		await this.options
			.fetch(`${PREFIX}/uploads/${encodeURIComponent(uploadId)}`, { method: 'DELETE' })
			.catch(() => undefined);
	}

	/** Files that broke off wait again: one, or all of them. */
	retry(key?: number): void {
		for (const one of this.#files) {
			if (one.stage !== 'interrupted' || (key !== undefined && one.key !== key)) continue;
			one.broke = 0;
			waitAgain(one);
		}
		this.goOn();
	}

	/** A file arrived: what broke off before it is sent again, so that nobody has to watch a line that comes and goes. */
	#lineIsBack(): void {
		for (const one of this.#files)
			if (one.stage === 'interrupted' && one.broke <= GOES_ON_BY_ITSELF) waitAgain(one);
		this.#fill();
	}

	view(): BulkView {
		const counts = { all: 0, waiting: 0, sending: 0, sent: 0, known: 0, refused: 0, interrupted: 0 };
		let doneBytes = 0;
		let allBytes = 0;
		/** of files that are not sent unless somebody says so */
		let heldBytes = 0;
		for (const { stage, file, sentBytes } of this.#files) {
			counts.all++;
			counts[stage]++;
			allBytes += file.size;
			doneBytes += isOpen(stage) || stage === 'interrupted' ? sentBytes : file.size;
			if (stage === 'interrupted') heldBytes += file.size - sentBytes;
		}
		const state = this.#paused && counts.waiting > 0 ? 'paused' : this.#workers > 0 ? 'sending' : 'idle';
		const leftS = state === 'sending' ? this.#speed.leftS(allBytes - doneBytes - heldBytes) : null;
		return { shown: this.#shown(), counts, doneBytes, allBytes, leftS, state };
	}

	#shown(): BulkFile[] {
		if (this.#files.length <= SHOWN) return [...this.#files];
		const order: BulkStage[] = ['sending', 'refused', 'interrupted', 'waiting'];
		return order
			.flatMap((stage) => this.#files.filter((one) => one.stage === stage).slice(0, SHOWN))
			.slice(0, SHOWN);
	}

	#waiting(): BulkFile[] {
		return this.#files.filter(({ stage }) => stage === 'waiting');
	}

	async #work(signal: AbortSignal): Promise<void> {
		while (!signal.aborted) {
			// one asks for both: the answers are shared
			this.#asking = this.#asking.then(() => this.#askAhead(signal));
			await this.#asking;
			const next = this.#files.find(({ stage, asked }) => stage === 'waiting' && asked);
			if (!next) return;
			await this.#send(next, signal);
		}
	}

	/** Asks for the next files whether the ledger has them, unless the answer is there already. */
	async #askAhead(signal: AbortSignal): Promise<void> {
		const waiting = this.#waiting();
		if (waiting.length === 0 || waiting[0].asked || signal.aborted) return;
		const batch = askedTogether(waiting);
		const hashes = new Map<string, BulkFile[]>();
		for (const one of batch) {
			one.asked = true;
			const sha256 = one.file.size <= LARGEST_HASHED_BYTES ? await hashOf(one.file) : null;
			if (sha256) hashes.set(sha256, [...(hashes.get(sha256) ?? []), one]);
		}
		for (const sha256 of await this.#known([...hashes.keys()])) {
			for (const one of hashes.get(sha256) ?? []) {
				if (one.stage !== 'waiting') continue;
				one.stage = 'known';
				one.sentence = 'already in the ledger, not sent again';
			}
		}
		this.#changed();
	}

	/** an answer that does not come costs nothing but sending: the server counts a file once */
	async #known(hashes: readonly string[]): Promise<string[]> {
		if (hashes.length === 0) return [];
		try {
			const response = await this.options.fetch(`${PREFIX}/uploads/known`, {
				method: 'POST',
				headers: { 'content-type': 'application/json' },
				body: JSON.stringify({ hashes })
			});
			const { known } = (await response.json()) as { known?: string[] };
			return response.ok ? (known ?? []) : [];
		} catch {
			return [];
		}
	}

	async #send(one: BulkFile, signal: AbortSignal): Promise<void> {
		const { fetch, wait, slowLine, nowMs } = this.options;
		one.stage = 'sending';
		this.#changed();
		/** what the server held before is not what the line brings now */
		let countedBytes: number | null = null;
		try {
			one.uploadId ??= await resumeFile(one.file, fetch, signal, slowLine ? SLOW_LEAST_BYTES : undefined);
			await sendFile(one.file, {
				fetch,
				wait,
				nowMs,
				firstPieceBytes: slowLine ? SLOW_PIECE_BYTES : undefined,
				signal,
				hints: one.hints,
				uploadId: one.uploadId,
				onAnnounced: (uploadId) => {
					one.uploadId = uploadId;
					// the file was given up while the server answered
					if (signal.aborted && !this.#files.includes(one)) void this.#takeBack(uploadId);
				},
				onProgress: ({ sentBytes }) => {
					if (countedBytes !== null) this.#speed.add(Math.max(0, sentBytes - countedBytes));
					countedBytes = sentBytes;
					one.sentBytes = sentBytes;
					this.#changed();
				}
			});
			one.stage = 'sent';
			this.#lineIsBack();
		} catch (error) {
			if (signal.aborted) one.stage = 'waiting';
			else if (error instanceof SendRefused) {
				one.stage = 'refused';
				one.sentence = error.sentence;
			} else {
				one.stage = 'interrupted';
				one.broke++;
				one.sentence = this.options.brokeSentence ?? 'The connection broke. What arrived is kept; try again.';
			}
		}
		this.#changed();
	}

	#changed(): void {
		this.options.onChange();
	}
}

function isOpen(stage: BulkStage): boolean {
	return stage === 'waiting' || stage === 'sending';
}

function waitAgain(one: BulkFile): void {
	one.stage = 'waiting';
	one.sentence = '';
}

/** The next files to ask for: so many, and no more bytes than are hashed in a moment; one in any case. */
function askedTogether(waiting: readonly BulkFile[]): BulkFile[] {
	let bytes = 0;
	const end = waiting.findIndex(({ file }, i) => {
		if (file.size <= LARGEST_HASHED_BYTES) bytes += file.size;
		return i === ASKED_TOGETHER || (i > 0 && bytes > ASKED_TOGETHER_BYTES);
	});
	return waiting.slice(0, end < 0 ? waiting.length : end);
}
