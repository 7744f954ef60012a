import observedModel from './model/observed.json';
import { sizeTerm, type ObservedModel } from './model/observedModel';

/**
 * How likely a slip of a size is to be found where a ride states a detection limit, as the learned model says:
 * its log odds grow by a fixed slope with the logarithm of the size up to the full size, and at the limit they are those from which on
 * a second is called observed. Slips that are put into rides tell whether that is so (tests/bench/insertion.ts).
 *
 * @param limitDeg smallest overrun that is called visible there, crank degrees; NaN = none
 * @param sizeDeg overrun of the slip, crank degrees, > 0
 * @returns 0 to 1; NaN where no limit is stated
 */
export function detectionChance(limitDeg: number, sizeDeg: number): number {
	const { leastLogOdds, sizeSlope } = observedModel as ObservedModel;
	return 1 / (1 + Math.exp(-leastLogOdds - sizeSlope * (sizeTerm(sizeDeg) - sizeTerm(limitDeg))));
}
