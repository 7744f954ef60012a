import { gatheredSpans } from './gatheredSpans';
import { linearScale, type LinearScale } from './linearScale';
import type { RideAxis } from './rideAxis';
import { CELL, STRIP_MARGIN } from './strip';

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
		place: (timeS) => Math.round(10 * Math.min(right, Math.max(left, x(timeS)))) / 10,
		shows,
		gathered: (spans) =>
			gatheredSpans(
				spans
					.filter(shows)
					.map(
						([from, to]) => [axis.at(Math.max(from, window[0])), axis.at(Math.min(to, window[1]))] as const
					)
					.filter(([from, to]) => to > from),
				Math.max(1e-9, onAxis.invert(CELL) - onAxis.invert(0))
			).map(([from, to]) => [onAxis(from), onAxis(to)])
	};
}
