import logGamma from '@stdlib/math-base-special-gammaln';
import { checkCount, checkFinite } from './checks';
import type { InfluencePoint } from './isotonicRegression';
import { logisticSummit } from './logisticSummit';
import { normalAbove } from './normalAbove';

/** A chance of an event that follows an S-curve of x: log odds = intercept + slope x. */
export interface LogisticFit {
	readonly kind: 'fit';
	readonly intercept: number;
	readonly slope: number;
	readonly interceptVariance: number;
	readonly slopeVariance: number;
	readonly covariance: number;
	/** twice the log likelihood that is missing to a perfect fit of every point */
	readonly deviance: number;
	/** the same for one chance at all x */
	readonly nullDeviance: number;
	readonly logLikelihood: number;
	/** two-sided p-value of "x plays no part", by the likelihood ratio */
	readonly pNoInfluence: number;
}

/**
 * No curve can be fitted: `separated` when some x parts all events from all trials without one, so that the
 * steepest curve is always better; `noEvents`, `onlyEvents`; `oneValue` when all trials have the same x.
 */
export interface NoLogisticFit {
	readonly kind: 'separated' | 'noEvents' | 'onlyEvents' | 'oneValue';
}

/**
 * The chance of an event in a trial as an S-curve of an influence (maximum likelihood). Says when there is no
 * finite answer instead of giving a huge slope.
 *
 * @param points x, events and trials (`exposure`, whole); points without trials are left out
 * @returns the fit, or why there is none
 * @throws RangeError for an x that is not finite, broken counts, more events than trials
 * @example logisticRegression(pulls) // { kind: 'fit', slope: 0.092, intercept: -8.87, ... }
 * Source: Newton's method on the binomial likelihood, McCullagh and Nelder 1989, Generalized Linear Models, 2nd
 * ed., chapter 4; separation: Albert and Anderson 1984, Biometrika 71:1; checked against R's glm and the Bliss
 * 1935 beetles in tests/published.
 */
export function logisticRegression(points: readonly InfluencePoint[]): LogisticFit | NoLogisticFit {
	points.forEach(checkTrials);
	const tried = points.filter((point) => point.exposure > 0);
	const without = noFit(tried);
	if (without) return without;
	const mean = sumOf(tried, (p) => p.x * p.exposure) / sumOf(tried, (p) => p.exposure);
	const spread = tried.reduce((largest, p) => Math.max(largest, Math.abs(p.x - mean)), 0);
	// x is centred and scaled: Newton's steps then neither overflow nor lose digits
	const scaled = tried.map((point) => ({ ...point, x: (point.x - mean) / spread }));
	const { a, b, aa, ab, bb } = logisticSummit(scaled);
	const determinant = aa * bb - ab * ab;
	const slopeVariance = aa / determinant / spread ** 2;
	const between = -ab / determinant / spread;
	const nullChance = sumOf(tried, (p) => p.events) / sumOf(tried, (p) => p.exposure);
	const logLikelihood = scaled.reduce((sum, p) => sum + logChance(p, 1 / (1 + Math.exp(-(a + b * p.x)))), 0);
	const perfect = tried.reduce((sum, p) => sum + logChance(p, p.events / p.exposure), 0);
	const none = tried.reduce((sum, p) => sum + logChance(p, nullChance), 0);
	return {
		kind: 'fit',
		intercept: a - (b * mean) / spread,
		slope: b / spread,
		interceptVariance: bb / determinant - 2 * mean * between + mean ** 2 * slopeVariance,
		slopeVariance,
		covariance: between - mean * slopeVariance,
		deviance: 2 * (perfect - logLikelihood),
		nullDeviance: 2 * (perfect - none),
		logLikelihood,
		pNoInfluence: 2 * normalAbove(Math.sqrt(Math.max(0, 2 * (logLikelihood - none))))
	};
}

function checkTrials({ x, events, exposure }: InfluencePoint): void {
	checkFinite('x', x);
	checkCount('events', events);
	checkCount('exposure', exposure);
	if (events > exposure)
		throw new RangeError(`events must not exceed trials; they are ${events} of ${exposure}`);
}

/** why there is no finite answer: told from the ranges of x with and without an event */
function noFit(points: readonly InfluencePoint[]): NoLogisticFit | null {
	const hits = rangeOf(points.filter((p) => p.events > 0));
	const misses = rangeOf(points.filter((p) => p.events < p.exposure));
	if (hits.low > hits.high) return { kind: 'noEvents' };
	if (misses.low > misses.high) return { kind: 'onlyEvents' };
	const all = rangeOf(points);
	if (all.low === all.high) return { kind: 'oneValue' };
	return misses.high <= hits.low || hits.high <= misses.low ? { kind: 'separated' } : null;
}

function rangeOf(points: readonly InfluencePoint[]): { low: number; high: number } {
	return points.reduce(({ low, high }, { x }) => ({ low: Math.min(low, x), high: Math.max(high, x) }), {
		low: Infinity,
		high: -Infinity
	});
}

function logChance({ events, exposure }: InfluencePoint, chance: number): number {
	const ways = logGamma(exposure + 1) - logGamma(events + 1) - logGamma(exposure - events + 1);
	const part = (count: number, of: number) => (count === 0 ? 0 : count * Math.log(of));
	return ways + part(events, chance) + part(exposure - events, 1 - chance);
}

function sumOf(points: readonly InfluencePoint[], of: (point: InfluencePoint) => number): number {
	return points.reduce((sum, point) => sum + of(point), 0);
}
