import type { RideContext } from './rideContext';
import { excessDeg, higherOf, lowerOf, type Candidate } from './findCandidates';
import { explanationFeatures, EXPLANATION_FEATURES, gearFeatures, GEAR_FEATURES } from './gearFeatures';
import { motionFeatures, MOTION_FEATURES } from './motionFeatures';
import { stateFeatures, STATE_FEATURES } from './stateFeatures';
import { peakFeatures, PEAK_FEATURES } from './peakFeatures';
import { powerFeatures, POWER_FEATURES } from './powerFeatures';

/** Where a candidate lies and what it is measured against. */
export interface Placed extends Candidate {
	/** second of the largest excess */
	readonly peak: number;
	/** ln(crank turns per metre) of the engaged ratio that explains most */
	readonly high: number;
	readonly low: number;
}

const SIZE_FEATURES = [
	'careful deg',
	'generous deg',
	'deg against long before',
	'deg against long after',
	'deg against before',
	'deg against after',
	'deg against just before',
	'deg against just after',
	'deg at peak',
	'share of deg at peak',
	'deg in five seconds around peak',
	'seconds',
	'careful deg in local noise',
	'local noise',
	'irregular recording',
	'missing records near',
	'seconds since rest',
	'seconds until rest',
	'since rest before onset',
	'cadence dips of the ride',
	'ratio dips of the ride',
	'deg at peak in dips of the ride',
	'deg against cadence in dips of the ride',
	'cadence by the turn'
];
const PROFILE_FROM = -4;
const PROFILE_TO = 6;
const PROFILE_FEATURES = Array.from(
	{ length: PROFILE_TO - PROFILE_FROM + 1 },
	(_, i) => `ratio excess at ${i + PROFILE_FROM} s`
);

/** Names of the features in order; the model file names them too, and a test holds the two together. */
export const FEATURE_NAMES: readonly string[] = [
	...SIZE_FEATURES,
	...PROFILE_FEATURES,
	...POWER_FEATURES,
	...MOTION_FEATURES,
	...PEAK_FEATURES,
	...GEAR_FEATURES,
	...STATE_FEATURES
];

/** So many of them are computed for every candidate; those of ways through the gears and of states take longest. */
export const QUICK_FEATURES = FEATURE_NAMES.length - EXPLANATION_FEATURES - STATE_FEATURES.length;

/** Puts a candidate in its place: peak second and engaged ratios around it. */
export function placeCandidate(context: RideContext, candidate: Candidate): Placed {
	const { justBefore, justAfter, after3 } = context.base;
	const high = candidate.reference ?? higherOf(justBefore[candidate.from], justAfter[candidate.to]);
	const low = lowerOf(justBefore[candidate.from], after3[candidate.to]);
	let peak = candidate.from;
	let most = excessDeg(context.signals, peak, peak, high);
	for (let t = candidate.from + 1; t <= candidate.to; t++) {
		const here = excessDeg(context.signals, t, t, high);
		if (!(here > most)) continue;
		most = here;
		peak = t;
	}
	const { from, to, carefulDeg, generousDeg, reference } = candidate;
	return { from, to, carefulDeg, generousDeg, reference, peak, high, low };
}

/**
 * What can be said of a candidate, as numbers in the order of FEATURE_NAMES; NaN = cannot be said.
 *
 * @param context what was learned of the ride
 * @param placed the candidate in its place
 */
export function candidateFeatures(context: RideContext, placed: Placed): Float64Array {
	const out = quickFeatures(context, placed);
	explanationFeatures(context, placed, out);
	stateFeatures(context, placed, out);
	return Float64Array.from(out);
}

/**
 * All of them but those of ways through the gears and of the model of states, which come last and take longest:
 * mostly these alone say that a candidate is no slip.
 *
 * @returns the first numbers in the order of FEATURE_NAMES
 */
export function quickFeatures(context: RideContext, placed: Placed): number[] {
	const { signals, base, noise } = context;
	const { from, to, peak, high } = placed;
	const { cadenceRpm } = signals.grid;
	const noiseDeg = 6 * cadenceRpm[peak] * Math.max(0.006, noise[peak]) * Math.sqrt(to - from + 1);
	let missing = 0;
	for (let t = from - 3; t <= to + 4; t++) missing += Number.isNaN(at(cadenceRpm, t)) ? 1 : 0;
	const out: number[] = [
		placed.carefulDeg,
		placed.generousDeg,
		excessDeg(signals, from, to, base.before7[from]),
		excessDeg(signals, from, to, base.after7[to]),
		excessDeg(signals, from, to, base.before3[from]),
		excessDeg(signals, from, to, base.after3[to]),
		excessDeg(signals, from, to, base.justBefore[from]),
		excessDeg(signals, from, to, base.justAfter[to]),
		excessDeg(signals, peak, peak, high),
		excessDeg(signals, peak, peak, high) / Math.max(10, Math.abs(placed.carefulDeg)),
		excessAround(context, peak, high),
		to - from + 1,
		placed.carefulDeg / noiseDeg,
		noise[peak],
		signals.grid.irregular ? 1 : 0,
		missing,
		at(context.sinceRest, peak),
		at(context.untilRest, to),
		at(context.sinceRest, from - 1),
		context.dips.cadence,
		context.dips.ratio,
		excessDeg(signals, peak, peak, high) / (6 * cadenceRpm[peak] * (0.01 + context.dips.ratio)),
		(cadenceRpm[peak] - Math.max(at(cadenceRpm, peak - 1) || 0, at(cadenceRpm, peak + 1) || 0)) /
			(cadenceRpm[peak] * (0.01 + context.dips.cadence)),
		context.byTurn ? 1 : 0
	];
	for (let k = PROFILE_FROM; k <= PROFILE_TO; k++) out.push(ratioExcess(context, peak + k, high));
	powerFeatures(context, placed, out);
	motionFeatures(context, placed, out);
	peakFeatures(context, placed, out);
	gearFeatures(context, placed, out);
	return out;
}

/** Excess of the five seconds around the peak that turn the crank: a shift that settles slowly keeps on gaining. */
function excessAround(context: RideContext, peak: number, high: number): number {
	let sum = 0;
	for (let t = peak - 2; t <= peak + 2; t++) {
		if (at(context.signals.logRatio, t) > -Infinity) sum += excessDeg(context.signals, t, t, high);
	}
	return sum;
}

/** Ratio against the engaged one; -2 where the crank hardly turns. */
function ratioExcess(context: RideContext, t: number, base: number): number {
	const rpm = at(context.signals.grid.cadenceRpm, t);
	if (rpm < 25) return -2;
	const ratio = at(context.signals.logRatio, t);
	return Math.max(-1.5, Math.min(1.5, ratio - base));
}

/** Value at a second that may lie outside the ride. */
export function at(values: ArrayLike<number>, t: number): number {
	return t >= 0 && t < values.length ? values[t] : NaN;
}
