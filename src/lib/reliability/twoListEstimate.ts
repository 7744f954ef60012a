import { checkConfidence, checkCount } from './checks';
import { normalQuantile } from './normalQuantile';
import { twoListLimits } from './twoListLimits';

export interface TwoListEstimate {
	/** estimated number of all events, seen or not */
	readonly total: number;
	readonly variance: number;
	/** on at least one of the lists */
	readonly seen: number;
	/** exact limits of the whole number; the upper one is Infinity when no event is on both lists */
	readonly lower: number;
	readonly upper: number;
	/** limits on the logarithm of the unseen: never below the number seen; NaN when nothing is unseen */
	readonly unseenLogLower: number;
	readonly unseenLogUpper: number;
	/** share of the second list that the first one found, and the other way round; NaN for an empty list */
	readonly firstFinds: number;
	readonly secondFinds: number;
	/** true: the lists share no event, so the figure is finite but carries no information */
	readonly emptyOverlap: boolean;
}

/**
 * How many events there were, from two lists that were made apart from each other and the events on both
 * (Chapman's estimate). If what one list finds is also easier for the other, the estimate is too LOW: a lower
 * bound, never a correction upwards of one's own merit.
 *
 * @param onFirst events on the first list
 * @param onSecond events on the second list
 * @param onBoth events on both, at most the smaller of the two
 * @param confidence two-sided, 0 < confidence < 1
 * @returns estimate and limits; both lists empty: total 0, upper Infinity
 * @throws RangeError for broken counts, more on both than on one, a confidence outside (0, 1)
 * @example twoListEstimate(100, 150, 20, 0.95).total // 725.24
 * Source: Chapman 1951, Univ. California Publ. Statist. 1:131; variance Seber 1970, Biometrika 26:13; limits by
 * the hypergeometric tails. Published example 100, 150, 20 in tests/published.
 */
export function twoListEstimate(
	onFirst: number,
	onSecond: number,
	onBoth: number,
	confidence: number
): TwoListEstimate {
	checkCount('onFirst', onFirst);
	checkCount('onSecond', onSecond);
	checkCount('onBoth', onBoth);
	checkConfidence('confidence', confidence);
	if (onBoth > Math.min(onFirst, onSecond))
		throw new RangeError(`onBoth must not exceed either list; it is ${onBoth}`);
	const total = ((onFirst + 1) * (onSecond + 1)) / (onBoth + 1) - 1;
	const variance =
		((onFirst + 1) * (onSecond + 1) * (onFirst - onBoth) * (onSecond - onBoth)) /
		((onBoth + 1) ** 2 * (onBoth + 2));
	const seen = onFirst + onSecond - onBoth;
	const unseen = total - seen;
	const spread = Math.exp(
		normalQuantile(1 - (1 - confidence) / 2) * Math.sqrt(Math.log1p(variance / unseen ** 2))
	);
	return {
		total,
		variance,
		seen,
		...twoListLimits(onFirst, onSecond, onBoth, confidence),
		unseenLogLower: unseen > 0 ? seen + unseen / spread : NaN,
		unseenLogUpper: unseen > 0 ? seen + unseen * spread : NaN,
		firstFinds: onSecond === 0 ? NaN : onBoth / onSecond,
		secondFinds: onFirst === 0 ? NaN : onBoth / onFirst,
		emptyOverlap: onBoth === 0
	};
}
