import { mount, unmount } from 'svelte';
import '../../../src/lib/ui/tokens.css';
import '../../../src/lib/ui/base.css';
import { readChannels } from '$lib/charts/readChannels';
import { distanceAxis, timeAxis } from '$lib/charts/rideAxis';
import { rideStripData } from '$lib/charts/rideStripData';
import type { RideView } from '$lib/server/views';
import { atTwoHundredHertz } from './atTwoHundredHertz';
import DrawPage from './DrawPage.svelte';

/** What the bench asks of this page. */
export interface DrawBench {
	show(what: { name: string; dense: boolean; distance: boolean; folded: boolean }): Promise<number>;
	frames(move: string, count: number): Promise<number[]>;
}

/** The thread that paints, with an ear to it: the page is told first, and then whoever waits for its pictures. */
let asked = 0;
let heard: (() => void) | null = null;
globalThis.Worker = class extends Worker {
	override postMessage(message: object): void {
		if ('jobs' in message) asked++;
		super.postMessage(message);
	}
	override set onmessage(hear: Worker['onmessage']) {
		this.addEventListener('message', (event) => {
			hear?.call(this, event);
			asked--;
			heard?.();
		});
	}
	override terminate(): void {
		// the ride before has gone: nobody answers any more
		super.terminate();
		asked = 0;
		heard?.();
	}
};
const pictures = () => asked === 0 || new Promise<void>((come) => (heard = come));

let shown: ReturnType<typeof mount> | null = null;

const bench: DrawBench = {
	/** draws a ride anew; returns how many samples its lines hold */
	async show({ name, dense, distance, folded }) {
		if (shown) await unmount(shown);
		const ride = (await (await fetch(`/${name}.json`)).json()) as RideView;
		const loaded = rideStripData(readChannels(await (await fetch(`/${name}.bin`)).arrayBuffer()));
		const data = dense ? atTwoHundredHertz(loaded) : loaded;
		const axis = distance ? distanceAxis(data.distanceM, ride.durationS)! : timeAxis(ride.durationS);
		shown = mount(DrawPage, {
			target: document.getElementById('page')!,
			props: { ride, data, axis, folded }
		});
		document.querySelector<HTMLElement>('[role="slider"]')!.focus();
		return Object.values(data.levels).reduce((sum, { levels }) => sum + levels[0].low.length, 0);
	},

	/**
	 * One movement a frame. A mark named "frame" stands at the beginning of each, so that a trace can tell what
	 * the main thread did for it. The next one waits until the pictures of the one before have come: every frame holds
	 * all that the page does for a movement, however slow the thread is that paints.
	 *
	 * @returns milliseconds on the clock from the event to the end of the frame's work
	 */
	async frames(move, count) {
		const strips = document.querySelector<HTMLElement>('[role="slider"]')!;
		const walls: number[] = [];
		// one for all frames: it is the bench's own cost
		const { port1, port2 } = new MessageChannel();
		for (let i = 0; i < count; i++) {
			await new Promise<void>((done) =>
				requestAnimationFrame(() => {
					performance.mark('frame');
					const from = performance.now();
					// answered after this frame has been laid out and painted
					port1.onmessage = async () => {
						walls.push(performance.now() - from);
						await pictures();
						done();
					};
					MOVES[move](strips, i, count);
					port2.postMessage(null);
				})
			);
		}
		performance.mark('frame');
		port1.close();
		return walls;
	}
};

const key = (name: string, shiftKey = false) =>
	new KeyboardEvent('keydown', { key: name, shiftKey, bubbles: true, cancelable: true });
const wheel = (strips: HTMLElement, deltaX: number, deltaY: number) => {
	const { left, width, top } = strips.getBoundingClientRect();
	return new WheelEvent('wheel', {
		clientX: left + width * 0.4,
		clientY: top + 60,
		deltaX,
		deltaY,
		bubbles: true,
		cancelable: true
	});
};
const MOVES: Record<string, (strips: HTMLElement, i: number, count: number) => void> = {
	/** from the whole ride to seconds and back */
	zoom: (strips, i, count) => strips.dispatchEvent(wheel(strips, 0, i < count / 2 ? -100 : 100)),
	/** along the ride, two hundredths of the window a frame */
	pan: (strips) => strips.dispatchEvent(wheel(strips, strips.clientWidth * 0.02, 0)),
	/** the read-out alone */
	read: (strips) => strips.dispatchEvent(key('ArrowRight')),
	/** nothing: what a frame of the bench costs by itself */
	still: () => {},
	/** no drawing but always the same arithmetic: how much other programs slow the processor down */
	work: () => {
		let sum = 0;
		for (let i = 1; i < 400_000; i++) sum += Math.sqrt(i) / (sum + 1);
		Object.assign(globalThis, { worked: sum });
	},
	closer: (strips) => strips.dispatchEvent(key('+')),
	whole: (strips) => strips.dispatchEvent(key('0')),
	start: (strips) => strips.dispatchEvent(key('Home'))
};

(globalThis as unknown as { drawBench: DrawBench }).drawBench = bench;
