import { at, type Placed } from './candidateFeatures';
import { explainByGears } from './explainByGears';
import { excessDeg } from './findCandidates';
import type { RideContext } from './rideContext';

export const GEAR_FEATURES = [
	'step of ratio',
	'size of step',
	'step of long ratio',
	'recorded shifts known',
	'seconds since recorded shift',
	'seconds until recorded shift',
	'recorded shifts near',
	'recorded ratio now against engaged',
	'recorded ratio earlier against engaged',
	'deg against recorded ratios',
	'distance of peak from another gear',
	'seconds at peak ratio',
	'distance of engaged from a gear',
	'distance of next second from a gear',
	'distance of second before from a gear',
	'deg against followed gears',
	'followed gears change near',
	'followed gears change by',
	'gears alone against slip',
	'cost of gears alone',
	'cost with slip',
	'deg beyond gears',
	'changes of gear that explain'
];

/** So many of them, the last, need the ways through the gears. */
export const EXPLANATION_FEATURES = 5;

const CAP_S = 15;

/** Whether another gear explains the excess: recorded shifts, gears of the ride, dwelling at the peak's ratio; all but the last of GEAR_FEATURES. */
export function gearFeatures(context: RideContext, placed: Placed, out: number[]): void {
	const { signals, base, recordedRatios, path, ratios } = context;
	const { from, to, peak, high } = placed;
	const { gearCode, shiftS } = signals.grid;
	const step = base.after3[to] - base.before3[from];
	out.push(step, Math.abs(step), base.after7[to] - base.before7[from]);
	const known = gearCode[peak] >= 0 && shiftS.length >= 5;
	out.push(known ? 1 : 0);
	if (known) {
		const next = firstAfter(shiftS, from);
		const near = shiftS.filter((t) => t >= from - 5 && t <= to + 3).length;
		out.push(
			Math.min(CAP_S, from - (shiftS[next - 1] ?? -CAP_S)),
			Math.min(CAP_S, (shiftS[next] ?? Infinity) - from),
			near
		);
		const now = recordedRatio(recordedRatios, gearCode, to);
		const earlier = recordedRatio(recordedRatios, gearCode, from - 4);
		const highest = Math.max(high, now || high, earlier || high);
		out.push(now - high, earlier - high, excessDeg(signals, from, to, highest));
	} else out.push(NaN, NaN, NaN, NaN, NaN, NaN);
	const peakRatio = signals.logRatio[peak];
	const { gearRatios } = context;
	out.push(
		Math.min(1, gearDistance(gearRatios, peakRatio, high + 0.025)),
		dwell(signals.logRatio, peak),
		Math.min(1, gearDistance(gearRatios, high, -Infinity)),
		Math.min(1, gearDistance(gearRatios, at(signals.logRatio, peak + 1), -Infinity)),
		Math.min(1, gearDistance(gearRatios, at(signals.logRatio, peak - 1), -Infinity))
	);
	let followed = -Infinity;
	let lowest = Infinity;
	for (let t = Math.max(0, from - 1); t <= Math.min(path.length - 1, to + 1); t++) {
		const ratio = path[t] >= 0 ? ratios[path[t]].logRatio : high;
		followed = Math.max(followed, ratio);
		lowest = Math.min(lowest, ratio);
	}
	out.push(excessDeg(signals, from, to, Math.max(high, followed)), followed - lowest > 0.02 ? 1 : 0);
	const earlier = at(path, from - 4);
	const later = at(path, to + 4);
	out.push(earlier >= 0 && later >= 0 ? ratios[later].logRatio - ratios[earlier].logRatio : NaN);
}

/** What the gears alone make of it, against the gears and a slip: the last of GEAR_FEATURES. */
export function explanationFeatures(context: RideContext, placed: Placed, out: number[]): void {
	const explained = explainByGears(context, placed);
	out.push(
		explained.gearsOnly - explained.withSlip,
		explained.gearsOnly,
		explained.withSlip,
		explained.excessDeg,
		explained.changes
	);
}

/** Distance of a ratio from the nearest known gear above a bound. */
function gearDistance(gearRatios: Float64Array, ratio: number, above: number): number {
	let nearest = Infinity;
	for (const gear of gearRatios) if (gear > above) nearest = Math.min(nearest, Math.abs(gear - ratio));
	return nearest;
}

function recordedRatio(recordedRatios: Float64Array, gearCode: Int16Array, t: number): number {
	const code = at(gearCode, t);
	return code >= 0 ? recordedRatios[code] : NaN;
}

/** Index of the first shift later than t. */
function firstAfter(shiftS: readonly number[], t: number): number {
	let low = 0;
	let high = shiftS.length;
	while (low < high) {
		const middle = (low + high) >> 1;
		if (shiftS[middle] <= t) low = middle + 1;
		else high = middle;
	}
	return low;
}

/** Seconds around the peak that stay at its ratio. */
function dwell(logRatio: Float64Array, peak: number): number {
	let seconds = 1;
	while (seconds < 8 && Math.abs(at(logRatio, peak - seconds) - logRatio[peak]) < 0.02) seconds++;
	const back = seconds - 1;
	seconds = 1;
	while (seconds < 8 && Math.abs(at(logRatio, peak + seconds) - logRatio[peak]) < 0.02) seconds++;
	return back + seconds;
}
