import type { Inks } from './canvasInks.svelte';
import type { SceneAxis, SceneWords } from './paintScene';
import type { PlacedSurface } from './pixelBox';
import { AXIS_ROOM, STRIP_MARGIN } from './strip';

/** A canvas that words are written on. */
export interface WordsSurface extends PlacedSurface {
	readonly context: Pick<
		CanvasRenderingContext2D,
		'clearRect' | 'fillRect' | 'fillText' | 'setTransform' | 'font' | 'textAlign' | 'fillStyle'
	>;
}

/** The axis under a strip; what stood there is cleared away. */
export function paintAxis(surface: WordsSurface, axis: SceneAxis, inks: Inks): void {
	const { left, right, top, ticks } = axis;
	const context = inCssPixels(surface);
	context.clearRect(0, top - 1, 2 * right, AXIS_ROOM);
	context.fillStyle = inks.soft;
	context.fillRect(left, top - 0.5, right - left, 1);
	for (const x of ticks.x) context.fillRect(x - 0.5, top, 1, 5);
	context.fillStyle = inks.words;
	context.font = `12px ${inks.faces}`;
	const end = right + STRIP_MARGIN.right;
	ticks.words.forEach((word, at) => {
		// a word at the end of the axis stays within the drawing
		const isCut = ticks.x[at] + HALF_WORD > end;
		context.textAlign = isCut ? 'right' : 'center';
		context.fillText(word, isCut ? end : ticks.x[at], top + 17);
	});
}

/** half the width of "10:00:00" at 12 px, CSS pixels */
const HALF_WORD = 24;

/** Small words in ink, beginning at their places, on one line. */
export function paintNames(surface: WordsSurface, names: SceneWords, base: number, inks: Inks): void {
	const context = inCssPixels(surface);
	context.fillStyle = inks.ink;
	context.font = `11px ${inks.faces}`;
	context.textAlign = 'left';
	names.words.forEach((word, at) => context.fillText(word, names.x[at], base));
}

/** Has what is drawn from now on measured in CSS pixels from the corner of the drawing. */
export function inCssPixels<Context extends WordsSurface['context']>({
	context,
	ratio,
	left = 0,
	top = 0
}: WordsSurface & { readonly context: Context }): Context {
	context.setTransform(ratio, 0, 0, ratio, -left, -top);
	return context;
}
