import type { DriveSignals } from '$lib/drivetrain/driveSignals';
import type { Candidate } from './findCandidates';
import { LEAST_REPORTED_DEG } from './reportLimits';

export interface RideResponse {
	readonly power: number;
	readonly cadence: number;
	/** share of pressing seconds that repeat the power of the second before */
	readonly powerHeld: number;
}

/** Above this the power of a second is mostly a mean of the seconds before it (0.34 to 0.54 for means over 3 s). */
const SLOW_CORRELATION = 0.3;
/** A device that renews its power every two or three seconds repeats a half or two thirds of its values. */
const SLOW_HELD = 0.45;

/**
 * Whether the power meter reacts too slowly to show the loss of drive in a slip, which lasts a few tenths of a
 * second. Measured on labelled and generated rides: prompt devices repeat at most 15 % and correlate at most 0.28.
 */
export function isPowerSlow(response: RideResponse): boolean {
	return response.power > SLOW_CORRELATION || response.powerHeld > SLOW_HELD;
}

/** So long before and after a large excess power and cadence are moved by it. */
const MOVED_BEFORE_S = 2;
const MOVED_AFTER_S = 6;

/**
 * How slowly power and cadence of this recording follow what happens: the correlation of one second's change with
 * the next. Independent scatter gives -0.5; a mean over three seconds gives 0.67 for what the rider does, because
 * each value shares two thirds with the one before. Seconds around large excesses are left out, because a ride's
 * slips must not decide what of it is observed.
 *
 * @param signals the ride's signals
 * @param candidates the ride's excesses, slips or not
 * @returns correlations from -1 to 1, a share from 0 to 1; NaN where too little was pressed
 */
export function rideResponse(signals: DriveSignals, candidates: readonly Candidate[]): RideResponse {
	const calm = Uint8Array.from(signals.pressing);
	for (const { from, to, carefulDeg, generousDeg } of candidates) {
		if (Math.max(carefulDeg, generousDeg) < LEAST_REPORTED_DEG) continue;
		calm.fill(0, Math.max(0, from - MOVED_BEFORE_S), to + MOVED_AFTER_S + 1);
	}
	return {
		power: changeCorrelation(signals.grid.powerW, calm),
		cadence: changeCorrelation(signals.grid.cadenceRpm, calm),
		powerHeld: heldShare(signals.grid.powerW, calm)
	};
}

function changeCorrelation(values: Float64Array, calm: Uint8Array): number {
	let products = 0;
	let squares = 0;
	let count = 0;
	for (let t = 2; t < values.length; t++) {
		if (!calm[t] || !calm[t - 1] || !calm[t - 2]) continue;
		const change = values[t] - values[t - 1];
		const earlier = values[t - 1] - values[t - 2];
		const product = change * earlier;
		if (Number.isNaN(product)) continue;
		products += product;
		squares += 0.5 * (change * change + earlier * earlier);
		count++;
	}
	return count > 200 ? products / squares : NaN;
}

function heldShare(values: Float64Array, calm: Uint8Array): number {
	let same = 0;
	let count = 0;
	for (let t = 1; t < values.length; t++) {
		if (!calm[t] || !calm[t - 1] || Number.isNaN(values[t])) continue;
		count++;
		if (values[t] === values[t - 1]) same++;
	}
	return count > 200 ? same / count : NaN;
}
