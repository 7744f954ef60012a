import type { SlipMark, Standing } from './strip';
import { spansPath } from './spansPath';
import type { StripPlaces } from './stripPlaces';

/** higher than any strip: each strip shows its own height of it */
const HEIGHT = 500;

/** A stretch of a strip, pixels from its left edge. */
export type PixelSpan = readonly [from: number, to: number];

/** The stretch of an event. */
export interface EventSpan {
	readonly span: PixelSpan;
	readonly standing: Standing;
	readonly selected: boolean;
}

/** The ground as plain values, for whoever paints it by pixels: [from, to, from, to, ...] in pixels. */
export interface GroundSpans {
	/** stretches that could not have shown a reference slip */
	readonly hatched: Float32Array;
	readonly gaps: Float32Array;
	readonly events: readonly EventSpan[];
}

/** The ground of all strips of a stack, made once a frame: as stretches for canvases, as paths for SVG. */
export interface StripGroundPaths {
	readonly hatched: string;
	readonly gaps: string;
	readonly spans: GroundSpans;
}

/**
 * @param hatched seconds [from, to], in order
 * @param gaps seconds [from, to], in order; even the shortest is seen
 * @param slips events in view
 */
export function groundPaths(
	places: StripPlaces,
	hatched: readonly (readonly [number, number])[],
	gaps: readonly (readonly [number, number])[],
	slips: readonly SlipMark[] = [],
	selectedId: number | null = null
): StripGroundPaths {
	const hatchedSpans = places.gathered(hatched);
	const gapSpans = places.gathered(gaps);
	return {
		spans: {
			hatched: flat(hatchedSpans),
			gaps: flat(gapSpans),
			events: slips.map(({ id, startS, endS, standing }) => ({
				span: eventSpan(places, startS, endS),
				standing,
				selected: id === selectedId
			}))
		},
		// written only where they are asked for
		get hatched() {
			return spansPath(hatchedSpans, 0, HEIGHT);
		},
		get gaps() {
			return spansPath(gapSpans, 0, HEIGHT, 0.5);
		}
	};
}

function flat(spans: readonly PixelSpan[]): Float32Array {
	const values = new Float32Array(2 * spans.length);
	for (let i = 0; i < spans.length; i++) {
		values[2 * i] = spans[i][0];
		values[2 * i + 1] = spans[i][1];
	}
	return values;
}

/** The shortest event is seen, too. */
export function eventSpan(places: Pick<StripPlaces, 'place'>, startS: number, endS: number): PixelSpan {
	const from = places.place(startS);
	return [from, from + Math.max(1.5, places.place(endS) - from)];
}
