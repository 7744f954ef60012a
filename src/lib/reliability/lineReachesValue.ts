import { checkConfidence, checkFinite } from './checks';
import { fiellerLimits } from './fiellerLimits';
import type { StraightLine } from './straightLine';
import { studentQuantile } from './studentQuantile';

/** below this many points the place where a line reaches a limit is not computed (common practice) */
export const FEWEST_POINTS_FOR_CROSSING = 4;

/** Where a straight line reaches a value. */
export interface LineCrossing {
	/** x of the crossing by the line itself; NaN for a level line */
	readonly at: number;
	/** -Infinity and Infinity are real answers: the crossing is unbounded on that side */
	readonly lower: number;
	readonly upper: number;
	/**
	 * `between`: between the limits. `open`: the measurements do not establish that the value is ever
	 * reached; only the limit on the near side is finite. `unknown`: nothing can be said.
	 */
	readonly kind: 'between' | 'open' | 'unknown';
}

/**
 * The x at which the line reaches a value, say the distance at which a tooth has worn down to its limit,
 * with Fieller's limits for the line. When the slope may as well be nought, the crossing is unbounded and the
 * answer says so instead of giving a number.
 *
 * @param line from `straightLine`, at least four points
 * @param value that the line shall reach, finite
 * @param confidence two-sided, 0 < confidence < 1
 * @returns crossing with limits, in the unit of x; null with fewer than four points
 * @throws RangeError for a value that is not finite or a confidence outside (0, 1)
 * @example lineReachesValue(line, 0.8, 0.9) // { at: 2140, lower: 1650, upper: Infinity, kind: 'open' }
 * Source: Fieller 1954, J. R. Statist. Soc. B 16:175; for a line: Draper and Smith 1998, Applied Regression
 * Analysis, 3rd ed., section 3.2 (both from memory). It is the inversion of the line's own limits.
 */
export function lineReachesValue(line: StraightLine, value: number, confidence: number): LineCrossing | null {
	checkFinite('value', value);
	checkConfidence('confidence', confidence);
	if (line.pointCount < FEWEST_POINTS_FOR_CROSSING) return null;
	const variance = line.residualSd ** 2;
	// seen from the mean of x, where height and slope of the line do not depend on each other
	const numerator = value - (line.intercept + line.slope * line.meanX);
	const limits = fiellerLimits(
		{
			numerator,
			denominator: line.slope,
			numeratorVariance: variance / line.pointCount,
			denominatorVariance: variance / line.spreadX,
			covariance: 0
		},
		studentQuantile(1 - (1 - confidence) / 2, line.degreesOfFreedom)
	);
	const away = line.slope === 0 ? NaN : numerator / line.slope;
	const at = line.meanX + away;
	if (limits.kind === 'between')
		return { at, lower: line.meanX + limits.lower, upper: line.meanX + limits.upper, kind: 'between' };
	if (limits.kind === 'outside' && Number.isFinite(away))
		return away > 0
			? { at, lower: line.meanX + limits.upper, upper: Infinity, kind: 'open' }
			: { at, lower: -Infinity, upper: line.meanX + limits.lower, kind: 'open' };
	return { at, lower: -Infinity, upper: Infinity, kind: 'unknown' };
}
