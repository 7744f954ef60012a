import type { Placed } from './candidateFeatures';
import { excessDeg } from './findCandidates';
import type { RideContext } from './rideContext';

/**
 * Size that decides whether an excess is reported at all: measured against the ratio around it, or against the
 * seven seconds before it, whichever says more.
 *
 * @returns crank degrees
 */
export function reportSizeDeg(context: RideContext, placed: Placed): number {
	const long = excessDeg(context.signals, placed.from, placed.to, context.base.before7[placed.from]);
	return Number.isNaN(long) ? placed.carefulDeg : Math.max(placed.carefulDeg, long);
}
