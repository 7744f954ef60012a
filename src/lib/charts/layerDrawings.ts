import type { Inks } from './canvasInks.svelte';
import type { PaintScene } from './paintScene';

/** Draws what a canvas shows as paths. */
export type LayerDraw = (context: CanvasRenderingContext2D, inks: Inks) => void;

/** The same as plain values, at so many device pixels a CSS pixel: what is painted by pixels. */
export type LayerScene = (ratio: number) => PaintScene;

/** What the canvas of a layered drawing is given, whoever paints it. */
export interface LayerCanvas {
	width: number;
	height: number;
	inks: Inks;
	/** runs again when what it reads has changed */
	draw: LayerDraw;
}

/** The drawing of each canvas on the page, to be drawn once more into a file. */
export const layerDrawings = new WeakMap<Element, LayerDraw>();
