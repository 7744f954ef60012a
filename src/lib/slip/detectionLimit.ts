import { REFERENCE_SLIP_CRANK_DEG } from './analysis';
import observedModel from './model/observed.json';
import type { ObservedModel } from './model/observedModel';
import { treeLogOdds } from './model/treeModel';
import { observationFeatures } from './observationFeatures';
import { LEAST_REPORTED_DEG } from './reportLimits';
import type { RideContext } from './rideContext';
import { isPowerSlow } from './rideResponse';

/** A limit beyond this is none: such an overrun is felt and heard rather than recorded. */
const LARGEST_DEG = 400;

/**
 * Smallest overrun that would be found at each second with 90 % probability. Learned from slips that were put into
 * rides and found, or not, by detectors that had not seen the ride (tests/bench/training); it looks at noise, state
 * and gears around the second, never at what happens in it.
 *
 * @param context what was learned of the ride
 * @returns crank degrees a second; NaN = none would be found, as where nobody presses (no drive, no slip) or where
 *   the power meter is too slow to show the loss of drive
 */
export function detectionLimit(context: RideContext): Float64Array {
	const out = new Float64Array(context.signals.grid.seconds).fill(NaN);
	if (isPowerSlow(context.response)) return out;
	const model = observedModel as ObservedModel;
	const { pressing, grid } = context.signals;
	const columns = observationFeatures(context);
	const row = new Float64Array(columns.length);
	for (let t = 0; t < grid.seconds; t++) {
		if (!pressing[t] || Number.isNaN(grid.powerW[t])) continue;
		for (let k = 0; k < row.length; k++) row[k] = columns[k][t];
		const short = model.leastLogOdds - treeLogOdds(model, row);
		const limitDeg = REFERENCE_SLIP_CRANK_DEG * Math.exp(short / model.sizeSlope);
		if (limitDeg <= LARGEST_DEG) out[t] = Math.max(LEAST_REPORTED_DEG, limitDeg);
	}
	return out;
}
