const WIDTHS_M = [25_000, 50_000, 100_000, 250_000, 500_000, 1_000_000, 2_000_000, 5_000_000];

/** as many bins as can still be told apart on a phone */
const MOST_BINS = 12;

/**
 * Width of the bins of distance for a life of this length: the narrowest that gives at most 12 bins. It
 * depends on the distance alone, never on where slips lie.
 *
 * @param endM the farthest that a wheel has run, metres
 * @example binWidthM(600_000) // 50 km: 12 bins
 */
export function binWidthM(endM: number): number {
	return WIDTHS_M.find((width) => endM / width <= MOST_BINS) ?? WIDTHS_M[WIDTHS_M.length - 1];
}
