import { REFERENCE_SLIP_CRANK_DEG, type ObservedStretch } from './analysis';
import type { SecondGrid } from '$lib/drivetrain/secondGrid';

/**
 * Stretches that could have shown a slip of the reference size: on all of them together nine in ten are to be found.
 *
 * @param grid the ride on whole seconds
 * @param detectionLimitCrankDeg smallest overrun found at each second, NaN = none
 * @returns stretches in order; second t stands for the time from t to t + 1
 */
export function observedStretches(grid: SecondGrid, detectionLimitCrankDeg: Float64Array): ObservedStretch[] {
	const stretches: ObservedStretch[] = [];
	let from = -1;
	for (let t = 0; t <= grid.seconds; t++) {
		const seen = t < grid.seconds && detectionLimitCrankDeg[t] <= REFERENCE_SLIP_CRANK_DEG;
		if (seen && from < 0) from = t;
		if (!seen && from >= 0) {
			const last = Math.min(grid.seconds - 1, t);
			stretches.push({ startS: from, endS: t, startM: grid.distanceM[from], endM: grid.distanceM[last] });
			from = -1;
		}
	}
	return stretches;
}
