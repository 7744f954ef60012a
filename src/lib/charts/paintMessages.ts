import type { Inks } from './canvasInks.svelte';
import type {
	DotPoints,
	DotsScene,
	LanesScene,
	LineValues,
	PaintScene,
	SceneLine,
	StripScene
} from './paintScene';
import type { PlotBox } from './pixelBox';

/** What is to be painted for one canvas. */
export interface PaintJob<Colours = Inks, Scene = PaintScene> {
	readonly id: number;
	/** its part of the drawing, device pixels */
	readonly box: PlotBox;
	/** device pixels a CSS pixel */
	readonly ratio: number;
	readonly inks: Colours;
	readonly scene: Scene;
}

/** The same on its way: what stays as it is travels once, and goes by its number. */
export type SentJob = PaintJob<number, SentStrip | LanesScene | SentDots>;
export type SentLine = Omit<SceneLine, 'values'> & { readonly values: number | LineValues };
export type SentStrip = Omit<StripScene, 'lines'> & { readonly lines: readonly SentLine[] };
export type SentDots = Omit<DotsScene, 'points'> & { readonly points: number };

/** The face of words, as CSS names it, and where it is fetched. */
export interface FaceMessage {
	readonly face: string;
	readonly address: string;
}

/** What the page says to the thread that paints. */
export type ToPainter =
	| FaceMessage
	| { readonly gone: number }
	| { readonly thing: Inks | DotPoints | LineValues; readonly id: number }
	| { readonly jobs: readonly SentJob[] };

/** What that answers to jobs: a picture for each, in their order. */
export type FromPainter = { readonly pictures: readonly ImageBitmap[] } | { readonly failed: string };
