import type { DriveSignals } from './driveSignals';

/** Distance must be this much calmer against cadence than speed is. */
const CALMER = 0.7;
/** Fewer seconds of pedalling say nothing (common practice, no source). */
const LEAST_SECONDS = 300;
/** Distance may come a second earlier or later than the speed of the same file. */
const LAGS_S = [-1, 0, 1];
/** Slower than this a step of distance is mostly rounding. */
const LEAST_STEP_M = 1.5;
/** Larger changes of the ratio are shifts, dips and slips, not scatter. */
const CUT = 0.08;
/** Slower turns are mostly positioning the cranks. */
const TURNING_RPM = 40;

/**
 * Whether the steps of the recorded distance fit the cadence better than the recorded speed does: some devices
 * smooth or hold the speed that they show and count the distance by the wheel. Only said, never used by itself:
 * which of the two a ride is judged by must not change from ride to ride.
 *
 * @param signals the ride's signals
 * @param recordedM recorded distance a second, NaN = not recorded
 * @returns mean change of the ratio from second to second by each (larger ones cut at 8 %), and whether distance is clearly
 *   calmer; NaN and false where too little was pedalled
 */
export function distanceTellsMore(
	signals: DriveSignals,
	recordedM: Float64Array
): { bySpeed: number; byDistance: number; more: boolean } {
	const bySpeed = ratioChange(signals, signals.grid.speedMps, [signals.lagS]);
	const steps = new Float64Array(recordedM.length).fill(NaN);
	for (let t = 1; t < steps.length; t++) steps[t] = recordedM[t] - recordedM[t - 1];
	const byDistance = ratioChange(
		signals,
		steps,
		LAGS_S.map((off) => signals.lagS + off)
	);
	return { bySpeed, byDistance, more: byDistance < CALMER * bySpeed };
}

/** Least mean change of ln(cadence / way) over the lags tried, each change cut where a shift or a dip begins. */
function ratioChange(signals: DriveSignals, wayM: Float64Array, lagsS: readonly number[]): number {
	const { cadenceRpm, seconds } = signals.grid;
	let least = NaN;
	for (const lagS of lagsS) {
		let sum = 0;
		let count = 0;
		let before = NaN;
		for (let t = 3; t + 3 < seconds; t++) {
			const way = wayM[t + lagS];
			const turning = signals.pressing[t] && cadenceRpm[t] >= TURNING_RPM && way >= LEAST_STEP_M;
			const now = turning ? Math.log(cadenceRpm[t] / way) : NaN;
			const change = Math.abs(now - before);
			before = now;
			if (!(change >= 0)) continue;
			sum += Math.min(change, CUT);
			count++;
		}
		if (count < LEAST_SECONDS) continue;
		const mean = sum / count;
		if (!(mean >= least)) least = mean;
	}
	return least;
}
