import { clusteredCount } from './clusteredCount';
import type { UnitCount } from './unitCounts';

/**
 * The dispersion that a later series with few events may borrow from this one, for `widestRateInterval` and
 * `clusteredCount`. A series that has too few events itself to show bursts has nothing to lend: what it would lend
 * is chance, and the page must go on saying "assumes that events do not cluster".
 *
 * @param units counts and exposures of the lender's outings
 * @returns variance / mean, 1 or more; undefined below 20 events or 8 outings
 * @throws RangeError for broken counts or exposures
 * @example widestRateInterval(ridesAfter, 0.95, borrowableDispersion(ridesBefore))
 * Source: see `clusteredCount`; the bounds are ours, from the coverage simulation.
 */
export function borrowableDispersion(units: readonly UnitCount[]): number | undefined {
	const { assumesSingleEvents, ownDispersion } = clusteredCount(units);
	return assumesSingleEvents ? undefined : ownDispersion;
}
