import type { Levels } from './minMaxLevels';

/** How charts write numbers; the formats of the user interface fit. */
export interface ChartFormats {
	readonly number: (value: number, decimals?: number) => string;
	readonly figure: (value: number) => string;
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

export interface SlipMark {
	readonly id: number;
	/** the number by which table and strips name it */
	readonly number: number;
	readonly startS: number;
	readonly endS: number;
	readonly standing: Standing;
}

/** Room for the value labels at the left and for half a time label at the right, pixels. */
export const STRIP_MARGIN = { left: 46, right: 14 } as const;

/** Stretches shorter than this many pixels are pushed together before they are drawn: see gatheredSpans. */
export const CELL = 3;
