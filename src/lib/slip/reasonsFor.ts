import type { EventKind, WithLimits } from './analysis';
import { at, type Placed } from './candidateFeatures';
import type { RideContext } from './rideContext';

/** What was found of the event, for the sentences about it. */
export interface EventFacts {
	/** second in which it begins */
	readonly from: number;
	readonly kind: EventKind;
	readonly crankDeg: WithLimits;
	/** 0 to 1; null without power */
	readonly powerLost: number | null;
	/** cadence is measured turn by turn */
	readonly byTurn: boolean;
}

/** What speaks for and against a slip here, in plain words with the figures that were measured. */
export function reasonsFor(context: RideContext, placed: Placed, facts: EventFacts): string[] {
	const { signals, base } = context;
	const { from, to, peak, high } = placed;
	const { crankDeg, powerLost } = facts;
	const reasons: string[] = [];
	const rpm = signals.grid.cadenceRpm[peak];
	const engaged = 60 * signals.speedMps[peak] * Math.exp(high);
	reasons.push(
		`For: the crank turned at ${rpm.toFixed(0)} rpm where the wheel needed ${engaged.toFixed(0)} rpm, ` +
			`${crankDeg.value.toFixed(0)} degrees more in ${to - from + 1} s.`
	);
	if (powerLost === null) reasons.push('Against: no power was recorded, so a loss of drive cannot be seen.');
	else if (powerLost >= 0.3)
		reasons.push(`For: ${(100 * powerLost).toFixed(0)} % of the power was lost with it.`);
	else reasons.push(`Against: only ${(100 * powerLost).toFixed(0)} % of the power was lost with it.`);
	const step = base.after3[to] - base.before3[from];
	if (Math.abs(step) < 0.02) reasons.push('For: the same gear was in before and after.');
	else if (Math.abs(step) >= 0.02) {
		reasons.push(
			`Against: the gear changed by ${(100 * Math.abs(step)).toFixed(0)} % at about the same time.`
		);
	}
	const noiseDeg = 6 * rpm * context.noise[peak];
	if (crankDeg.value < 4 * noiseDeg) {
		reasons.push(`Against: this recording scatters by about ${noiseDeg.toFixed(0)} degrees a second.`);
	}
	if (facts.kind !== 'failed pick-up' && at(context.sinceRest, facts.from - 1) <= 2)
		reasons.push('Against: pedalling had only just begun again.');
	const nearShift = signals.grid.shiftS.find((t) => t >= from - 3 && t <= to + 1);
	if (nearShift !== undefined) {
		reasons.push(
			`Against: a shift was recorded ${Math.abs(nearShift - from)} s ${nearShift <= from ? 'before' : 'after'} it.`
		);
	}
	if (facts.byTurn) {
		reasons.push(
			`On its size: this sensor measures turn by turn, and one short turn may stand for a whole second: it may have been as little as ${crankDeg.lower.toFixed(0)} degrees.`
		);
	}
	const more = WORDS_OF_KIND[facts.kind];
	if (more) reasons.push(more);
	return reasons;
}

const WORDS_OF_KIND: Partial<Record<EventKind, string>> = {
	'failed pick-up': 'For a failed pick-up: it began as pedalling resumed, not under load.',
	'possible dropped chain':
		'For a chain that is off: the crank went on turning without load and nobody drove again until the wheel stood.',
	'possible tyre spin':
		'For a tyre that spun: the speed is not that of the driven wheel, the torque was high, and most of the power went on.'
};
