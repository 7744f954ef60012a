import type { Gear } from '$lib/drivetrain/bike';
import { excessDeg } from './findCandidates';
import type { EventKind, SlipEvent, WithLimits } from './analysis';
import { at, type Placed } from './candidateFeatures';
import { onsetTorques } from './onsetTorques';
import { reasonsFor } from './reasonsFor';
import type { RideContext } from './rideContext';

/** 90 % of a normal distribution lie within this many standard deviations. */
const NORMAL_90 = 1.645;
/** Accuracy of a power meter; common practice, no source. */
const TORQUE_ACCURACY = 0.03;

/** Turns a candidate that was taken for a slip into the event that the ledger keeps. */
export function describeEvent(
	context: RideContext,
	placed: Placed,
	strength: number,
	gears: readonly Gear[],
	observed: boolean,
	powerAt: 'crank' | 'hub'
): SlipEvent {
	const { grid } = context.signals;
	const { to } = placed;
	const from = onsetSecond(context, placed);
	const gear = gears[at(context.path, Math.max(0, from - 1))] ?? null;
	const overrunCrankDeg = overrun(context, placed);
	const before = powerMean(context, from - 4, from - 1);
	const least = Math.min(...[0, 1, 2, 3].map((k) => at(grid.powerW, from + k)).filter((watts) => watts >= 0));
	const powerLost = before > 0 && Number.isFinite(least) ? clamp(1 - least / before) : null;
	const afterRest = at(context.sinceRest, from) <= 1;
	return {
		startS: from,
		endS: to + 1,
		kind: kindOf(context, placed, overrunCrankDeg.value, afterRest),
		overrunCrankDeg,
		overrunHubDeg: overrunCrankDeg.value * (gear?.ratio ?? 1),
		gear,
		hubTorqueNm: torqueBefore(context, from, powerAt),
		powerLost,
		strength,
		atM: grid.distanceM[from],
		observed,
		reasons: reasonsFor(context, placed, overrunCrankDeg.value, powerLost)
	};
}

/** An overrun of more than a crank turn after which nobody drives until the wheel stands: the chain may be off. */
const DROPPED_CHAIN_DEG = 500;
const NO_DRIVE_S = 8;
const STANDS_WITHIN_S = 90;

function kindOf(context: RideContext, placed: Placed, overrunDeg: number, afterRest: boolean): EventKind {
	if (overrunDeg >= DROPPED_CHAIN_DEG) {
		const { pressing, grid } = context.signals;
		let driven = false;
		for (let t = placed.to + 1; t <= placed.to + NO_DRIVE_S; t++) driven ||= at(pressing, t) === 1;
		let stands = false;
		for (let t = placed.to + 1; t <= placed.to + STANDS_WITHIN_S && !stands; t++)
			stands = at(grid.speedMps, t) < 0.5;
		if (!driven && stands) return 'possible dropped chain';
	}
	return afterRest ? 'failed pick-up' : 'slip';
}

/** Relative scatter of the overrun found against the true one in steady riding (labelled rides), as an sd of ln. */
const SIZE_SCATTER = 0.15;

/** Degrees beyond the gears on both sides; what another choice of gear would have added widens the limits. */
function overrun(context: RideContext, placed: Placed): WithLimits {
	const { signals, noise } = context;
	const { from, to, peak, low } = placed;
	const value = Math.max(placed.carefulDeg, 0.5 * excessDeg(signals, from, to, low));
	const seconds = to - from + 1;
	const roundingDeg = 6 * 0.3 * Math.sqrt(seconds);
	const scatterDeg = 6 * signals.grid.cadenceRpm[peak] * noise[peak] * Math.sqrt(seconds);
	const gearDoubtDeg = 0.3 * Math.abs(excessDeg(signals, from, to, low) - placed.carefulDeg);
	const sd = Math.hypot(SIZE_SCATTER, roundingDeg / value, scatterDeg / value, gearDoubtDeg / value);
	return { value, lower: value * Math.exp(-NORMAL_90 * sd), upper: value * Math.exp(NORMAL_90 * sd) };
}

/** First second that holds a quarter of the peak's excess: what comes before it is scatter. */
function onsetSecond(context: RideContext, { from, peak, high }: Placed): number {
	const quarter = 0.25 * excessDeg(context.signals, peak, peak, high);
	let onset = from;
	while (onset < peak && excessDeg(context.signals, onset, onset, high) < quarter) onset++;
	return onset;
}

/** Mean hub torque of the last engaged seconds before onset, with limits; null = not known. */
function torqueBefore(context: RideContext, from: number, powerAt: 'crank' | 'hub') {
	const values = onsetTorques(context, from, powerAt);
	if (values.length === 0) return null;
	const value = values.reduce((sum, torque) => sum + torque, 0) / values.length;
	const spread =
		values.length > 1
			? Math.sqrt(values.reduce((s, x) => s + (x - value) ** 2, 0) / (values.length - 1))
			: 0.15 * value;
	const sd = Math.hypot(spread / Math.sqrt(values.length), TORQUE_ACCURACY * value);
	return { value, lower: Math.max(0, value - NORMAL_90 * sd), upper: value + NORMAL_90 * sd };
}

function powerMean(context: RideContext, from: number, to: number): number {
	let sum = 0;
	let count = 0;
	for (let t = from; t <= to; t++) {
		const watts = at(context.signals.grid.powerW, t);
		if (watts > 0) {
			sum += watts;
			count++;
		}
	}
	return count > 0 ? sum / count : NaN;
}

function clamp(share: number): number {
	return Math.max(0, Math.min(1, share));
}
