import { logisticReachesChance } from '$lib/reliability/logisticReachesChance';
import { logisticRegression } from '$lib/reliability/logisticRegression';

/** The size of which half of the slips are found, crank degrees, with limits. */
export interface HalfFound {
	readonly crankDeg: number;
	readonly lower: number;
	readonly upper: number;
}

/**
 * At which size half of the slips put into a ride are found: an S-curve of the logarithm of the size.
 *
 * @param sizes slips put in and found, by size in crank degrees
 * @returns null where the slips do not tell: hardly any found, hardly any missed, no clear growth with the
 *   size, or a size beyond those that were put in
 */
export function halfFound(
	sizes: readonly { crankDeg: number; put: number; found: number }[],
	confidence: number
): HalfFound | null {
	const tried = sizes.filter(({ put }) => put > 0);
	if (tried.length < 2) return null;
	const fit = logisticRegression(
		tried.map(({ crankDeg, put, found }) => ({ x: Math.log(crankDeg), events: found, exposure: put }))
	);
	if (fit.kind !== 'fit' || fit.slope <= 0) return null;
	const { kind, at, lower, upper } = logisticReachesChance(fit, 0.5, confidence);
	const crankDeg = Math.exp(at);
	const put = tried.map((size) => size.crankDeg);
	if (kind !== 'between' || crankDeg < Math.min(...put) || crankDeg > Math.max(...put)) return null;
	return { crankDeg, lower: Math.exp(lower), upper: Math.exp(upper) };
}
