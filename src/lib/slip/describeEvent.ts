import { excessDeg } from './findCandidates';
import type { EventKind, SlipEvent } from './analysis';
import { at, type Placed } from './candidateFeatures';
import { isDroppedChain } from './isDroppedChain';
import { isFailedPickUp } from './isFailedPickUp';
import { isTyreSpin } from './isTyreSpin';
import { onsetGear, onsetTorques } from './onsetTorques';
import { NORMAL_90, overrunSize } from './overrunSize';
import { reasonsFor } from './reasonsFor';
import type { RideContext } from './rideContext';

/** Accuracy of a power meter; common practice, no source. */
const TORQUE_ACCURACY = 0.03;
/** By how much the turn that lets go differs from the seconds before it, as an sd (labelled and generated rides). */
const TURN_TO_TURN = 0.1;

/** What is known of the whole ride when one of its events is described. */
export interface RecordingFacts {
	readonly powerAt: 'crank' | 'hub';
	/** the recorded speed is that of the driven wheel */
	readonly followsHub: boolean;
	/** cadence is measured turn by turn */
	readonly byTurn: boolean;
}

/**
 * Turns a candidate that was taken for a slip into the event that the ledger keeps.
 *
 * @param context what was learned of the ride
 * @param placed the candidate in its place
 * @param strength strength of its signs, 0 to 1
 * @param isObserved whether a second lies on an observed stretch
 * @param facts what is known of the recording
 */
export function describeEvent(
	context: RideContext,
	placed: Placed,
	strength: number,
	isObserved: (second: number) => boolean,
	facts: RecordingFacts
): SlipEvent {
	const { grid } = context.signals;
	const from = onsetSecond(context, placed);
	const gear = onsetGear(context, from);
	const { crankDeg } = overrunSize(context, placed, facts.byTurn);
	const before = powerMean(context, from - 4, from - 1);
	const least = Math.min(...[0, 1, 2, 3].map((k) => at(grid.powerW, from + k)).filter((watts) => watts >= 0));
	const powerLost = before > 0 && Number.isFinite(least) ? clamp(1 - least / before) : null;
	const hubTorqueNm = torqueBefore(context, from, facts.powerAt);
	const kind = kindOf(context, placed, from, crankDeg.value, hubTorqueNm?.value ?? null, facts);
	return {
		startS: from,
		endS: placed.to + 1,
		kind,
		overrunCrankDeg: crankDeg,
		overrunHubDeg: crankDeg.value * (gear?.ratio ?? 1),
		gear,
		hubTorqueNm,
		powerLost,
		strength,
		atM: grid.distanceM[from],
		// the power that is lost with a slip would make its own second look unobserved
		observed:
			isObserved(placed.from) || (!context.signals.pressing[placed.from] && isObserved(placed.from - 1)),
		reasons: reasonsFor(context, placed, { from, kind, crankDeg, powerLost, byTurn: facts.byTurn })
	};
}

/** A slip, unless the signs of something else are all there. */
function kindOf(
	context: RideContext,
	placed: Placed,
	from: number,
	overrunDeg: number,
	hubTorqueNm: number | null,
	{ followsHub }: RecordingFacts
): EventKind {
	if (isDroppedChain(context, placed, overrunDeg)) return 'possible dropped chain';
	if (isFailedPickUp(context, placed, from)) return 'failed pick-up';
	if (!followsHub && isTyreSpin(context, placed, hubTorqueNm)) return 'possible tyre spin';
	return 'slip';
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
	const sd = Math.hypot(spread / Math.sqrt(values.length), TORQUE_ACCURACY * value, TURN_TO_TURN * value);
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
