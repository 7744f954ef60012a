import type { PlotBox } from './pixelBox';

/** where canvases lie, in words */
const placed = new WeakMap<HTMLCanvasElement, string>();

/**
 * Sizes a canvas and lays it over its part of a drawing: only where that changed, since setting a size throws the bitmap
 * away.
 *
 * @param box device pixels from the upper left corner of the drawing
 * @param whole it fills the drawing, whatever the size of that on paper
 */
export function placedCanvas(canvas: HTMLCanvasElement, box: PlotBox, ratio: number, whole = false): void {
	if (canvas.width !== box.width) canvas.width = box.width;
	if (canvas.height !== box.height) canvas.height = box.height;
	const [left, top, width, height] = whole
		? ['', '', '', '']
		: [box.left, box.top, box.width, box.height].map((pixels) => `${pixels / ratio}px`);
	const words = [left, top, width, height].join();
	if (placed.get(canvas) === words) return;
	placed.set(canvas, words);
	Object.assign(canvas.style, { inset: whole ? '' : `${top} auto auto ${left}`, width, height });
}
