import type { Ride } from '$lib/ride/ride';
import { median } from '$lib/drivetrain/median';
import { loggerOverrun } from './loggerOverrun';

/** A slip in a logger's recording, at the logger's own clock. */
export interface LoggerSlip {
	readonly startS: number;
	readonly endS: number;
	readonly overrunCrankDeg: number;
	/** wheel turns per crank turn before onset */
	readonly ratio: number;
	/** greatest instantaneous crank torque in the third of a second before onset, Nm; not a mean */
	readonly torqueBeforeNm: number;
	/** mean crank torque over the last whole crank turn before onset, Nm */
	readonly meanTorqueNm: number;
	/** least instantaneous crank torque during the overrun, Nm */
	readonly torqueDuringNm: number;
	/** limits of the overrun, crank degrees */
	readonly lowerDeg: number;
	readonly upperDeg: number;
}

/** The ratio that was in is taken from this long before (estimate). */
const BEFORE_S = 0.4;
/** An overrun that lasts longer is a shift or a fault (estimate). */
const LONGEST_S = 2.5;
/** Slower turns are mostly positioning the cranks. */
const LEAST_RPM = 30;
/** In an overrun the crank gains speed from sample to sample: a jump of a part of the ratio is a shift. */
const RISES = 0.01;
/** The crank must run ahead by this much to begin an overrun. */
const AHEAD = 0.05;
/** A crank that is free for this long runs far ahead; one that keeps a small lead is in an easier gear. */
const LONG_S = 0.5;
/** Lead from which a crank counts as free, share of the engaged cadence (measured on simulated rides). */
const LONG_LEAD = 0.5;
/** One step of a fine ratchet in a middle gear: about 5 crank degrees. */
const LEAST_DEG = 5;
/** Share of the torque half a turn before that is lost at the least when the driver lets go. */
const LEAST_LOST = 0.25;
/**
 * Mean crank torque over the last turn, Nm: with less nobody presses, and a crank that runs past the wheel by a few
 * degrees is the take-up after coasting or soft pedalling.
 */
const LEAST_TORQUE_NM = 3;
/** A crank that was not in its ratio just before was catching up with the wheel: that is a take-up. */
const ENGAGED_WITHIN = 0.04;
/** Samples before the overrun that must lie in the ratio. */
const ENGAGED_SAMPLES = 3;

/** Scatter is taken from the last samples, in which the same gear is in. */
const SCATTER_SAMPLES = 10;
/** Torque that is there in one sample and gone in the next broke off: from this much, to less than this share. */
const BROKEN_FROM_NM = 8;
/** Share of the torque before that may be left (estimate). */
const BROKEN_SHARE = 0.3;
/** After an overrun the crank is no longer ahead by more than this; behind it may be, as a startled rider stops. */
const BACK_WITHIN = 0.03;

/**
 * Slips in a recording of 10 to 500 samples a second: the crank runs ahead of the ratio that was in, torque breaks
 * off, and the same ratio is back afterwards. A shift leaves another ratio behind and keeps its torque.
 *
 * @param ride a ride with wheelRpm and cadenceRpm on one clock
 * @returns slips in order; empty without these channels
 */
export function findLoggerSlips(ride: Ride): LoggerSlip[] {
	const crank = ride.channels.cadenceRpm;
	const wheel = ride.channels.wheelRpm;
	if (!crank || !wheel || crank.timeS !== wheel.timeS) return [];
	const torque = ride.channels.crankTorqueNm?.value ?? new Float64Array(crank.timeS.length).fill(NaN);
	const { timeS } = crank;
	const slips: LoggerSlip[] = [];
	for (let i = 1; i < timeS.length; i++) {
		const from = firstWithin(timeS, i, BEFORE_S);
		if (i - from < 3 || !(crank.value[i] >= LEAST_RPM)) continue;
		if (!(crank.value[i] > crank.value[i - 1] * (1 + RISES))) continue;
		const ratio = ratioOf(crank.value, wheel.value, from, i);
		if (!(crank.value[i] > (wheel.value[i] / ratio) * (1 + AHEAD))) continue;
		const slip = follow(timeS, crank.value, wheel.value, torque, from, i, ratio);
		if (!slip) continue;
		slips.push(slip);
		while (i + 1 < timeS.length && timeS[i + 1] <= slip.endS) i++;
	}
	return slips;
}

