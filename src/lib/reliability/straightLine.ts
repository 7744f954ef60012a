import { checkFinite } from './checks';

export interface LinePoint {
	readonly x: number;
	readonly y: number;
}

/** A straight line through measured points and how far they scatter around it. */
export interface StraightLine {
	readonly pointCount: number;
	/** y at x = 0 */
	readonly intercept: number;
	/** change of y per unit of x */
	readonly slope: number;
	/** standard deviation of the points around the line; NaN with two points, where nothing is left over */
	readonly residualSd: number;
	/** points less the two numbers that were estimated */
	readonly degreesOfFreedom: number;
	readonly slopeStandardError: number;
	readonly interceptStandardError: number;
	readonly meanX: number;
	/** sum of squared distances of x from its mean */
	readonly spreadX: number;
}

/**
 * The straight line that leaves the smallest squared vertical distances (ordinary least squares). Repeats
 * at the same x count as points of their own.
 *
 * @param points at least two different x, all finite
 * @returns the line; null when fewer than two different x stand there (no line can be told)
 * @throws RangeError for a coordinate that is not finite
 * @example straightLine([{ x: 0, y: 1 }, { x: 1, y: 3 }, { x: 2, y: 5 }])?.slope // 2
 * Source: NIST/SEMATECH e-Handbook 4.1.4.1; certified figures of NIST StRD "Norris" in tests/published.
 */
export function straightLine(points: readonly LinePoint[]): StraightLine | null {
	for (const { x, y } of points) {
		checkFinite('x', x);
		checkFinite('y', y);
	}
	const n = points.length;
	const mean = (of: (point: LinePoint) => number) => points.reduce((sum, p) => sum + of(p), 0) / n;
	const meanX = mean((p) => p.x);
	const meanY = mean((p) => p.y);
	const spreadX = n * mean((p) => (p.x - meanX) ** 2);
	if (n < 2 || new Set(points.map((p) => p.x)).size < 2) return null;
	const slope = (n * mean((p) => (p.x - meanX) * (p.y - meanY))) / spreadX;
	const left = n * mean((p) => (p.y - meanY - slope * (p.x - meanX)) ** 2);
	const residualSd = n > 2 ? Math.sqrt(left / (n - 2)) : NaN;
	return {
		pointCount: n,
		intercept: meanY - slope * meanX,
		slope,
		residualSd,
		degreesOfFreedom: n - 2,
		slopeStandardError: residualSd / Math.sqrt(spreadX),
		interceptStandardError: residualSd * Math.sqrt(1 / n + meanX ** 2 / spreadX),
		meanX,
		spreadX
	};
}
