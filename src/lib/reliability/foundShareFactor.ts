import { normalQuantile } from './normalQuantile';
import type { PositiveLimits } from './limitsTimesFactor';

/** Counts of one class, and the share of such events that is found. */
export interface FoundClass {
	readonly count: number;
	/** above 0, at most 1 */
	readonly share: number;
	readonly variance: number;
}

/**
 * By how much counts have to be multiplied for what was not found: each event stands for 1 / share of its class.
 * The limits carry the variance of the shares on the logarithm; the factor is never below 1.
 *
 * @param classes with at least one count in all; each class with its own trials
 * @param confidence two-sided, 0 < confidence < 1
 * @returns NaN without counts, or where nothing of a class with counts is found
 * @example foundShareFactor([{ count: 3, share: 0.5, variance: 0 }], 0.95) // { value: 2, lower: 2, upper: 2 }
 * Source: Horvitz and Thompson 1952, J. Amer. Statist. Assoc. 47:663; variance by the delta method.
 */
export function foundShareFactor(classes: readonly FoundClass[], confidence: number): PositiveLimits {
	if (!(confidence > 0 && confidence < 1))
		throw new RangeError(`confidence must lie between 0 and 1; it is ${confidence}`);
	const used = classes.filter(({ count }) => count > 0);
	const count = used.reduce((sum, one) => sum + one.count, 0);
	if (count === 0 || used.some(({ share }) => !(share > 0))) return { value: NaN, lower: NaN, upper: NaN };
	const value = used.reduce((sum, one) => sum + one.count / one.share, 0) / count;
	const variance = used.reduce(
		(sum, one) => sum + ((one.count / count) ** 2 * one.variance) / one.share ** 4,
		0
	);
	const spread = Math.exp((normalQuantile(1 - (1 - confidence) / 2) * Math.sqrt(variance)) / value);
	return { value, lower: Math.max(1, value / spread), upper: value * spread };
}
