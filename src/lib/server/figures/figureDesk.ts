import type { NumberWords } from '$lib/release/criteria';
import { toInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import { log } from '../log/log';
import type { Instant } from '../views';
import { figureKey, isSame, ridesSince, sameWord, type FigureKey } from './figureKey';
import { computeFigures, type Asked, type FigureKind, type Figures } from './figureKinds';
import type { FigureReader } from './figureReader';
import { unpackFigures } from './figureText';
import { KeptFigures } from './keptFigures';
import { areManyRides, countRides } from './manyRides';

/** Figures from before some rides came in: when they were computed, and how many rides are not in them. */
export interface FiguresSince {
	readonly computedAt: Instant;
	readonly rides: number;
}

/** What a page has to show: figures, or what they are being computed from. */
export type Shown<Value> =
	| { readonly figures: Value; readonly since: FiguresSince | null; readonly computing: null }
	| { readonly figures: null; readonly since: null; readonly computing: { readonly rides: number } };

export interface ShowOptions {
	/** figures may miss rides that the queue read since; never what a person signs */
	readonly mayBeOlder: boolean;
	/** rather wait than be told what is being computed */
	readonly wait: boolean;
}

/** how figures are written in sentences, and what another process needs to write them alike */
export type FigureWords = NumberWords & { readonly locale: string; readonly zone: string };

interface UnderWay {
	readonly askedAt: FigureKey;
	readonly done: Promise<KeptFigure>;
}
interface KeptFigure {
	readonly key: FigureKey;
	readonly bytes: Uint8Array;
	readonly computedMs: number;
	readonly tookMs: number;
}

/** Figures that miss a few rides are computed anew at most so often, and in at most a tenth of the time. */
const SHORTEST_PAUSE_MS = 5_000;
const SHARE_OF_TIME = 10;
/** so many stay read, because the next who asks is likely to ask for the same; others are bytes alone */
const MOST_READ = 4;

/**
 * Gives pages their figures. Of few rides they are computed at once; of many in a child process, and while the queue
 * reads files a page gets those that there are, with the words that they miss some rides. Whatever a person says is in
 * the figures at once: then they are computed before the page is answered.
 */
export class FigureDesk {
	readonly #kept = new KeptFigures<KeptFigure>();
	/** figures that were shown last, as read from the bytes that are kept */
	readonly #read = new Map<string, { readonly from: KeptFigure; readonly figures: object }>();
	readonly #underWay = new Map<string, UnderWay>();
	readonly #planned = new Map<string, ReturnType<typeof setTimeout>>();

	/** @param reader null = there is none (development server): everything is computed at once */
	constructor(
		private readonly ledger: Ledger,
		private readonly reader: Pick<FigureReader, 'compute' | 'stop'> | null,
		private readonly shortestPauseMs = SHORTEST_PAUSE_MS
	) {}

	async show<Kind extends FigureKind>(
		kind: Kind,
		asked: Asked<Kind>,
		words: FigureWords,
		options: ShowOptions
	): Promise<Shown<Figures<Kind>>> {
		if (!this.reader || !areManyRides(this.ledger))
			return { figures: computeFigures(this.ledger, kind, asked, words), since: null, computing: null };
		const name = JSON.stringify([kind, asked, words.locale, words.zone]);
		const key = figureKey(this.ledger);
		const kept = this.#kept.get(name);
		const begin = (somebodyWaits: boolean) => this.#begin(name, kind, asked, words, somebodyWaits);
		if (kept && (isSame(kept.key, key) || (options.mayBeOlder && sameWord(kept.key, key)))) {
			if (!isSame(kept.key, key)) this.#plan(name, kept, begin);
			return this.#shown(name, kept);
		}
		const joins = options.mayBeOlder ? sameWord : isSame;
		const before = this.#underWay.get(name);
		const underWay = before && joins(before.askedAt, key) ? before : begin(true);
		if (options.wait) return this.#shown(name, await underWay.done);
		underWay.done.catch((error) => log.failure('figures not computed', error));
		return { figures: null, since: null, computing: { rides: countRides(this.ledger) } };
	}

	stop(): void {
		for (const timer of this.#planned.values()) clearTimeout(timer);
		this.reader?.stop();
	}

	#begin(
		name: string,
		kind: FigureKind,
		asked: unknown,
		{ locale, zone }: FigureWords,
		somebodyWaits: boolean
	): UnderWay {
		const beganMs = performance.now();
		const done = this.reader!.compute({ kind, asked, locale, zone }, somebodyWaits).then(({ key, bytes }) => {
			const kept = { key, bytes, computedMs: Date.now(), tookMs: performance.now() - beganMs };
			const newer = this.#kept.get(name);
			if (!newer || newer.key.changes <= key.changes) this.#kept.set(name, kept);
			return kept;
		});
		const underWay = { askedAt: figureKey(this.ledger), done };
		this.#underWay.set(name, underWay);
		const ended = () => this.#underWay.get(name) === underWay && this.#underWay.delete(name);
		done.then(ended, ended);
		return underWay;
	}

	/** Has figures that miss rides computed anew, soon; while many files come in not after each of them. */
	#plan(name: string, kept: KeptFigure, begin: (somebodyWaits: boolean) => UnderWay): void {
		if (this.#planned.has(name) || this.#underWay.has(name)) return;
		const pauseMs = Math.max(this.shortestPauseMs, SHARE_OF_TIME * kept.tookMs);
		const timer = setTimeout(
			() => {
				this.#planned.delete(name);
				if (!this.#underWay.has(name))
					begin(false).done.catch((error) => log.failure('figures not computed', error));
			},
			Math.max(0, kept.computedMs + pauseMs - Date.now())
		);
		timer.unref();
		this.#planned.set(name, timer);
	}

	/** Everybody gets the same object: nobody may change it. */
	#figures(name: string, kept: KeptFigure): object {
		const known = this.#read.get(name);
		const figures = known?.from === kept ? known.figures : unpackFigures(kept.bytes);
		this.#read.delete(name);
		this.#read.set(name, { from: kept, figures });
		if (this.#read.size > MOST_READ) this.#read.delete(this.#read.keys().next().value!);
		return figures;
	}

	#shown<Value>(name: string, kept: KeptFigure): Shown<Value> {
		const { key, computedMs } = kept;
		const since = isSame(key, figureKey(this.ledger))
			? null
			: { computedAt: toInstant(computedMs), rides: ridesSince(this.ledger, key) };
		return { figures: this.#figures(name, kept) as Value, since, computing: null };
	}
}
