import { at, type Placed } from './candidateFeatures';
import type { RideContext } from './rideContext';

/** Less than this share of the engaged cadence: the crank stood or turned slowly while the wheel rolled on. */
const FREE_SHARE = 0.9;

/**
 * Whether an excess began as pedalling resumed: then the pick-up failed, where it would else be a slip under load.
 * Only what comes BEFORE the excess decides: in a slip power collapses too, often in the second of the jump and on
 * some devices one record ahead of it. Missing records are no rest.
 *
 * @param context what was learned of the ride
 * @param placed the excess in its place
 * @param from second in which it begins
 */
export function isFailedPickUp(context: RideContext, placed: Placed, from: number): boolean {
	const { pressing, grid, speedMps } = context.signals;
	const before = from - 1;
	if (before < 0 || pressing[before] || Number.isNaN(grid.cadenceRpm[before])) return false;
	const engagedRpm = 60 * speedMps[before] * Math.exp(placed.high);
	const turnsWithWheel = grid.cadenceRpm[before] >= FREE_SHARE * engagedRpm;
	return !(turnsWithWheel && at(pressing, before - 1) === 1);
}
