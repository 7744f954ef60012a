import { toTenth } from './toTenth';

/** half the width of the sign of a slip of 90 crank degrees, pixels */
const REFERENCE = 5;
/** below, shapes cannot be told; above, neighbours would be covered */
const BOUNDS = [3.5, 9] as const;

/**
 * Half the width of an event's sign: its area grows with the overrun. Where the overrun is not given, the size of
 * the reference slip (90 crank degrees).
 *
 * @param overrunCrankDeg crank degrees, >= 0
 * @example glyphSize(360) // 9, the largest (twice the width of 90 degrees would be 10)
 */
export function glyphSize(overrunCrankDeg: number | undefined): number {
	if (overrunCrankDeg === undefined || Number.isNaN(overrunCrankDeg)) return REFERENCE;
	const size = REFERENCE * Math.sqrt(overrunCrankDeg / 90);
	return toTenth(Math.min(BOUNDS[1], Math.max(BOUNDS[0], size)));
}
