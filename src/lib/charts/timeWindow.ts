/** The shown stretch of a ride, seconds [from, to]; the functions below take metres as well. */
export type TimeWindow = readonly [fromS: number, toS: number];

/** Nothing closer than this: at 1 Hz there is no more to see. */
export const CLOSEST_S = 5;

/**
 * Keeps a window inside the ride: its width is kept where it fits, else it becomes the whole ride.
 *
 * @param endS length of the ride in seconds, > 0
 * @param closest the narrowest window
 */
export function heldWindow([from, to]: TimeWindow, endS: number, closest = CLOSEST_S): TimeWindow {
	const width = Math.min(endS, Math.max(closest, to - from));
	const centre = (from + to) / 2;
	const start = Math.min(endS - width, Math.max(0, to - from < closest ? centre - width / 2 : from));
	return [start, start + width];
}

/**
 * Zooms about a point that stays where it is on the screen.
 *
 * @param factor below 1 shows less time (closer), above 1 more
 * @param aboutS the time that stays put
 * @example zoomedWindow([0, 100], 0.5, 20, 1000) // [10, 60]
 */
export function zoomedWindow(
	[from, to]: TimeWindow,
	factor: number,
	aboutS: number,
	endS: number,
	closest = CLOSEST_S
): TimeWindow {
	const width = Math.min(endS, Math.max(closest, (to - from) * factor));
	const place = to > from ? (aboutS - from) / (to - from) : 0.5;
	return heldWindow([aboutS - place * width, aboutS + (1 - place) * width], endS, closest);
}

/** Moves the window by a share of its own width; it stops at the ends of the ride. */
export function pannedWindow(
	[from, to]: TimeWindow,
	share: number,
	endS: number,
	closest = CLOSEST_S
): TimeWindow {
	const by = (to - from) * share;
	return heldWindow([from + by, to + by], endS, closest);
}

/**
 * About 15 s around an event: a third before it, so that the drive that was lost is seen, the rest for
 * the slip and the take-up after it. A longer event gets as much as it needs.
 */
export function windowAroundEvent(startS: number, endS: number, rideEndS: number): TimeWindow {
	const widthS = Math.max(15, endS - startS + 10);
	return heldWindow([startS - widthS / 3, startS - widthS / 3 + widthS], rideEndS);
}
