import { firstThat } from './firstThat';
import { gatheredSpans } from './gatheredSpans';
import { linearScale, type LinearScale } from './linearScale';
import type { Levels } from './minMaxLevels';
import type { SceneLine } from './paintScene';
import type { RideAxis } from './rideAxis';
import { CELL, STRIP_MARGIN } from './strip';
import { toTenth } from './toTenth';
import { levelOfWindow, placesOfLevel } from './traceOfWindow';

/** Where seconds of the ride lie on a strip of this width and window. */
export interface StripPlaces {
	readonly axis: RideAxis;
	/** shown stretch, seconds */
	readonly window: readonly [number, number];
	/** with the margins, pixels */
	readonly width: number;
	readonly left: number;
	readonly right: number;
	/** shown part of the axis, seconds or metres */
	readonly span: readonly [number, number];
	/** second -> pixel, not bounded to the strip */
	readonly x: (timeS: number) => number;
	/** place on the axis -> pixel */
	readonly onAxis: LinearScale;
	readonly timeAt: (pixel: number) => number;
	/** second -> pixel within the strip, in tenths */
	readonly place: (timeS: number) => number;
	readonly shows: (span: readonly [number, number]) => boolean;
	/** stretches in seconds -> stretches in pixels, short ones pushed together */
	readonly gathered: (spans: readonly (readonly [number, number])[]) => [number, number][];
	/** the shown values of a trace with their places, from the device pixel `left` on */
	readonly columns: (
		trace: Levels,
		ratio: number,
		left: number
	) => Pick<SceneLine, 'values' | 'first' | 'exact' | 'places'>;
}

/**
 * @param axis time or distance
 * @param window shown stretch, seconds [from, to]
 * @param width of the strip with its margins, pixels
 */
export function stripPlaces(axis: RideAxis, window: readonly [number, number], width: number): StripPlaces {
	const left = STRIP_MARGIN.left;
	const right = Math.max(left + 10, width - STRIP_MARGIN.right);
	const span = [axis.at(window[0]), axis.at(window[1])] as const;
	const onAxis = linearScale(span, [left, right]);
	const x = axis.kind === 'time' ? onAxis : (timeS: number) => onAxis(axis.at(timeS));
	const shows = ([from, to]: readonly [number, number]) => to >= window[0] && from <= window[1];
	// lines of one rate lie at the same places
	const known = new Map<string, Float32Array>();
	return {
		axis,
		window,
		width,
		left,
		right,
		span,
		x,
		onAxis,
		timeAt: (pixel) => axis.timeAt(onAxis.invert(pixel)),
		place: (timeS) => toTenth(Math.min(right, Math.max(left, x(timeS)))),
		shows,
		gathered(spans) {
			const [first, behind] = inView(spans, window);
			const shown: [number, number][] = [];
			for (let i = first; i < behind; i++) {
				const from = axis.at(Math.max(spans[i][0], window[0]));
				const to = axis.at(Math.min(spans[i][1], window[1]));
				if (to > from) shown.push([from, to]);
			}
			const cell = Math.max(1e-9, onAxis.invert(CELL) - onAxis.invert(0));
			return gatheredSpans(shown, cell).map(([from, to]) => [onAxis(from), onAxis(to)]);
		},
		columns(trace, ratio, fromPixel) {
			const shown = levelOfWindow(trace, window, right - left);
			const { level, first, count } = shown;
			const key = [trace.stepS, trace.fromS ?? 0, level.size, first, count, ratio, fromPixel].join();
			let xs = known.get(key);
			if (!xs) {
				const atS = placesOfLevel(trace, shown);
				xs = new Float32Array(count);
				if (axis.kind === 'time') {
					const [start, slope] = [onAxis.start * ratio - fromPixel, onAxis.slope * ratio];
					for (let i = 0; i < count; i++) xs[i] = start + slope * atS[i];
				} else for (let i = 0; i < count; i++) xs[i] = x(atS[i]) * ratio - fromPixel;
				known.set(key, xs);
			}
			return {
				values: level,
				first,
				exact: level.size === 1,
				places: xs
			};
		}
	};
}

/** Of stretches in order those that a window shows, [first, behind the last]: a ride has thousands. */
function inView(
	spans: readonly (readonly [number, number])[],
	[from, to]: readonly [number, number]
): [number, number] {
	return [firstThat(spans, ([, end]) => end >= from), firstThat(spans, ([start]) => start > to)];
}
