import type { Bike } from '$lib/drivetrain/bike';
import { cadenceByTurn } from '$lib/drivetrain/cadenceByTurn';
import type { DriveSignals } from '$lib/drivetrain/driveSignals';
import { followRatios } from '$lib/drivetrain/followRatios';
import { learnRatios, type LearnedRatio } from '$lib/drivetrain/learnRatios';
import { learnRecordedRatios } from '$lib/drivetrain/learnRecordedRatios';
import { median } from '$lib/drivetrain/median';
import { nameGears, type NamedGears } from '$lib/drivetrain/nameGears';
import { baselines, type Baselines } from './baselines';
import { findCandidates, type Candidate } from './findCandidates';
import { localNoise } from './localNoise';
import { localPowerNoise } from './localPowerNoise';
import { sideMean } from './sideMean';
import { rideDips, type RideDips } from './rideDips';
import { rideResponse, type RideResponse } from './rideResponse';
import { whilePressing } from './whilePressing';
import { withPeaks } from './withPeaks';

/** Everything that is learned of one ride before any excess is judged. */
export interface RideContext {
	readonly signals: DriveSignals;
	readonly base: Baselines;
	readonly ratios: readonly LearnedRatio[];
	/** index into ratios a second, -1 = no gear known */
	readonly path: Int16Array;
	/** ln(crank turns per metre) by recorded gear code, NaN = not learned */
	readonly recordedRatios: Float64Array;
	readonly named: NamedGears;
	/** every ratio that this bike is known to have, learned, recorded or stated: ln(crank turns per metre), ascending */
	readonly gearRatios: Float64Array;
	/** typical scatter of the ratio around each second */
	readonly noise: Float64Array;
	/** typical relative change of power from one pressing second to the next around each second */
	readonly powerNoise: Float64Array;
	/** mean power of the pressing seconds on both sides of each second, W */
	readonly powerAround: Float64Array;
	readonly candidates: readonly Candidate[];
	/** seconds since the crank last stood or the rider last did not press, counted up to 60 */
	readonly sinceRest: Uint8Array;
	readonly untilRest: Uint8Array;
	/** power in pressing, W; NaN without power */
	readonly usualPowerW: number;
	readonly response: RideResponse;
	readonly dips: RideDips;
	/** cadence comes from one signal a crank turn */
	readonly byTurn: boolean;
}

const LONGEST_S = 60;
const POWER_REACH_S = 8;
const POWER_GAP_S = 2;

/** Learns a ride: ratios, path through them, noise, rests, candidates. */
export function rideContext(signals: DriveSignals, bike: Bike = {}): RideContext {
	const base = baselines(signals);
	const ratios = learnRatios(signals);
	const recordedRatios = learnRecordedRatios(signals);
	const named = nameGears(ratios, bike);
	const candidates = withPeaks(signals, findCandidates(signals, base));
	const { powerW } = signals.grid;
	return {
		signals,
		base,
		ratios,
		path: followRatios(signals, ratios),
		recordedRatios,
		named,
		gearRatios: knownRatios(ratios, recordedRatios, named, bike),
		noise: localNoise(signals),
		powerNoise: localPowerNoise(signals),
		powerAround: sideMean(whilePressing(powerW, signals.pressing), POWER_REACH_S, POWER_GAP_S),
		candidates,
		sinceRest: restDistance(signals.pressing, 1),
		untilRest: restDistance(signals.pressing, -1),
		response: rideResponse(signals, candidates),
		dips: rideDips(signals, candidates),
		byTurn: cadenceByTurn(signals.grid.cadenceRpm),
		usualPowerW: usualPower(powerW, signals.pressing)
	};
}

/** Median of the power in pressing, W. */
function usualPower(powerW: Float64Array, pressing: Uint8Array): number {
	const pressed = new Float64Array(powerW.length);
	let count = 0;
	for (let t = 0; t < powerW.length; t++) if (pressing[t] && powerW[t] > 0) pressed[count++] = powerW[t];
	return median(pressed.subarray(0, count));
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

/** Learned, recorded and (where they fit the ride) stated ratios together. */
function knownRatios(
	ratios: readonly LearnedRatio[],
	recordedRatios: Float64Array,
	named: NamedGears,
	bike: Bike
): Float64Array {
	const all = ratios.map((ratio) => ratio.logRatio);
	all.push(...recordedRatios.filter((ratio) => !Number.isNaN(ratio)));
	if (named.fitted) {
		for (const chainring of bike.chainrings ?? []) {
			for (const sprocket of bike.cassette ?? []) {
				all.push(-Math.log((chainring / sprocket) * named.circumferenceM));
			}
		}
	}
	return Float64Array.from(all).sort();
}
