import latin from '@fontsource-variable/source-sans-3/files/source-sans-3-latin-wght-normal.woff2?url';
import type { Inks } from './canvasInks.svelte';
import type { FromPainter, PaintJob, SentJob, SentLine, ToPainter } from './paintMessages';
import type { DotPoints, LineValues, SceneLine } from './paintScene';
import { placedCanvas } from './placedCanvas';

/** a thread that has not answered for so long will not answer */
const PATIENCE_MS = 10_000;

/** values of a line beyond which only what is shown travels: at a logger's own rate a ride has millions */
const MOST_WHOLE = 65_536;

/** the page's own, which it has fetched already */
const FACE = 'Source Sans 3 Variable';

/** Somebody who changes together with the pictures: see `withPictures`. */
interface Follower {
	/** pictures are asked for: what it is now belongs to them */
	readonly ask: () => void;
	/** they are on the screen */
	readonly show: () => void;
}

/**
 * Has pictures painted by a thread of its own, so that the page has its own free for the pointer and the keys. What
 * comes back is shown in one frame together with what belongs to it. While it paints, the newest scene of each canvas
 * waits and older ones are forgotten; all that wait are painted together. Where there is no such thread, or it fails,
 * `usable` is false and drawings are painted on the page.
 */
class PaintThread {
	usable = $state(
		typeof Worker !== 'undefined' &&
			typeof OffscreenCanvas !== 'undefined' &&
			typeof ImageBitmapRenderingContext !== 'undefined'
	);
	#worker: Worker | null = null;
	#numbers = 0;
	/** what shows the pictures, by the numbers of their canvases */
	#screens = new Map<number, ImageBitmapRenderingContext>();
	/** what is being painted, in its order */
	#asked: readonly PaintJob[] = [];
	#followers = new Set<Follower>();
	#waiting = new Map<number, PaintJob>();
	/** numbers of inks, dots and values that it knows */
	#known = new WeakMap<object, number>();
	/** values of lines that were shown before */
	#met = new WeakSet<LineValues>();
	/** it paints, or is about to be asked to; since when, by the clock of `performance` */
	#busy = false;
	#busySinceMs = 0;
	/** the number of the dots of a canvas */
	#pointsOf = new Map<number, number>();
	#late: ReturnType<typeof setTimeout> | undefined;

	/** Takes a canvas to show pictures on; null when that failed. */
	take(canvas: HTMLCanvasElement): number | null {
		try {
			const screen = canvas.getContext('bitmaprenderer');
			if (!screen) throw new Error('no pictures');
			this.#worker ??= this.#begun();
			this.#screens.set(++this.#numbers, screen);
			return this.#numbers;
		} catch {
			this.#giveUp();
			return null;
		}
	}