/** Follows an overrun to its end and decides what it was. */
function follow(
	timeS: Float64Array,
	crank: Float64Array,
	wheel: Float64Array,
	torque: Float64Array,
	from: number,
	onset: number,
	ratio: number
): LoggerSlip | null {
	const scatter = ratioScatter(crank, wheel, Math.max(from, onset - SCATTER_SAMPLES), onset, ratio);
	const size = loggerOverrun(
		{ timeS, crankRpm: crank, wheelRpm: wheel },
		from,
		onset,
		ratio,
		scatter,
		LONGEST_S
	);
	if (!size || size.crankDeg < LEAST_DEG) return null;
	const { to: end } = size;
	if (timeS[end] - timeS[size.from] > LONG_S && size.lead < LONG_LEAD) return null;
	for (let i = Math.max(from, size.from - ENGAGED_SAMPLES); i < size.from; i++) {
		if (Math.abs(wheel[i] / crank[i] / ratio - 1) > ENGAGED_WITHIN) return null;
	}
	const meanTorqueNm = meanOf(torque, firstWithin(timeS, onset - 1, 60 / crank[onset - 1]) + 1, onset);
	if (meanTorqueNm < LEAST_TORQUE_NM) return null;
	if (!breaksOff(torque, size.from, end) && keepsTorque(timeS, torque, onset, end, crank[onset - 1]))
		return null;
	const after = ratioOf(crank, wheel, end, Math.min(timeS.length, end + (onset - from)));
	if (Math.log(after / ratio) < -BACK_WITHIN) return null;
	return {
		startS: timeS[size.from],
		endS: timeS[end],
		overrunCrankDeg: size.crankDeg,
		ratio,
		torqueBeforeNm: greatest(torque, from, onset),
		meanTorqueNm,
		torqueDuringNm: least(torque, onset, end),
		lowerDeg: size.lowerDeg,
		upperDeg: size.upperDeg
	};
}

/** Whether torque was there in the samples before the onset and is gone in those after it: no leg eases off so fast. */
function breaksOff(torque: Float64Array, onset: number, end: number): boolean {
	const before = meanOf(torque, onset - 2, onset);
	return before >= BROKEN_FROM_NM && median(torque.subarray(onset, end)) < BROKEN_SHARE * before;
}

/**
 * Whether torque goes on as it did half a crank turn before, where the other leg stood the same: at a dead centre
 * torque is small without any slip.
 */
function keepsTorque(
	timeS: Float64Array,
	torque: Float64Array,
	onset: number,
	end: number,
	rpm: number
): boolean {
	const halfTurnS = 30 / rpm;
	const earlier = firstWithin(timeS, onset, halfTurnS);
	const expected = meanOf(torque, earlier, earlier + (end - onset));
	const during = meanOf(torque, onset, end);
	if (Number.isNaN(expected + during)) return false;
	return during > (1 - LEAST_LOST) * expected;
}

function meanOf(values: Float64Array, from: number, to: number): number {
	let sum = 0;
	for (let i = Math.max(0, from); i < to; i++) sum += values[i];
	return sum / (to - Math.max(0, from));
}

function firstWithin(timeS: Float64Array, i: number, reachS: number): number {
	let from = i;
	while (from > 0 && timeS[i] - timeS[from - 1] <= reachS) from--;
	return from;
}

/** Median of wheel turns per crank turn; NaN where the crank hardly turned. */
function ratioOf(crank: Float64Array, wheel: Float64Array, from: number, to: number): number {
	const ratios: number[] = [];
	for (let i = from; i < to; i++) if (crank[i] >= LEAST_RPM) ratios.push(wheel[i] / crank[i]);
	return ratios.length >= 3 ? median(ratios) : NaN;
}

function ratioScatter(
	crank: Float64Array,
	wheel: Float64Array,
	from: number,
	to: number,
	ratio: number
): number {
	let sum = 0;
	for (let i = from; i < to; i++) sum += Math.abs(wheel[i] / crank[i] / ratio - 1);
	return (1.2533 * sum) / Math.max(1, to - from);
}

function greatest(values: Float64Array, from: number, to: number): number {
	let out = -Infinity;
	for (let i = from; i < to; i++) if (values[i] > out) out = values[i];
	return out;
}

function least(values: Float64Array, from: number, to: number): number {
	let out = Infinity;
	for (let i = from; i < to; i++) if (values[i] < out) out = values[i];
	return out;
}
