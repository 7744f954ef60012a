import type { GroundSpans } from './groundPaths';
import type { PlotBox } from './pixelBox';
import type { Standing, StripTrace, Strokes } from './strip';

/**
 * What is painted by pixels, as plain values: whoever paints it, the page itself or the thread beside it
 * (`paintThread`), needs nothing else.
 */
export type PaintScene = StripScene | LanesScene | DotsScene;

/** A strip: ground, grid and lines. */
export interface StripScene {
	readonly kind: 'strip';
	readonly ground: GroundSpans;
	/** value -> CSS pixel */
	readonly y: { readonly start: number; readonly slope: number };
	readonly box: PlotBox;
	/** values of the grid lines */
	readonly grid: readonly number[];
	readonly lines: readonly SceneLine[];
	/** [leading, compared], numbers of lines: filled where the first lies above the second */
	readonly filled: readonly [number, number] | null;
	/** on the strip that leads */
	readonly signs: SceneSigns | null;
}

/** Signs of events above a strip, the numbers beside them, rider marks through it. CSS pixels. */
export interface SceneSigns {
	readonly slips: readonly SceneSign[];
	/** where the words begin */
	readonly numbers: readonly {
		readonly id: number;
		readonly text: string;
		readonly x: number;
		readonly selected: boolean;
	}[];
	readonly marks: readonly number[];
}

/** See SlipGlyph. */
export interface SceneSign {
	readonly id: number;
	readonly x: number;
	readonly standing: Standing;
	/** half its width */
	readonly size: number;
	readonly strokes: Strokes;
}

/** Values of a line, the same object from frame to frame. */
export interface LineValues {
	readonly low: Float32Array;
	readonly high: Float32Array;
}

/** One line of a strip, in order of time. */
export interface SceneLine {
	readonly values: LineValues;
	/** the first that is shown; as many as have places */
	readonly first: number;
	/** true when both low and high are the samples themselves and not summaries */
	readonly exact: boolean;
	/** device pixels from the left edge of the box */
	readonly places: Float32Array;
	readonly tone: StripTrace['tone'];
	readonly dashed: boolean;
}

/** The ribbon of what the drive did. */
export interface LanesScene {
	readonly kind: 'lanes';
	readonly ground: GroundSpans;
	readonly box: PlotBox;
	/** of each lane the share of each column, 0 to 1 */
	readonly lanes: readonly Float32Array[];
	/** device pixels of a column */
	readonly column: number;
	/** strokes at the foot of the ribbon, CSS pixels from its left edge */
	readonly shifts: Float32Array;
	/** how many lanes have a line to stand on, from the top */
	readonly lines: number;
	/** from one lane to the next, CSS pixels */
	readonly lane: number;
	/** height of a lane that is full, CSS pixels */
	readonly fill: number;
	/** the gears of some strokes, beginning there; at the foot of the ribbon */
	readonly names: SceneWords;
	readonly axis: SceneAxis;
}

/** Words beside each other, CSS pixels from the left edge of the canvas. */
export interface SceneWords {
	readonly x: Float32Array;
	readonly words: readonly string[];
}

/** The axis under a strip: a line from end to end, a stroke and its words at each round place. CSS pixels. */
export interface SceneAxis {
	readonly left: number;
	readonly right: number;
	readonly top: number;
	readonly ticks: SceneWords;
}

/** Thousands of small squares in ink. */
export interface DotsScene {
	readonly kind: 'dots';
	readonly points: DotPoints;
	/** the part of the drawing that holds all of them, shown or not */
	readonly area: PlotBox;
	/** those shown: [first, behind the last] */
	readonly shown: readonly [number, number];
	/** side of a dot, CSS pixels */
	readonly size: number;
	/** how much one dot covers, 0 to 1; more on one spot cover more */
	readonly alpha: number;
}

/** Middles of dots, CSS pixels; NaN = none. */
export interface DotPoints {
	readonly x: Float32Array;
	readonly y: Float32Array;
}
