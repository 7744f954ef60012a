import type { DriveSignals } from '$lib/drivetrain/driveSignals';
import { followRatios } from '$lib/drivetrain/followRatios';
import { learnRatios, type LearnedRatio } from '$lib/drivetrain/learnRatios';
import { learnRecordedRatios } from '$lib/drivetrain/learnRecordedRatios';
import { median } from '$lib/drivetrain/median';
import { baselines, type Baselines } from './baselines';
import { findCandidates, type Candidate } from './findCandidates';
import { localNoise } from './localNoise';

/** Everything that is learned of one ride before any excess is judged. */
export interface RideContext {
	readonly signals: DriveSignals;
	readonly base: Baselines;
	readonly ratios: readonly LearnedRatio[];
	/** index into ratios a second, -1 = no gear known */
	readonly path: Int16Array;
	/** ln(crank turns per metre) by recorded gear code, NaN = not learned */
	readonly recordedRatios: Float64Array;
	/** typical scatter of the ratio around each second */
	readonly noise: Float64Array;
	readonly candidates: readonly Candidate[];
	/** seconds since the crank last stood or the rider last did not press, counted up to 60 */
	readonly sinceRest: Uint8Array;
	readonly untilRest: Uint8Array;
	/** power in pressing, W; NaN without power */
	readonly usualPowerW: number;
	/** candidates of 30 degrees and more in an hour of pressing */
	readonly candidatesPerHour: number;
}

const LONGEST_S = 60;

/** Learns a ride: ratios, path through them, noise, rests, candidates. */
export function rideContext(signals: DriveSignals): RideContext {
	const base = baselines(signals);
	const ratios = learnRatios(signals);
	const candidates = findCandidates(signals, base);
	const { powerW, seconds } = signals.grid;
	let pressed = 0;
	for (let t = 0; t < seconds; t++) pressed += signals.pressing[t];
	const large = candidates.filter((candidate) => candidate.carefulDeg >= 30).length;
	return {
		signals,
		base,
		ratios,
		path: followRatios(signals, ratios),
		recordedRatios: learnRecordedRatios(signals),
		noise: localNoise(signals),
		candidates,
		sinceRest: restDistance(signals.pressing, 1),
		untilRest: restDistance(signals.pressing, -1),
		usualPowerW: median(powerW.filter((watts, t) => signals.pressing[t] && watts > 0)),
		candidatesPerHour: (3600 * large) / Math.max(600, pressed)
	};
}

function restDistance(pressing: Uint8Array, step: 1 | -1): Uint8Array {
	const out = new Uint8Array(pressing.length);
	let count = 0;
	for (let i = 0; i < pressing.length; i++) {
		const t = step > 0 ? i : pressing.length - 1 - i;
		count = pressing[t] ? Math.min(LONGEST_S, count + 1) : 0;
		out[t] = count;
	}
	return out;
}
