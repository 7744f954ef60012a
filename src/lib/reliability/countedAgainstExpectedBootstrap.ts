import { checkConfidence, checkPositive } from './checks';
import { countedAgainstExpected, type ExpectedStratum } from './countedAgainstExpected';
import { randomNumbers } from './randomNumbers';
import { sampleQuantile } from './sampleQuantile';

/** What was drawn, so that it can be drawn again. */
export interface Resampling {
	readonly seed: number;
	readonly resamples: number;
}

/**
 * Limits of counted over expected by drawing every count anew from a Poisson distribution with the count as
 * its mean. Beside `countedAgainstExpected`, as a check: a drawn count of few events is coarse, and where
 * nothing was counted or expected it learns nothing.
 *
 * @param strata as for `countedAgainstExpected`
 * @param confidence two-sided, 0 < confidence < 1
 * @param resampling seed and number of draws, both recorded with the result
 * @returns ratio and percentile limits; null when nothing was counted or nothing expected
 * @throws RangeError for counts, exposures or a confidence outside their ranges
 * @example countedAgainstExpectedBootstrap(strata, 0.95, { seed: 1, resamples: 2000 })
 * Source: parametric percentile bootstrap, Efron and Tibshirani 1993, An Introduction to the Bootstrap,
 * chapters 6 and 13.
 */
export function countedAgainstExpectedBootstrap(
	strata: readonly ExpectedStratum[],
	confidence: number,
	{ seed, resamples }: Resampling
): { ratio: number; lower: number; upper: number } | null {
	checkConfidence('confidence', confidence);
	checkPositive('resamples', resamples);
	const { counted, expected, ratio } = countedAgainstExpected(strata, confidence);
	if (counted === 0 || !(expected > 0)) return null;
	const draw = randomNumbers(seed);
	const compared = strata.filter((s) => s.referenceExposure > 0 && s.exposure > 0);
	const ratios = new Float64Array(resamples);
	for (let i = 0; i < resamples; i++) {
		const drawnCount = draw.poisson(counted);
		let drawnExpected = 0;
		for (const s of compared)
			drawnExpected += (draw.poisson(s.referenceCount) * s.exposure) / s.referenceExposure;
		// nothing drawn on either side leaves the ratio open: it counts as infinite, never as small
		ratios[i] = drawnExpected === 0 ? Infinity : drawnCount / drawnExpected;
	}
	ratios.sort();
	const tail = (1 - confidence) / 2;
	return { ratio, lower: sampleQuantile(ratios, tail), upper: sampleQuantile(ratios, 1 - tail) };
}
