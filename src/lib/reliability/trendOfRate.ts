import { chiSquareTrendTest } from './chiSquareTrendTest';
import { laplaceTrendTest, type TrendTest } from './laplaceTrendTest';
import { powerLawInWindows, type WindowedPowerLaw } from './powerLawInWindows';
import type { WatchedHistory } from './watchedHistory';

/** below so many events no trend is told (common practice, no source) */
export const FEWEST_EVENTS_FOR_TREND = 5;

export interface TrendOfRate {
	/**
	 * `rising`, `falling`: the limits of the shape leave out 1. `notShown`: they do not, which is no proof of a
	 * constant rate. `tooFew`: fewer than five events, or no fit.
	 */
	readonly verdict: 'rising' | 'falling' | 'notShown' | 'tooFew';
	readonly events: number;
	readonly fit: WindowedPowerLaw | null;
	readonly laplace: TrendTest | null;
	readonly chiSquare: TrendTest | null;
}

/**
 * Does the rate of events change with age? The windowed power law decides, because it alone knows what was not
 * watched and at which age; the two classical tests stand beside it.
 *
 * @param histories one a system; an event at age 0 has no logarithm: set it a little later
 * @param confidence two-sided, 0 < confidence < 1
 * @param dispersion variance / mean of whole outings where events come in bursts (`clusteredCount`); without it a
 *   burst passes for a trend. The two classical tests always take events for single
 * @returns verdict and figures
 * @throws RangeError for windows that overlap, events outside them, a confidence outside (0, 1)
 * @example trendOfRate([watchedFromNew([900, 1300, 1400, 1450, 1490], 1500)], 0.95).verdict // 'rising'
 * Source: see the functions used.
 */
export function trendOfRate(
	histories: readonly WatchedHistory[],
	confidence: number,
	dispersion = 1
): TrendOfRate {
	const fit = powerLawInWindows(histories, confidence, dispersion);
	const events = histories.reduce((sum, history) => sum + history.events.length, 0);
	const told = {
		events,
		fit,
		laplace: laplaceTrendTest(histories),
		chiSquare: chiSquareTrendTest(histories)
	};
	if (fit === null || events < FEWEST_EVENTS_FOR_TREND) return { verdict: 'tooFew', ...told };
	if (fit.shapeLower > 1) return { verdict: 'rising', ...told };
	return { verdict: fit.shapeUpper < 1 ? 'falling' : 'notShown', ...told };
}
