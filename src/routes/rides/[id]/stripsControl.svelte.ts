import { STRIP_MARGIN } from '$lib/charts/strip';
import { heldWindow, pannedWindow, zoomedWindow, type TimeWindow } from '$lib/charts/timeWindow';

/**
 * One zoom, one pan, one cursor for all strips of a ride: by pointer (drag, pinch), wheel, keys, buttons.
 *
 * @param endS length of the ride, seconds, > 0
 * @param width a getter: drawn width of the strips in pixels
 */
export class StripsControl {
	shown = $state<TimeWindow>([0, 1]);
	cursorS = $state<number | null>(null);
	// nothing is drawn from the pointers themselves
	// eslint-disable-next-line svelte/prefer-svelte-reactivity
	#pointers = new Map<number, number>();
	#dragged = false;

	constructor(
		readonly endS: number,
		readonly width: () => number
	) {
		this.shown = [0, endS];
	}

	show(window: TimeWindow) {
		this.shown = heldWindow(window, this.endS);
	}
	zoom(factor: number, aboutS = this.cursorInside() ?? (this.shown[0] + this.shown[1]) / 2) {
		this.shown = zoomedWindow(this.shown, factor, aboutS, this.endS);
	}
	pan(share: number) {
		this.shown = pannedWindow(this.shown, share, this.endS);
	}

	/** true when the press was a drag: it then picks no event */
	get dragged() {
		return this.#dragged;
	}

	timeAt(clientX: number, box: DOMRect): number {
		const plot = Math.max(1, this.width() - STRIP_MARGIN.left - STRIP_MARGIN.right);
		const share = (((clientX - box.left) / box.width) * this.width() - STRIP_MARGIN.left) / plot;
		const [from, to] = this.shown;
		return Math.min(to, Math.max(from, from + share * (to - from)));
	}

	pointerDown(event: PointerEvent) {
		if (event.button !== 0) return;
		this.#pointers.set(event.pointerId, event.clientX);
		this.#dragged = false;
	}

	pointerMove(event: PointerEvent, box: DOMRect) {
		const before = this.#pointers.get(event.pointerId);
		if (before === undefined) {
			this.cursorS = this.timeAt(event.clientX, box);
			return;
		}
		const others = [...this.#pointers].filter(([id]) => id !== event.pointerId).map(([, x]) => x);
		if (others.length) {
			const apart = Math.max(10, Math.abs(event.clientX - others[0]));
			const wasApart = Math.max(10, Math.abs(before - others[0]));
			this.zoom(wasApart / apart, this.timeAt((event.clientX + others[0]) / 2, box));
		} else {
			const by = event.clientX - before;
			if (Math.abs(by) < 3 && !this.#dragged) return;
			this.pan(-by / (box.width - STRIP_MARGIN.left - STRIP_MARGIN.right));
		}
		this.#dragged = true;
		this.#pointers.set(event.pointerId, event.clientX);
	}

	pointerUp(event: PointerEvent) {
		this.#pointers.delete(event.pointerId);
	}

	/** The wheel scrolls the page until the strips have been chosen (clicked, focused) or Ctrl is held. */
	wheel(event: WheelEvent, box: DOMRect, chosen: boolean) {
		if (!chosen && !event.ctrlKey && !event.metaKey) return;
		event.preventDefault();
		if (Math.abs(event.deltaX) > Math.abs(event.deltaY)) this.pan(event.deltaX / box.width);
		else this.zoom(Math.exp(event.deltaY * 0.0025), this.timeAt(event.clientX, box));
	}

	key(event: KeyboardEvent) {
		const step = Math.max(1, Math.round((this.shown[1] - this.shown[0]) / 100));
		const keys: Record<string, () => void> = {
			ArrowLeft: () => (event.shiftKey ? this.pan(-0.25) : this.#moveCursor(-step)),
			ArrowRight: () => (event.shiftKey ? this.pan(0.25) : this.#moveCursor(step)),
			PageUp: () => this.pan(0.8),
			PageDown: () => this.pan(-0.8),
			Home: () => this.#moveCursor(-Infinity),
			End: () => this.#moveCursor(Infinity),
			'+': () => this.zoom(0.5),
			'=': () => this.zoom(0.5),
			'-': () => this.zoom(2),
			'0': () => this.show([0, this.endS])
		};
		if (event.ctrlKey || event.metaKey || event.altKey || !keys[event.key]) return;
		event.preventDefault();
		keys[event.key]();
	}

	cursorInside(): number | null {
		const at = this.cursorS;
		return at !== null && at >= this.shown[0] && at <= this.shown[1] ? at : null;
	}

	#moveCursor(byS: number) {
		const from = Number.isFinite(byS) ? (this.cursorInside() ?? (this.shown[0] + this.shown[1]) / 2) : 0;
		const at = Math.round(Math.min(this.endS, Math.max(0, from + byS)));
		this.cursorS = at;
		const [start, end] = this.shown;
		if (at < start) this.show([at, at + end - start]);
		if (at > end) this.show([at - (end - start), at]);
	}
}
