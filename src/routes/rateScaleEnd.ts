import { ticks } from 'd3';
import type { CountView, RateView } from '$lib/server/views';

/**
 * One end of the scale for all rates on a page, so that their intervals can be set against each other. The
 * widest interval must not squeeze the others: the end is at most three times the greatest rate.
 *
 * @returns slips per 100 observed km, a round number > 0
 */
export function rateScaleEnd(builds: readonly { readonly counted: CountView }[]): number {
	return scaleEndOf(builds.flatMap(({ counted }) => [counted.bestCase, counted.worstCase]));
}

/** The same for rates of any origin. */
export function scaleEndOf(
	rates: readonly Pick<RateView, 'ratePerHundredKm' | 'upperPerHundredKm'>[]
): number {
	const upper = Math.max(1, ...rates.map((rate) => rate.upperPerHundredKm ?? 0));
	const highest = Math.max(...rates.map((rate) => rate.ratePerHundredKm ?? 0), 0);
	const wanted = highest > 0 ? Math.min(upper, 3 * highest) : upper;
	const [, step] = ticks(0, wanted, 4);
	return Math.ceil(wanted / step) * step;
}
