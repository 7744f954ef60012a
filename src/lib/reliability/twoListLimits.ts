import logGamma from '@stdlib/math-base-special-gammaln';

/**
 * Exact limits of the number of all events from two lists made apart from each other: the totals at which so few,
 * or so many, on both lists would not be improbable.
 *
 * @param first events on the first list; @param second on the second; @param both on both
 * @param confidence two-sided, 0 < confidence < 1
 * @returns whole numbers; upper Infinity when no event is on both
 * @example twoListLimits(100, 150, 20, 0.95) // { lower: 530, upper: 1158 }
 * Source: tails of the hypergeometric distribution, as Clopper and Pearson 1934 for the binomial; checked against R
 * in tests/published.
 */
export function twoListLimits(
	first: number,
	second: number,
	both: number,
	confidence: number
): { lower: number; upper: number } {
	const tail = (1 - confidence) / 2;
	const seen = first + second - both;
	const chance = (total: number, from: number, to: number) => overlapChance(total, first, second, from, to);
	const lower = firstWhere(seen, (total) => chance(total, 0, both) > tail);
	if (both === 0) return { lower, upper: Infinity };
	const tooMany = (total: number) => chance(total, both, Math.min(first, second)) <= tail;
	return { lower, upper: firstWhere(seen, tooMany) - 1 };
}

/** chance that a sample of `second` out of `total` holds from `from` to `to` of the `first` */
function overlapChance(total: number, first: number, second: number, from: number, to: number): number {
	const choose = (n: number, k: number) => logGamma(n + 1) - logGamma(k + 1) - logGamma(n - k + 1);
	const all = choose(total, second);
	let sum = 0;
	for (let k = Math.max(from, first + second - total, 0); k <= Math.min(to, first, second); k++)
		sum += Math.exp(choose(first, k) + choose(total - first, second - k) - all);
	return sum;
}

/** the first whole number from `start` at which a condition holds that, once it holds, goes on holding */
function firstWhere(start: number, holds: (n: number) => boolean): number {
	let step = 1;
	while (!holds(start + step - 1)) step *= 2;
	let [low, high] = [start - 1, start + step - 1];
	while (high - low > 1) {
		const middle = Math.floor((low + high) / 2);
		if (holds(middle)) high = middle;
		else low = middle;
	}
	return high;
}
