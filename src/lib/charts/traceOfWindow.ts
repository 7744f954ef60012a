import type { Level, Levels } from './minMaxLevels';

/** What to draw of a trace: the centre of each group in seconds, its lowest and highest value. */
export interface TraceColumns {
	readonly atS: Float64Array;
	readonly low: Float32Array;
	readonly high: Float32Array;
	/** true when these are the samples themselves and not summaries */
	readonly exact: boolean;
}

/** The groups of a trace that a window shows: `count` of them from `first` on. */
export interface ShownLevel {
	readonly level: Level;
	readonly first: number;
	readonly count: number;
}

/**
 * The samples while there are no more than two a pixel, else the finest groups of which a pixel holds about one, cut to the window
 * (with one neighbour on each side, so that the line leaves the window rather than ending in it).
 *
 * @param window shown time, seconds [from, to], from < to
 * @param pixels width to draw on, > 0
 */
export function levelOfWindow(
	{ levels, stepS, fromS = 0 }: Levels,
	window: readonly [number, number],
	pixels: number
): ShownLevel {
	const samples = (window[1] - window[0]) / stepS;
	const level =
		levels.find(({ size }) => samples / size <= (size === 1 ? 2 : 1.25) * pixels) ??
		levels[levels.length - 1];
	const groupS = level.size * stepS;
	const first = Math.max(0, Math.floor((window[0] - fromS) / groupS) - 1);
	const last = Math.min(level.low.length, Math.ceil((window[1] - fromS) / groupS) + 2);
	return { level, first, count: Math.max(0, last - first) };
}

/** Where the groups lie, seconds: the middle of each. */
export function placesOfLevel(
	{ stepS, fromS = 0 }: Levels,
	{ level, first, count }: ShownLevel
): Float64Array<ArrayBuffer> {
	const groupS = level.size * stepS;
	const atS = new Float64Array(count);
	for (let i = 0; i < count; i++) atS[i] = fromS + (first + i) * groupS + (groupS - stepS) / 2;
	return atS;
}

/** The shown groups of a trace with their places; see levelOfWindow. */
export function traceOfWindow(
	trace: Levels,
	window: readonly [number, number],
	pixels: number
): TraceColumns {
	const shown = levelOfWindow(trace, window, pixels);
	const { level, first, count } = shown;
	return {
		atS: placesOfLevel(trace, shown),
		low: level.low.subarray(first, first + count),
		high: level.high.subarray(first, first + count),
		exact: level.size === 1
	};
}
