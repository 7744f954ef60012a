import { learnLag } from './learnLag';
import { median } from './median';
import type { SecondGrid } from './secondGrid';

/** The grid with speed brought onto the clock of cadence, and what follows from both at every second. */
export interface DriveSignals {
	readonly grid: SecondGrid;
	/** constant lag of speed behind cadence in this file, s */
	readonly lagS: number;
	/** speed that belongs to this second's cadence, m/s */
	readonly speedMps: Float64Array;
	/** ln(crank turns per metre); NaN where the rider is not turning the crank or the wheel stands */
	readonly logRatio: Float64Array;
	/** 1 where the rider turns the crank and, as far as power is recorded, presses */
	readonly pressing: Uint8Array;
	/** typical change of logRatio from one pressing second to the next (median, as a standard deviation) */
	readonly noise: number;
}

/** Slower turns are mostly positioning the cranks (common practice, no source). */
const TURNING_RPM = 25;
/** Slower than this a wheel sensor shows mostly its own rhythm (common practice, no source). */
const ROLLING_MPS = 1.1;
/** Less power than this is soft pedalling: the driver may run free. */
export const PRESSING_W = 30;

/** Median of |difference of two normal values| to standard deviation of one: 1 / (0.6745 x sqrt 2). */
const MEDIAN_STEP_TO_SD = 1.048;

/**
 * Brings cadence and speed together.
 *
 * @param grid the ride on whole seconds
 * @returns signals of the same length; noise 0.03 when too little was pedalled to learn it
 */
export function driveSignals(grid: SecondGrid): DriveSignals {
	const lagS = learnLag(grid);
	const { seconds, cadenceRpm, powerW } = grid;
	const speedMps = new Float64Array(seconds).fill(NaN);
	const logRatio = new Float64Array(seconds).fill(NaN);
	const pressing = new Uint8Array(seconds);
	for (let t = 0; t < seconds; t++) {
		const at = t + lagS;
		if (at >= 0 && at < seconds) speedMps[t] = grid.speedMps[at];
		if (cadenceRpm[t] >= TURNING_RPM && speedMps[t] >= ROLLING_MPS) {
			logRatio[t] = Math.log(cadenceRpm[t] / (60 * speedMps[t]));
			pressing[t] = powerW[t] < PRESSING_W ? 0 : 1;
		}
	}
	const steps = new Float64Array(seconds);
	let count = 0;
	for (let t = 1; t < seconds; t++) {
		if (pressing[t] && pressing[t - 1]) steps[count++] = Math.abs(logRatio[t] - logRatio[t - 1]);
	}
	const noise = count > 100 ? Math.max(0.003, median(steps.subarray(0, count)) * MEDIAN_STEP_TO_SD) : 0.03;
	return { grid, lagS, speedMps, logRatio, pressing, noise };
}
