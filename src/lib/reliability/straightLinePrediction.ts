import { checkConfidence, checkFinite } from './checks';
import type { StraightLine } from './straightLine';
import { studentQuantile } from './studentQuantile';

/** What a straight line says at one x. */
export interface LinePrediction {
	readonly value: number;
	/** limits of the line itself */
	readonly lineLower: number;
	readonly lineUpper: number;
	/** limits between which ONE further measurement is expected: always wider */
	readonly lower: number;
	readonly upper: number;
}

/**
 * The value of the line at `x`, limits of the line there, and limits for one further measurement. They
 * assume scatter of equal size along the line, and they know nothing of a bend outside the measured range.
 *
 * @param line from `straightLine`
 * @param x where, in the unit of the points
 * @param confidence two-sided, 0 < confidence < 1
 * @returns value and limits; with two points, where the scatter is unknown, limits of -Infinity, Infinity
 * @throws RangeError for an x that is not finite or a confidence outside (0, 1)
 * @example straightLinePrediction(line, 1200, 0.95).upper // worst single value expected at 1200 km
 * Source: NIST/SEMATECH e-Handbook 4.5.2.1 (prediction intervals); Draper and Smith 1998, Applied Regression
 * Analysis, 3rd ed., section 3.1 (from memory).
 */
export function straightLinePrediction(line: StraightLine, x: number, confidence: number): LinePrediction {
	checkFinite('x', x);
	checkConfidence('confidence', confidence);
	const value = line.intercept + line.slope * x;
	if (line.degreesOfFreedom < 1)
		return { value, lineLower: -Infinity, lineUpper: Infinity, lower: -Infinity, upper: Infinity };
	const reach = studentQuantile(1 - (1 - confidence) / 2, line.degreesOfFreedom) * line.residualSd;
	const leverage = 1 / line.pointCount + (x - line.meanX) ** 2 / line.spreadX;
	const ofLine = reach * Math.sqrt(leverage);
	const ofOne = reach * Math.sqrt(1 + leverage);
	return {
		value,
		lineLower: value - ofLine,
		lineUpper: value + ofLine,
		lower: value - ofOne,
		upper: value + ofOne
	};
}
