import type { Levels } from './minMaxLevels';
import type { StripGroundPaths } from './groundPaths';
import type { StripPlaces } from './stripPlaces';

/** How charts write numbers; the formats of the user interface fit. */
export interface ChartFormats {
	readonly number: (value: number, decimals?: number) => string;
	readonly figure: (value: number) => string;
	/** what somebody set, with its own decimals */
	readonly set: (value: number, most?: number) => string;
	readonly clock: (seconds: number, tenths?: boolean) => string;
}

/** One line on a strip. Lines are told apart by dash and weight as well as by tone. */
export interface StripTrace {
	readonly levels: Levels;
	readonly tone: 'ink' | 'soft' | 'accent';
	readonly dashed?: boolean;
}

/** How an event stands: only the first two are in a rate. */
export type Standing = 'confirmed' | 'unreviewed' | 'rejected' | 'apart';

/** How clearly the recording speaks, as strokes under the sign: 1 weak, 2 clear, 3 strong; 0 = not shown. */
export type Strokes = 0 | 1 | 2 | 3;

export interface SlipMark {
	readonly id: number;
	/** the number by which table and strips name it */
	readonly number: number;
	readonly startS: number;
	readonly endS: number;
	readonly standing: Standing;
	/** crank degrees; the sign grows with it. Left out: a sign of middle size */
	readonly overrunCrankDeg?: number;
	readonly strokes?: Strokes;
}

/** A shift that the recording names: the gear that was called for then (the chain follows within 1 to 3 s). */
export interface ShiftMark {
	readonly timeS: number;
	/** teeth or positions as recorded, "46/22"; "" = not known */
	readonly gear: string;
}

/** What all strips of a stack share. */
export interface SharedStrip {
	/** axis, window and width */
	readonly places: StripPlaces;
	readonly ground: StripGroundPaths;
	readonly slips: readonly SlipMark[];
	readonly selectedId: number | null;
	readonly formats: ChartFormats;
}

/** What goes with the pointer over all strips: apart from the rest, which it would else draw anew. */
export interface StripPointer {
	/** second of the read-out */
	readonly cursorS?: number | null;
	/** a stretch that is being drawn to be zoomed to, seconds */
	readonly chosen?: readonly [number, number] | null;
}

/** Room for the value labels at the left and for half a time label at the right, pixels. */
export const STRIP_MARGIN = { left: 46, right: 14 } as const;

/** Room under a strip for the labels of its axis, pixels. */
export const AXIS_ROOM = 22;

/** Signs, their strokes and numbers stand in this room above the strip that leads, pixels. */
export const SIGN_ROOM = 30;

/** Where signs stand above a strip and the line that their numbers stand on, pixels from its upper edge. */
export const SIGN_LINE = { middle: 12, base: 14 } as const;

/** How far the flag of a rider mark reaches up and down from the end of its line, pixels. */
export const MARK_FOOT = 4;

/** Stretches shorter than this many pixels are pushed together before they are drawn: see gatheredSpans. */
export const CELL = 3;
