import type { DriveSignals } from './driveSignals';
import { median } from './median';

/** Distance must be this much calmer against cadence than speed is. */
const CALMER = 0.7;
/** Fewer seconds of pedalling say nothing (common practice, no source). */
const LEAST_SECONDS = 300;
/** Distance may come later or earlier than cadence by this much, as speed does. */
const LAGS_S = [-2, -1, 0, 1, 2];
/** Slower than this a step of distance is mostly rounding. */
const LEAST_STEP_M = 1.5;
/** Slower turns are mostly positioning the cranks. */
const TURNING_RPM = 40;

/**
 * Whether the steps of the recorded distance fit the cadence better than the recorded speed does: some devices
 * smooth or hold the speed that they show and count the distance by the wheel. Only said, never used by itself:
 * which of the two a ride is judged by must not change from ride to ride.
 *
 * @param signals the ride's signals
 * @param recordedM recorded distance a second, NaN = not recorded
 * @returns typical change of the ratio from second to second by each (as medians), and whether distance is clearly
 *   calmer; NaN and false where too little was pedalled
 */
export function distanceTellsMore(
	signals: DriveSignals,
	recordedM: Float64Array
): { bySpeed: number; byDistance: number; more: boolean } {
	const bySpeed = ratioChange(signals, signals.grid.speedMps, [signals.lagS]);
	const steps = recordedM.map((metres, t) => (t > 0 ? metres - recordedM[t - 1] : NaN));
	const byDistance = ratioChange(signals, steps, LAGS_S);
	return { bySpeed, byDistance, more: byDistance < CALMER * bySpeed };
}

/** Least median change of ln(cadence / way) over the lags tried. */
function ratioChange(signals: DriveSignals, wayM: Float64Array, lagsS: readonly number[]): number {
	const { cadenceRpm, seconds } = signals.grid;
	let least = NaN;
	for (const lagS of lagsS) {
		const changes: number[] = [];
		for (let t = 3; t + 3 < seconds; t++) {
			if (!signals.pressing[t] || !signals.pressing[t - 1]) continue;
			if (!(cadenceRpm[t] >= TURNING_RPM) || !(wayM[t + lagS] >= LEAST_STEP_M)) continue;
			const change = Math.log((cadenceRpm[t] * wayM[t + lagS - 1]) / (wayM[t + lagS] * cadenceRpm[t - 1]));
			if (Number.isFinite(change)) changes.push(Math.abs(change));
		}
		if (changes.length < LEAST_SECONDS) continue;
		const now = median(changes);
		if (!(now >= least)) least = now;
	}
	return least;
}
