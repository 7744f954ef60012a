import type { Levels } from './minMaxLevels';

/** What to draw of a trace: the centre of each group in seconds, its lowest and highest value. */
export interface TraceColumns {
	readonly atS: Float64Array;
	readonly low: Float32Array;
	readonly high: Float32Array;
	/** true when these are the samples themselves and not summaries */
	readonly exact: boolean;
}

/**
 * The samples while there are no more than two a pixel, else the finest groups of which a pixel holds about one, cut to the window
 * (with one neighbour on each side, so that the line leaves the window rather than ending in it).
 *
 * @param window shown time, seconds [from, to], from < to
 * @param pixels width to draw on, > 0
 */
export function traceOfWindow(
	trace: Levels,
	window: readonly [number, number],
	pixels: number
): TraceColumns {
	const samples = (window[1] - window[0]) / trace.stepS;
	const level =
		trace.levels.find(({ size }) => samples / size <= (size === 1 ? 2 : 1.25) * pixels) ??
		trace.levels[trace.levels.length - 1];
	const groupS = level.size * trace.stepS;
	const first = Math.max(0, Math.floor(window[0] / groupS) - 1);
	const last = Math.min(level.low.length, Math.ceil(window[1] / groupS) + 2);
	const count = Math.max(0, last - first);
	const atS = new Float64Array(count);
	for (let i = 0; i < count; i++) atS[i] = (first + i) * groupS + (groupS - trace.stepS) / 2;
	return {
		atS,
		low: level.low.subarray(first, first + count),
		high: level.high.subarray(first, first + count),
		exact: level.size === 1
	};
}
