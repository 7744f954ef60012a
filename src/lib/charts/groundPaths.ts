import { spansPath } from './spansPath';
import type { StripPlaces } from './stripPlaces';

/** higher than any strip: each strip shows its own height of it */
const HEIGHT = 500;

/** The ground of all strips of a stack, made once a frame. */
export interface StripGroundPaths {
	/** stretches that could not have shown a reference slip */
	readonly hatched: string;
	readonly gaps: string;
}

/**
 * @param hatched seconds [from, to], in order
 * @param gaps seconds [from, to], in order; even the shortest is seen
 */
export function groundPaths(
	places: StripPlaces,
	hatched: readonly (readonly [number, number])[],
	gaps: readonly (readonly [number, number])[]
): StripGroundPaths {
	return {
		hatched: spansPath(places.gathered(hatched), 0, HEIGHT),
		gaps: spansPath(places.gathered(gaps), 0, HEIGHT, 0.5)
	};
}
