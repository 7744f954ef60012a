import type { DriveSignals } from '$lib/drivetrain/driveSignals';
import { quantile } from '$lib/drivetrain/median';
import type { Candidate } from './findCandidates';
import { LEAST_REPORTED_DEG } from './reportLimits';

/** How far this recording's values fall below their neighbours now and then, as shares of themselves. */
export interface RideDips {
	readonly cadence: number;
	readonly ratio: number;
}

const SHARE = 0.99;
const LEAST_SECONDS = 200;
const CLEAR_S = 3;

/**
 * How clumsy the sensors are at their worst: the depth that one in a hundred seconds reaches below the mean of its
 * neighbours. Slips make peaks and no dips, so this tells a device's outliers without learning from the ride's slips;
 * seconds beside large excesses are left out all the same, because beside a peak everything looks low.
 *
 * @param signals the ride's signals
 * @param candidates the ride's excesses, slips or not
 * @returns shares from 0; NaN where too little was pressed
 */
export function rideDips(signals: DriveSignals, candidates: readonly Candidate[]): RideDips {
	const { cadenceRpm } = signals.grid;
	const calm = Uint8Array.from(signals.pressing);
	for (const { from, to, carefulDeg } of candidates) {
		if (carefulDeg >= LEAST_REPORTED_DEG) calm.fill(0, Math.max(0, from - CLEAR_S), to + CLEAR_S + 1);
	}
	const cadence = new Float64Array(cadenceRpm.length);
	const ratio = new Float64Array(cadenceRpm.length);
	let count = 0;
	for (let t = 2; t + 2 < cadenceRpm.length; t++) {
		if (!calm[t - 1] || !calm[t] || !calm[t + 1]) continue;
		const around = (cadenceRpm[t - 1] + cadenceRpm[t + 1]) / 2;
		cadence[count] = Math.max(0, 1 - cadenceRpm[t] / around);
		const beside = signals.logRatio;
		ratio[count++] = Math.max(0, Math.min(beside[t - 1], beside[t + 1]) - beside[t]);
	}
	if (count < LEAST_SECONDS) return { cadence: NaN, ratio: NaN };
	return {
		cadence: quantile(cadence.subarray(0, count), SHARE),
		ratio: quantile(ratio.subarray(0, count), SHARE)
	};
}
