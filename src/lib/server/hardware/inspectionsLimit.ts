import { fiellerLimits } from '$lib/reliability/fiellerLimits';
import { FEWEST_POINTS_FOR_CROSSING } from '$lib/reliability/lineReachesValue';
import type { StraightLine } from '$lib/reliability/straightLine';
import { studentQuantile } from '$lib/reliability/studentQuantile';

/** Where a wear line reaches its limit, metres of the build; null = unbounded, or not ahead. */
export interface LimitReachedView {
	/** by the line itself; null when the line heads away from the limit or is level */
	atM: number | null;
	/** the earliest distance that the measurements do not speak against */
	lowerM: number | null;
	/** the latest one; null = they do not establish that it is ever reached */
	upperM: number | null;
	/** between two distances; open upwards; the line heads away and it is not ahead; nothing can be said */
	kind: 'between' | 'open' | 'away' | 'unknown';
	confidence: number;
}

const KM = 1000;

/**
 * Looks ahead along a wear line: unlike a plain crossing, of a set that is open to both sides the part that
 * lies ahead is told, whichever way the line happens to lean. Otherwise scatter that leans away from the
 * limit would read as a limit long passed.
 *
 * @param line in km; at least four points
 * @param value of the limit, in the unit of the line
 * @returns null with fewer than four points
 */
export function limitAhead(line: StraightLine, value: number, confidence: number): LimitReachedView | null {
	if (line.pointCount < FEWEST_POINTS_FOR_CROSSING) return null;
	const variance = line.residualSd ** 2;
	// seen from the mean distance, where height and slope of the line do not depend on each other
	const missing = value - (line.intercept + line.slope * line.meanX);
	const limits = fiellerLimits(
		{
			numerator: missing,
			denominator: line.slope,
			numeratorVariance: variance / line.pointCount,
			denominatorVariance: variance / line.spreadX,
			covariance: 0
		},
		studentQuantile(1 - (1 - confidence) / 2, line.degreesOfFreedom)
	);
	const away = missing / line.slope;
	const metres = (km: number) => (line.meanX + km) * KM;
	const atM = away > 0 && Number.isFinite(away) ? metres(away) : null;
	if (limits.kind === 'anywhere') return { atM, lowerM: null, upperM: null, kind: 'unknown', confidence };
	if (limits.kind === 'outside')
		return { atM, lowerM: metres(limits.upper), upperM: null, kind: 'open', confidence };
	if (atM === null) return { atM, lowerM: null, upperM: null, kind: 'away', confidence };
	const [lowerM, upperM] = [metres(limits.lower), metres(limits.upper)];
	return { atM, lowerM, upperM, kind: 'between', confidence };
}
