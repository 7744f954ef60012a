import regularizedGamma from '@stdlib/math-base-special-gammainc';
import logGamma from '@stdlib/math-base-special-gammaln';

/** above this mean the library's incomplete gamma function is wrong by up to 30 % (measured) */
const LIBRARY_UP_TO_MEAN = 1000;

/** Probability of exactly `count` events when `mean` are expected; mean >= 0. */
export function poissonExactly(count: number, mean: number): number {
	if (count < 0) return 0;
	if (mean === 0) return count === 0 ? 1 : 0;
	return Math.exp(count * Math.log(mean) - mean - logGamma(count + 1));
}

/**
 * The probability of at most `count` events when `mean` are expected. By the relation of Poisson and
 * gamma it is also the upper tail of a chi-square variable: P(chi2 with 2 count + 2 degrees > 2 mean).
 *
 * @param count whole number; below 0 the answer is 0
 * @param mean events expected, >= 0
 * @returns probability; NaN for a negative or missing mean
 * @example poissonAtMost(3, 3) // 0.64723
 * Source: library below a mean of 1000, above it the sum of the terms; both against R in tests/published.
 */
export function poissonAtMost(count: number, mean: number): number {
	if (!(mean >= 0)) return NaN;
	if (count < 0) return 0;
	if (mean === 0) return 1;
	if (mean <= LIBRARY_UP_TO_MEAN) return regularizedGamma(mean, count + 1, true, true);
	return count < mean ? sumDown(count, mean) : 1 - sumUp(count + 1, mean);
}

/** The probability of at least `count` events when `mean` are expected; see `poissonAtMost`. */
export function poissonAtLeast(count: number, mean: number): number {
	if (!(mean >= 0)) return NaN;
	if (count <= 0) return 1;
	if (mean === 0) return 0;
	if (mean <= LIBRARY_UP_TO_MEAN) return regularizedGamma(mean, count, true, false);
	return count > mean ? sumUp(count, mean) : 1 - sumDown(count - 1, mean);
}

function sumDown(from: number, mean: number): number {
	let sum = 0;
	for (let term = poissonExactly(from, mean), i = from; i >= 0 && term > sum * 1e-18; i--) {
		sum += term;
		term *= i / mean;
	}
	return sum;
}

function sumUp(from: number, mean: number): number {
	let sum = 0;
	for (let term = poissonExactly(from, mean), i = from; term > sum * 1e-18; i++) {
		sum += term;
		term *= mean / (i + 1);
	}
	return sum;
}
