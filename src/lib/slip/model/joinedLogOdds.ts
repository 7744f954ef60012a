/** Share of the nets in what is told: chosen on rides left out, where 0.1 to 0.3 hardly differ. */
export const NET_SHARE = 0.2;
/** More than this of the nets counts as this, so that the trees alone can say that a candidate will not be reported. */
export const MOST_OF_NETS = 4;

/**
 * Trees and nets together: trees read what is known of peaks, nets the seconds themselves, and they err in different
 * places.
 *
 * @param trees log odds of the trees, or the most that they can give
 * @param nets mean log odds of the nets; the most that they can give when left out
 * @returns log odds
 * @example joinedLogOdds(3, 2) // 0.8 x 3 + 0.2 x 2 = 2.8
 */
export function joinedLogOdds(trees: number, nets = MOST_OF_NETS): number {
	return (1 - NET_SHARE) * trees + NET_SHARE * Math.min(MOST_OF_NETS, nets);
}

/** Log odds of the trees below which a candidate cannot reach these log odds, whatever the nets say. */
export function leastOfTrees(logOdds: number): number {
	return (logOdds - NET_SHARE * MOST_OF_NETS) / (1 - NET_SHARE);
}
