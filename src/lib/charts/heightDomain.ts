/** Less than this is not stretched over the whole strip: barometers wander by metres. */
const LEAST_M = 40;

/**
 * The scale of the height strip, in tens of metres: from the lowest to the highest point of the ride, at least
 * 40 m.
 *
 * @param heightM [lowest, highest]
 * @example heightDomain([212, 223]) // [190, 240]
 */
export function heightDomain([lowest, highest]: readonly [number, number]): [number, number] {
	const lacking = Math.max(0, LEAST_M - (highest - lowest)) / 2;
	return [Math.floor((lowest - lacking) / 10) * 10, Math.ceil((highest + lacking) / 10) * 10];
}
