import type { WithLimits } from './analysis';
import { at, type Placed } from './candidateFeatures';
import { excessDeg } from './findCandidates';
import type { RideContext } from './rideContext';

/** 90 % of a normal distribution lie within this many standard deviations. */
export const NORMAL_90 = 1.645;
/** Relative scatter of the overrun found against the true one in steady riding (labelled rides), as an sd of ln. */
export const SIZE_SCATTER = 0.17;
/** A second beside the peak belongs to the slip while its excess is more than this many standard deviations of noise. */
export const BELONGS_SD = 1.5;
/** The furthest second that belongs, on either side of the peak: sensors spread a slip over three values at most. */
export const REACH_S = 2;
/** Ratios before and after that differ by less are the same gear: their mean is the better measure. */
export const SAME_GEAR = 0.025;
/** Whole rpm: a second cannot be told from noise below this many degrees. */
const LEAST_NOISE_DEG = 4;
/** Rounding of cadence to whole rpm, as a standard deviation in rpm: 1 / sqrt 12. */
const ROUNDING_RPM = 0.3;

/** How far the crank ran ahead, and the seconds that were added up. */
export interface OverrunSize {
	readonly crankDeg: WithLimits;
	readonly from: number;
	readonly to: number;
	/** ln(crank turns per metre) of the proportion that it was measured against */
	readonly reference: number;
}

/**
 * Size of a slip in a recording of one value a second: the excess of the peak second and of those beside it that
 * stand out of the noise. A window chosen to hold most excess would add the noise that happens to be positive.
 *
 * @param context what was learned of the ride
 * @param placed the candidate in its place
 * @param byTurn cadence is measured turn by turn: then one short turn may stand for the whole second, and the lower
 *   limit is that of the turn alone
 * @returns crank degrees with the limits within which nine in ten true sizes lie
 */
export function overrunSize(context: RideContext, placed: Placed, byTurn: boolean): OverrunSize {
	const { signals, noise } = context;
	const { peak, low } = placed;
	const rpm = signals.grid.cadenceRpm[peak];
	const reference = referenceRatio(context, placed);
	const noiseDeg = Math.max(LEAST_NOISE_DEG, 6 * rpm * noise[peak]);
	const belongs = (t: number) => excessDeg(signals, t, t, reference) > BELONGS_SD * noiseDeg;
	let from = peak;
	let to = peak;
	while (from > Math.max(0, peak - REACH_S) && belongs(from - 1)) from--;
	while (to < Math.min(signals.grid.seconds - 1, peak + REACH_S) && belongs(to + 1)) to++;
	const value = Math.max(excessDeg(signals, from, to, reference), 0.25 * placed.carefulDeg, 1);
	const seconds = to - from + 1;
	const scatterDeg = noiseDeg * Math.sqrt(seconds + 1);
	const roundingDeg = 6 * ROUNDING_RPM * Math.sqrt(seconds);
	// another choice of gear, of two that may have been in, would have added this
	const doubtDeg = 0.3 * Math.abs(excessDeg(signals, from, to, low) - value) || 0;
	const sd = Math.hypot(SIZE_SCATTER, roundingDeg / value, scatterDeg / value, doubtDeg / value);
	const least = byTurn ? ofTurns(context, from, to, reference) : value;
	return {
		crankDeg: {
			value,
			lower: Math.min(value, least) * Math.exp(-NORMAL_90 * sd),
			upper: value * Math.exp(NORMAL_90 * sd)
		},
		from,
		to,
		reference
	};
}

/** The ratio around: the mean of both sides in one gear, else the easier gear, so that a shift adds nothing. */
function referenceRatio(context: RideContext, placed: Placed): number {
	const before = at(context.base.before7, placed.from);
	const after = at(context.base.after7, placed.to);
	return Math.abs(before - after) < SAME_GEAR ? (before + after) / 2 : placed.high;
}

/** The same cadences read as one turn each: a turn of 360 degrees in which the wheel explains only a part. */
function ofTurns(context: RideContext, from: number, to: number, reference: number): number {
	const { signals } = context;
	let sum = 0;
	for (let t = from; t <= to; t++) {
		const engagedRpm = 60 * signals.speedMps[t] * Math.exp(reference);
		const share = engagedRpm / signals.grid.cadenceRpm[t];
		sum += share < 1 ? 360 * (1 - share) : 0;
	}
	return sum;
}
