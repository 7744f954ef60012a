import { checkConfidence, checkPositive } from './checks';
import type { Resampling } from './countedAgainstExpectedBootstrap';
import { poissonRateLimits, type RateLimits } from './poissonRateLimits';
import { randomNumbers } from './randomNumbers';
import { sampleQuantile } from './sampleQuantile';
import { unitTotals, type UnitCount } from './unitCounts';

export interface BootstrapRate extends RateLimits {
	/** standard deviation of the drawn rates; NaN when nothing was drawn */
	readonly standardError: number;
	/** false: exact Poisson limits, because there is nothing to draw from (no event, or one unit) */
	readonly drawn: boolean;
}

/**
 * The rate over all units with limits from drawing whole units again, with replacement: bursts stay together.
 * With few units, or events in few of them, the limits are too narrow; and units without any event would give
 * the limits 0 and 0, so that case gets the exact limits instead.
 *
 * @param units counts and exposures of outings; units without exposure are left out
 * @param confidence two-sided, 0 < confidence < 1
 * @param resampling seed and number of draws, both recorded with the result
 * @returns rate and percentile limits
 * @throws RangeError for broken counts, exposures, confidences or numbers of draws
 * @example bootstrapRate(rides, 0.95, { seed: 77, resamples: 2000 })
 * Source: Efron and Tibshirani 1993, An Introduction to the Bootstrap, chapters 6 and 13.
 */
export function bootstrapRate(
	units: readonly UnitCount[],
	confidence: number,
	{ seed, resamples }: Resampling
): BootstrapRate {
	checkConfidence('confidence', confidence);
	checkPositive('resamples', resamples);
	const { count, exposure, rate } = unitTotals(units);
	const watched = units.filter((unit) => unit.exposure > 0);
	if (count === 0 || watched.length < 2)
		return { ...poissonRateLimits(count, exposure, confidence), standardError: NaN, drawn: false };
	const draw = randomNumbers(seed);
	const rates = new Float64Array(resamples);
	for (let i = 0; i < resamples; i++) {
		let [events, seen] = [0, 0];
		for (let k = 0; k < watched.length; k++) {
			const unit = watched[draw.below(watched.length)];
			events += unit.count;
			seen += unit.exposure;
		}
		rates[i] = events / seen;
	}
	rates.sort();
	const mean = rates.reduce((sum, one) => sum + one, 0) / resamples;
	const squares = rates.reduce((sum, one) => sum + (one - mean) ** 2, 0);
	const tail = (1 - confidence) / 2;
	return {
		rate,
		lower: sampleQuantile(rates, tail),
		upper: sampleQuantile(rates, 1 - tail),
		standardError: Math.sqrt(squares / (resamples - 1)),
		drawn: true
	};
}
