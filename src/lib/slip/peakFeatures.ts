import { at, type Placed } from './candidateFeatures';
import { cutRatio } from './cutRatio';
import { filledUp } from './filledUp';
import { excessDeg } from './findCandidates';
import type { RideContext } from './rideContext';

export const PEAK_FEATURES = [
	'deg of a peak of one second',
	'deg of a peak of two seconds',
	'deg of a peak of three seconds',
	'power dip at peak',
	'power dip after peak',
	'deepest power dip near',
	'deepest wide power dip near',
	'deepest power dip in power noise',
	'torque dip at peak',
	'deepest torque dip near',
	'highest recorded ratio near against engaged',
	'deg against every recorded ratio near',
	'peak second against recorded ratios near'
];

const LEAST_W = 25;
/** W for each rpm, some 3 Nm: less is no torque to lose. */
const LEAST_TORQUE = 0.3;
const LEAST_RPM = 20;
const REACH_S = 4;
/** A recorded shift leads the change of ratio by 1 to 3 s: gears from so long before the excess on may be in. */
const RECORDED_BEFORE_S = 5;

/** What stands out of both sides: a change of gear goes one way, an excess that is no slip has a gear that explains it. */
export function peakFeatures(context: RideContext, placed: Placed, out: number[]): void {
	const { signals } = context;
	const { peak } = placed;
	for (const widthS of [2, 3, 4]) out.push(excessDeg(signals, peak, peak, cutRatio(signals, widthS, peak)));
	dips(context, peak, out);
	recorded(context, placed, out);
}

/** Power and torque against the lower of their two sides; a sensor's cadence spike keeps the torque. */
function dips({ signals, powerNoise }: RideContext, peak: number, out: number[]): void {
	const { powerW, cadenceRpm } = signals.grid;
	const dip = (t: number, widthS: number) =>
		1 - at(powerW, t) / Math.max(LEAST_W, filledUp(powerW, widthS, t));
	const here = dip(peak, 3);
	const next = dip(peak + 1, 3);
	const deepest = Math.max(here, next, dip(peak - 1, 3));
	const wide = Math.max(dip(peak, 4), dip(peak + 1, 4), dip(peak + 2, 4));
	out.push(here, next, deepest, wide, deepest / powerNoise[peak]);
	const torque = new Float64Array(2 * REACH_S + 1);
	for (let i = 0; i < torque.length; i++) {
		const t = peak + i - REACH_S;
		torque[i] = at(powerW, t) / Math.max(LEAST_RPM, at(cadenceRpm, t));
	}
	const torqueDip = (i: number) => 1 - torque[i] / Math.max(LEAST_TORQUE, filledUp(torque, 3, i));
	out.push(torqueDip(REACH_S), Math.max(torqueDip(REACH_S), torqueDip(REACH_S + 1)));
}

/** Against every gear that was recorded shortly before or during the excess. */
function recorded(context: RideContext, { from, to, peak, high }: Placed, out: number[]): void {
	const { signals, recordedRatios } = context;
	const { gearCode, shiftS } = signals.grid;
	if (!(gearCode[peak] >= 0 && shiftS.length >= 5)) {
		out.push(NaN, NaN, NaN);
		return;
	}
	let near = NaN;
	for (let t = from - RECORDED_BEFORE_S; t <= to + 1; t++) {
		const code = at(gearCode, t);
		const ratio = code >= 0 ? recordedRatios[code] : NaN;
		if (ratio === ratio && !(near >= ratio)) near = ratio;
	}
	const highest = near > high ? near : high;
	out.push(near - high, excessDeg(signals, from, to, highest), excessDeg(signals, peak, peak, highest));
}
