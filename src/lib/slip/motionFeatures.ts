import { median } from '$lib/drivetrain/median';
import { at, type Placed } from './candidateFeatures';
import type { RideContext } from './rideContext';

export const MOTION_FEATURES = [
	'cadence before rpm',
	'cadence after rpm',
	'engaged cadence at peak rpm',
	'deg against cadence around',
	'deg against higher cadence side',
	'cadence step in rpm',
	'cadence step out rpm',
	'deepest speed dip',
	'dip at peak',
	'dip at peak, clock of the file',
	'speed change before',
	'speed change during',
	'speed change after',
	'speed lost against before',
	'speed scatter',
	'speed mps',
	'seconds of held cadence',
	'seconds of held speed',
	'held power near',
	'cadence change over five seconds before'
];

/** The scatter of speed is looked at over so long on both sides. */
const BENDS_S = 12;
/** The same memory for every candidate. */
const bends = new Float64Array(2 * BENDS_S + 1);
const turning = new Float64Array(3);

/** Cadence and speed each against their own past: in a slip cadence jumps and the wheel hardly changes. */
export function motionFeatures(context: RideContext, placed: Placed, out: number[]): void {
	const { signals } = context;
	const { cadenceRpm, powerW } = signals.grid;
	const raw = signals.grid.speedMps;
	const speed = signals.speedMps;
	const { from, to, peak, high } = placed;
	const before = turningMedian(cadenceRpm, from - 3);
	const after = turningMedian(cadenceRpm, to + 1);
	let around = 0;
	let higher = 0;
	for (let t = from; t <= to; t++) {
		around += 6 * (cadenceRpm[t] - mean(before, after));
		higher += 6 * (cadenceRpm[t] - Math.max(before || after, after || before));
	}
	out.push(before, after, 60 * speed[peak] * Math.exp(high), around, higher);
	out.push(cadenceRpm[peak] - at(cadenceRpm, peak - 1), cadenceRpm[peak] - at(cadenceRpm, peak + 1));
	let deepest = 0;
	for (let t = from - 1; t <= to + 1; t++) deepest = Math.min(deepest, dip(raw, t + signals.lagS) || 0);
	out.push(deepest, dip(raw, peak + signals.lagS), dip(raw, peak));
	const changeBefore = (at(speed, from - 1) - at(speed, from - 4)) / 3;
	const changeDuring = (at(speed, to + 1) - at(speed, from - 1)) / (to - from + 2);
	const changeAfter = (at(speed, to + 5) - at(speed, to + 2)) / 3;
	out.push(changeBefore, changeDuring, changeAfter, changeDuring - mean(changeBefore, changeAfter));
	for (let i = 0; i < bends.length; i++) bends[i] = Math.abs(dip(raw, peak - BENDS_S + i));
	out.push(median(bends), speed[peak]);
	out.push(held(cadenceRpm, from - 1), held(raw, from - 1 + signals.lagS));
	let heldPower = 0;
	for (let t = from - 1; t <= to + 3; t++) heldPower += at(powerW, t) === at(powerW, t - 1) ? 1 : 0;
	out.push(heldPower);
	out.push(at(cadenceRpm, from - 1) - at(cadenceRpm, from - 6));
}

/** Speed against the mean of its neighbours, as a share of it; negative = a dip. */
function dip(speed: Float64Array, t: number): number {
	const around = (at(speed, t - 1) + at(speed, t + 1)) / 2;
	return around > 0.5 ? (at(speed, t) - around) / around : NaN;
}

/** Median of three seconds as far as the crank turns in them. */
function turningMedian(cadenceRpm: Float64Array, from: number): number {
	for (let k = 0; k < turning.length; k++) {
		const rpm = at(cadenceRpm, from + k);
		turning[k] = rpm >= 25 ? rpm : NaN;
	}
	return median(turning);
}

function mean(a: number, b: number): number {
	return Number.isNaN(a) ? b : Number.isNaN(b) ? a : (a + b) / 2;
}

/** For how many seconds up to t the value has not moved. */
function held(values: Float64Array, t: number): number {
	let seconds = 0;
	while (seconds < 8 && at(values, t - seconds) === at(values, t - seconds - 1)) seconds++;
	return seconds;
}
