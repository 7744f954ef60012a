import { quantile } from './median';
import type { SecondGrid } from './secondGrid';

/** Mean radius of the Earth. */
const EARTH_RADIUS_M = 6_371_000;
/** Track and distance are compared over stretches of this length. */
const WINDOW_S = 120;
/** Fewer stretches, half an hour, say nothing (common practice, no source). */
const LEAST_WINDOWS = 15;
/** Shorter stretches are mostly standing. */
const LEAST_WAY_M = 200;
/**
 * A wheel rolls through every bend and with a circumference of its own, and positions scatter: they agree to some
 * tenths of a percent at best (estimate). What was added up from the positions agrees but for rounding.
 */
const SAME_WAY = 0.0005;

/**
 * Whether the recorded distance is that of the satellite track: then the speed comes from positions too, whatever
 * the file says of its sensors. The track between two positions is straight, so a distance that was added up from
 * positions agrees with it almost exactly in every stretch.
 *
 * @param grid the ride on whole seconds
 * @param latitudeDeg one value a second, NaN = not recorded
 * @param longitudeDeg one value a second
 * @returns false without positions or with too few of them
 */
export function speedTellsPosition(
	grid: SecondGrid,
	latitudeDeg: Float64Array,
	longitudeDeg: Float64Array
): boolean {
	const off: number[] = [];
	for (let from = 0; from + WINDOW_S < grid.seconds; from += WINDOW_S) {
		let trackM = 0;
		for (let t = from; t < from + WINDOW_S; t++)
			trackM += metresBetween(latitudeDeg[t], longitudeDeg[t], latitudeDeg[t + 1], longitudeDeg[t + 1]);
		const wayM = grid.distanceM[from + WINDOW_S] - grid.distanceM[from];
		if (!(trackM >= LEAST_WAY_M) || !(wayM >= LEAST_WAY_M)) continue;
		off.push(Math.abs(wayM / trackM - 1));
	}
	return off.length >= LEAST_WINDOWS && quantile(off, 0.9) <= SAME_WAY;
}

/** Plane approximation: exact enough for the metres of a second. */
function metresBetween(latitude: number, longitude: number, nextLatitude: number, nextLongitude: number) {
	const perDeg = (Math.PI / 180) * EARTH_RADIUS_M;
	const north = (nextLatitude - latitude) * perDeg;
	const east = (nextLongitude - longitude) * perDeg * Math.cos((latitude * Math.PI) / 180);
	return Math.hypot(north, east);
}
