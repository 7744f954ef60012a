import type { Inks } from './canvasInks.svelte';

/** What the canvas of a layered drawing shows, to be drawn once more into a file. */
type Draw = (context: CanvasRenderingContext2D, inks: Inks) => void;

/** The drawing of each canvas on the page. */
export const layerDrawings = new WeakMap<Element, Draw>();
