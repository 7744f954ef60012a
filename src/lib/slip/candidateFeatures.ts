import type { RideContext } from './rideContext';
import { excessDeg, type Candidate } from './findCandidates';
import { gearFeatures, GEAR_FEATURES } from './gearFeatures';
import { motionFeatures, MOTION_FEATURES } from './motionFeatures';
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
	'deg at peak',
	'seconds',
	'careful deg in local noise',
	'ride noise',
	'local noise',
	'large candidates per hour',
	'irregular recording',
	'missing records near',
	'seconds since rest',
	'seconds until rest',
	'since rest before onset'
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
	...GEAR_FEATURES
];

/** Puts a candidate in its place: peak second and engaged ratios around it. */
export function placeCandidate(context: RideContext, candidate: Candidate): Placed {
	const before = context.base.before3[candidate.from];
	const after = context.base.after3[candidate.to];
	const high = before > after || Number.isNaN(after) ? before : after;
	const low = before < after || Number.isNaN(after) ? before : after;
	let peak = candidate.from;
	for (let t = candidate.from; t <= candidate.to; t++) {
		if (excessDeg(context.signals, t, t, high) > excessDeg(context.signals, peak, peak, high)) peak = t;
	}
	return { ...candidate, peak, high, low };
}

/**
 * What can be said of a candidate, as numbers in the order of FEATURE_NAMES; NaN = cannot be said.
 *
 * @param context what was learned of the ride
 * @param placed the candidate in its place
 */
export function candidateFeatures(context: RideContext, placed: Placed): Float64Array {
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
		excessDeg(signals, peak, peak, high),
		to - from + 1,
		placed.carefulDeg / noiseDeg,
		signals.noise,
		noise[peak],
		context.candidatesPerHour,
		signals.grid.irregular ? 1 : 0,
		missing,
		at(context.sinceRest, peak),
		at(context.untilRest, to),
		at(context.sinceRest, from - 1)
	];
	for (let k = PROFILE_FROM; k <= PROFILE_TO; k++) out.push(ratioExcess(context, peak + k, high));
	powerFeatures(context, placed, out);
	motionFeatures(context, placed, out);
	gearFeatures(context, placed, out);
	return Float64Array.from(out);
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
