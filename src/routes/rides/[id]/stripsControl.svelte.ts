import { untrack } from 'svelte';
import { timeAxis, type RideAxis } from '$lib/charts/rideAxis';
import { STRIP_MARGIN } from '$lib/charts/strip';
import { heldWindow, pannedWindow, zoomedWindow, type TimeWindow } from '$lib/charts/timeWindow';

/**
 * One zoom, one pan, one cursor for all views of a ride: by pointer (drag, pinch), wheel, keys, buttons.
 *
 * @param endS length of the ride, seconds, > 0
 * @param width a getter: drawn width of the strips in pixels
 */
export class StripsControl {
	/** seconds, whatever the axis */
	shown = $state.raw<TimeWindow>([0, 1]);
	cursorS = $state<number | null>(null);
	/** a stretch that is being drawn, to be zoomed to when it is let go */
	chosen = $state.raw<TimeWindow | null>(null);
	axis = $state.raw<RideAxis>(timeAxis(1));
	/** what is on the screen, a frame behind `shown` where pictures are painted aside; null = the same */
	#seen: TimeWindow | null = null;
	// nothing is drawn from the pointers themselves
	// eslint-disable-next-line svelte/prefer-svelte-reactivity
	#pointers = new Map<number, number>();
	#dragged = false;
	#choosingFromS: number | null = null;

	constructor(
		readonly endS: number,
		readonly width: () => number
	) {
		this.axis = timeAxis(endS);
		this.shown = [0, endS];
	}

	/** Another axis shows the same stretch, as far as it has room there. */
	useAxis(axis: RideAxis) {
		this.axis = axis;
		this.show(this.shown);
	}
	show([fromS, toS]: TimeWindow) {
		const { axis } = this;
		this.#showPlaces(heldWindow([axis.at(fromS), axis.at(toS)], axis.end, axis.closest));
	}
	zoom(factor: number, aboutS = this.cursorInside() ?? this.#middle()) {
		const { axis } = this;
		this.#showPlaces(zoomedWindow(this.#places(), factor, axis.at(aboutS), axis.end, axis.closest));
	}
	pan(share: number) {
		this.#showPlaces(pannedWindow(this.#places(), share, this.axis.end, this.axis.closest));
	}

	/** Puts the read-out there, and moves the window to it where it lies outside. */
	pick(timeS: number) {
		const at = Math.min(this.endS, Math.max(0, timeS));
		this.cursorS = at;
		const [from, to] = this.shown;
		if (at < from || at > to) this.show([at - (to - from) / 2, at + (to - from) / 2]);
	}

	/** true when the press was a drag: it then picks no event */
	get dragged() {
		return this.#dragged;
	}

	/** The strips show this now: a pointer means what it points at. */
	see(window: TimeWindow) {
		this.#seen = window;
	}

	timeAt(
		clientX: number,
		box: Pick<DOMRect, 'left' | 'width'>,
		window: TimeWindow = this.#seen ?? this.shown
	): number {
		const plot = Math.max(1, this.width() - STRIP_MARGIN.left - STRIP_MARGIN.right);
		const share = (((clientX - box.left) / box.width) * this.width() - STRIP_MARGIN.left) / plot;
		const [from, to] = this.#places(window);
		return this.axis.timeAt(Math.min(to, Math.max(from, from + share * (to - from))));
	}

	pointerDown(event: PointerEvent, box?: DOMRect) {
		if (event.button !== 0) return;
		this.#pointers.set(event.pointerId, event.clientX);
		this.#dragged = false;
		this.#choosingFromS = event.shiftKey && box ? this.timeAt(event.clientX, box) : null;
	}

	pointerMove(event: PointerEvent, box: DOMRect) {
		const before = this.#pointers.get(event.pointerId);
		if (before === undefined) {
			this.cursorS = this.timeAt(event.clientX, box);
			return;
		}
		const by = event.clientX - before;
		const others = [...this.#pointers].filter(([id]) => id !== event.pointerId).map(([, x]) => x);
		if (others.length) {
			const apart = Math.max(10, Math.abs(event.clientX - others[0]));
			const wasApart = Math.max(10, Math.abs(before - others[0]));
			this.zoom(wasApart / apart, this.timeAt((event.clientX + others[0]) / 2, box, this.shown));
		} else if (this.#choosingFromS !== null) {
			const atS = this.timeAt(event.clientX, box);
			if (Math.abs(by) < 3 && !this.#dragged) return;
			this.chosen = [Math.min(atS, this.#choosingFromS), Math.max(atS, this.#choosingFromS)];
		} else {
			if (Math.abs(by) < 3 && !this.#dragged) return;
			this.pan(-by / (box.width - STRIP_MARGIN.left - STRIP_MARGIN.right));
		}
		this.#dragged = true;
		this.#pointers.set(event.pointerId, event.clientX);
	}

	pointerUp(event: PointerEvent) {
		this.#pointers.delete(event.pointerId);
		if (this.chosen) this.show(this.chosen);
		this.chosen = null;
		this.#choosingFromS = null;
	}

	/** The wheel scrolls the page until the strips have been chosen (clicked, focused) or Ctrl is held. */
	wheel(event: WheelEvent, box: DOMRect, chosen: boolean) {
		if (!chosen && !event.ctrlKey && !event.metaKey) return;
		event.preventDefault();
		if (Math.abs(event.deltaX) > Math.abs(event.deltaY)) this.pan(event.deltaX / box.width);
		else this.zoom(Math.exp(event.deltaY * 0.0025), this.timeAt(event.clientX, box, this.shown));
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

	#middle(): number {
		const [from, to] = this.#places();
		return this.axis.timeAt((from + to) / 2);
	}
	#places([fromS, toS]: TimeWindow = this.shown): TimeWindow {
		return [this.axis.at(fromS), this.axis.at(toS)];
	}
	/** the ends of the axis are the ends of the ride: a stop there stays in view */
	#showPlaces([from, to]: TimeWindow) {
		const { axis } = this;
		const [fromS, toS] = [from <= 0 ? 0 : axis.timeAt(from), to >= axis.end ? this.endS : axis.timeAt(to)];
		// against an end nothing moves, and nothing is drawn anew; an effect that shows a window follows no later one
		const [fromBefore, toBefore] = untrack(() => this.shown);
		if (fromS !== fromBefore || toS !== toBefore) this.shown = [fromS, toS];
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
