import { checkConfidence } from './checks';
import { chiSquareQuantile } from './chiSquareQuantile';
import type { InfluencePoint } from './isotonicRegression';
import { logisticRegression } from './logisticRegression';
import { rootBetween } from './rootBetween';

/**
 * Limits of the slope of an S-curve by the likelihood itself: with few events they are fairer than limits from the
 * standard error, which take the likelihood for symmetric.
 *
 * @param points as for `logisticRegression`
 * @param confidence two-sided, 0 < confidence < 1
 * @returns slope and limits, in log odds per unit of x; null where there is no finite fit
 * @throws RangeError for broken points or a confidence outside (0, 1)
 * @example logisticSlopeLimits(pulls, 0.95) // { slope: 0.092, lower: 0.0676, upper: 0.1195 }
 * Source: Venzon and Moolgavkar 1988, Applied Statistics 37:87 (profile likelihood; from memory); checked against
 * R's confint in tests/published.
 */
export function logisticSlopeLimits(
	points: readonly InfluencePoint[],
	confidence: number
): { slope: number; lower: number; upper: number } | null {
	checkConfidence('confidence', confidence);
	const fit = logisticRegression(points);
	if (fit.kind !== 'fit') return null;
	const tried = points.filter((point) => point.exposure > 0);
	const top = highestLikelihood(tried, fit.slope);
	const drop = chiSquareQuantile(confidence, 1) / 2;
	const below = (slope: number) => highestLikelihood(tried, slope) - top + drop;
	// the likelihood has one summit: step outwards until it has fallen far enough
	const edge = (direction: 1 | -1) => {
		let step = Math.sqrt(fit.slopeVariance);
		while (below(fit.slope + direction * step) > 0) step *= 2;
		return rootBetween(below, fit.slope, fit.slope + direction * step);
	};
	return { slope: fit.slope, lower: edge(-1), upper: edge(1) };
}

/** log likelihood at this slope with the best intercept for it (without what depends on the data alone) */
function highestLikelihood(points: readonly InfluencePoint[], slope: number): number {
	const chance = (logOdds: number) => 1 / (1 + Math.exp(-logOdds));
	const surplus = (intercept: number) =>
		points.reduce((sum, p) => sum + p.events - p.exposure * chance(intercept + slope * p.x), 0);
	const reach = points.reduce((largest, p) => Math.max(largest, Math.abs(slope * p.x)), 0);
	const intercept = rootBetween(surplus, -reach - 60, reach + 60);
	return points.reduce((sum, { x, events, exposure }) => {
		const logOdds = intercept + slope * x;
		// log(1 + e^z) without overflow
		return (
			sum + events * logOdds - exposure * (Math.max(0, logOdds) + Math.log1p(Math.exp(-Math.abs(logOdds))))
		);
	}, 0);
}
