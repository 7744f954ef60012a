import { vi } from 'vitest';
import type { SentJob, ToPainter } from '$lib/charts/paintMessages';

/** from one frame of the page to the next */
export const FRAME_MS = 16;

/** a thread that answers when the test lets it */
export class Thread {
	static last: Thread;
	readonly said: ToPainter[] = [];
	onmessage: (event: { data: unknown }) => void = () => {};
	onerror: () => void = () => {};
	ended = false;
	constructor() {
		Thread.last = this;
	}
	postMessage(message: ToPainter) {
		this.said.push(message);
	}
	terminate() {
		this.ended = true;
	}
	get asked() {
		return this.said.flatMap((message) => ('jobs' in message ? [message.jobs] : []));
	}
	/** answers with a picture for each canvas, named by what that shows; the page's next frame shows them */
	painted() {
		const pictures = shownBy(this.asked.at(-1)!).map(([, what]) => picture(what));
		this.onmessage({ data: { pictures } });
		vi.advanceTimersByTime(FRAME_MS);
	}
}
export const picture = (what: unknown) => ({ what, width: 10, height: 10, close: vi.fn() });
class Screen {
	width = 10;
	height = 10;
	readonly style = { inset: '', width: '', height: '' };
	/** what it shows */
	what: unknown = null;
	getContext(kind: string) {
		if (kind !== 'bitmaprenderer') return null;
		return {
			canvas: this,
			transferFromImageBitmap: ({ what }: ReturnType<typeof picture>) => (this.what = what)
		};
	}
}
export const screen = () => new Screen();
export const canvas = (shown = screen()) => shown as unknown as HTMLCanvasElement;

/** [canvas, what it shows] of each job */
export const shownBy = (jobs: readonly SentJob[]) =>
	jobs.map(({ id, scene }) => [id, scene.kind === 'lanes' ? scene.shifts[0] : NaN]);