	/** The canvas is gone. */
	drop(id: number): void {
		this.#waiting.delete(id);
		this.#screens.delete(id);
		this.#say({ gone: id });
		this.#forgetPoints(id);
		// what it knows of a ride goes with the last drawing
		if (!this.#screens.size) this.#end();
	}

	paint(job: PaintJob): void {
		if (!this.#worker) return;
		this.#waiting.set(job.id, job);
		if (this.#busy && performance.now() - this.#busySinceMs > PATIENCE_MS) this.#giveUp();
		else this.settle();
	}

	/** @returns what ends it */
	follow(follower: Follower): () => void {
		this.#followers.add(follower);
		return () => this.#followers.delete(follower);
	}

	/** Something has changed: it is shown with the pictures that were asked for together with it, or at once. */
	settle(): void {
		if (this.#busy || !this.usable) return;
		this.#busy = true;
		this.#busySinceMs = performance.now();
		// all drawings of a frame in one message
		queueMicrotask(() => this.#send());
	}

	#send(): void {
		const jobs = [...this.#waiting.values()];
		this.#waiting.clear();
		for (const { ask } of this.#followers) ask();
		this.#busy = jobs.length > 0;
		if (!this.#busy) return this.#show([]);
		this.#busySinceMs = performance.now();
		const sent = jobs.map((job) => ({ ...job, inks: this.#numberOf(job.inks), scene: this.#sent(job) }));
		this.#asked = jobs;
		this.#say({ jobs: sent });
	}

	/** Pictures and what belongs to them, in one frame. */
	#show(pictures: readonly ImageBitmap[]): void {
		for (const [place, picture] of pictures.entries()) {
			const { id, box, ratio } = this.#asked[place];
			const screen = this.#screens.get(id);
			if (!screen) {
				picture.close();
				continue;
			}
			placedCanvas(screen.canvas as HTMLCanvasElement, box, ratio);
			screen.transferFromImageBitmap(picture);
		}
		for (const { show } of this.#followers) show();
	}

	#sent({ id, scene }: PaintJob): SentJob['scene'] {
		if (scene.kind === 'dots') return { ...scene, points: this.#pointsNumber(id, scene.points) };
		if (scene.kind === 'lanes') return scene;
		return { ...scene, lines: scene.lines.map((line) => this.#sentLine(line)) };
	}

	/**
	 * Values that are met again travel once as a whole. Others travel as far as they are shown, in arrays of their
	 * own: a window on a ride's values would take all of them along.
	 */
	#sentLine(line: SceneLine): SentLine {
		const { values, first, places, exact } = line;
		if (this.#met.has(values)) return { ...line, values: this.#numberOf(values) };
		if (values.low.length <= MOST_WHOLE) this.#met.add(values);
		const low = values.low.slice(first, first + places.length);
		const high = exact ? low : values.high.slice(first, first + places.length);
		return { ...line, first: 0, values: { low, high } };
	}

	/** other dots on a canvas take the place of those before */
	#pointsNumber(id: number, points: DotPoints): number {
		const [number, before] = [this.#numberOf(points), this.#pointsOf.get(id)];
		if (before !== number) this.#forgetPoints(id);
		this.#pointsOf.set(id, number);
		return number;
	}
	#forgetPoints(id: number): void {
		const number = this.#pointsOf.get(id);
		if (number !== undefined) this.#say({ gone: number });
		this.#pointsOf.delete(id);
	}

	#numberOf(thing: Inks | DotPoints | LineValues): number {
		const known = this.#known.get(thing);
		if (known) return known;
		const id = ++this.#numbers;
		this.#known.set(thing, id);
		this.#say({ thing, id });
		return id;
	}

	#say(message: ToPainter): void {
		try {
			this.#worker?.postMessage(message);
		} catch {
			this.#giveUp();
		}
	}

	#begun(): Worker {
		const worker = new Worker(new URL('./paintWorker.ts', import.meta.url), { type: 'module' });
		worker.onmessage = ({ data }: MessageEvent<FromPainter>) => {
			clearTimeout(this.#late);
			if ('failed' in data) return this.#giveUp();
			this.#busySinceMs = Infinity;
			// with what the page does for its next frame anyway: between two of them it would cost a frame of its own
			requestAnimationFrame(() => {
				if (this.#worker !== worker) return;
				this.#show(data.pictures);
				this.#send();
			});
		};
		worker.postMessage({ face: FACE, address: latin } satisfies ToPainter);
		worker.onerror = () => this.#giveUp();
		worker.onmessageerror = () => this.#giveUp();
		this.#late = setTimeout(() => this.#giveUp(), PATIENCE_MS);
		return worker;
	}

	#end(): void {
		clearTimeout(this.#late);
		this.#worker?.terminate();
		this.#worker = null;
		this.#waiting.clear();
		this.#pointsOf.clear();
		this.#known = new WeakMap();
		this.#met = new WeakSet();
		this.#busy = false;
	}

	#giveUp(): void {
		this.#end();
		this.usable = false;
	}
}

export const paintThread = new PaintThread();
