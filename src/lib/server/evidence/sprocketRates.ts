import { countedAgainstExpected } from '$lib/reliability/countedAgainstExpected';
import { dispersion } from '$lib/reliability/dispersion';
import { CONFIDENCE, rateView } from '../rates/countView';
import type { RateView } from '../views';
import type { Counting } from './binnedRates';
import type { BuildEvidence } from './buildEvidence';
import { unitsOf } from './buildRates';
import { countedSlips } from './countedSlips';
import { LEAST_REFERENCE_M } from './expectedSlips';
import { TORQUE_GROUP_BINS, torqueGroupOf } from './strata';

/** One sprocket, set against all the others at the same hub torque. */
export interface SprocketRate {
	readonly teeth: number;
	/** of what has a known torque */
	readonly rate: RateView;
	/** slips that the other sprockets would have had on its observed distance at the same torque */
	readonly expected: number;
	/** counted / expected; null when nothing was expected */
	readonly ratio: number | null;
	readonly lower: number;
	/** null = no upper limit */
	readonly upper: number | null;
	readonly standsOut: boolean;
}

export interface SprocketRates {
	/** those ridden for 2 km observed or more, fewest teeth first; none = no file tells the teeth */
	readonly sprockets: readonly SprocketRate[];
	/** of each ratio: all of them hold together with 95 % */
	readonly confidence: number;
	/** share of the observed distance of which teeth or torque are not known */
	readonly notKnownShare: number;
}

interface Piece {
	readonly teeth: number;
	readonly torqueGroup: number;
	readonly slips: number;
	readonly observedM: number;
}

/**
 * Whether one sprocket slips more than the others at the same hub torque, which would point to chain and sprocket
 * and not to the hub. Every sprocket is asked, so each ratio's limits are wide enough for all of them together
 * (Bonferroni). Teeth are those of the recorded or stated gear, corrected ones where a person corrected them.
 */
export function sprocketRates(evidence: BuildEvidence, counting: Counting): SprocketRates {
	const pieces = piecesOf(evidence, counting);
	const known = pieces.filter(({ teeth, torqueGroup }) => teeth > 0 && torqueGroup >= 0);
	const metres = (of: readonly Piece[]) => of.reduce((sum, { observedM }) => sum + observedM, 0);
	const asked = [...new Set(known.map(({ teeth }) => teeth))]
		.filter((teeth) => metres(known.filter((piece) => piece.teeth === teeth)) >= LEAST_REFERENCE_M)
		.sort((a, b) => a - b);
	const confidence = 1 - (1 - CONFIDENCE) / Math.max(1, asked.length);
	const scatter = dispersion(unitsOf(evidence.rides, counting)) || 1;
	const all = metres(pieces);
	return {
		sprockets: asked.length < 2 ? [] : asked.map((teeth) => setApart(known, teeth, confidence, scatter)),
		confidence,
		notKnownShare: all > 0 ? 1 - metres(known) / all : 0
	};
}

function setApart(known: readonly Piece[], teeth: number, confidence: number, scatter: number): SprocketRate {
	const add = (of: readonly Piece[]) => ({
		slips: of.reduce((sum, { slips }) => sum + slips, 0),
		observedM: of.reduce((sum, { observedM }) => sum + observedM, 0)
	});
	const own = known.filter((piece) => piece.teeth === teeth);
	const { counted, expected, ratio, lower, upper } = countedAgainstExpected(
		TORQUE_GROUP_BINS.map((_, group) => {
			const here = add(own.filter(({ torqueGroup }) => torqueGroup === group));
			const others = add(known.filter((piece) => piece.teeth !== teeth && piece.torqueGroup === group));
			return {
				referenceCount: others.slips,
				referenceExposure: others.observedM,
				exposure: here.observedM,
				// a slip at a torque at which no second was observed has nothing to be compared on
				count: here.observedM > 0 ? here.slips : 0
			};
		}),
		confidence,
		{ counted: scatter, reference: scatter }
	);
	const { slips, observedM } = add(own);
	return {
		teeth,
		rate: rateView(slips, observedM),
		expected,
		ratio: expected > 0 ? ratio : null,
		lower,
		upper: Number.isFinite(upper) ? upper : null,
		standsOut: counted > 0 && lower > 1
	};
}

function piecesOf({ rides }: BuildEvidence, { unit, unreviewed }: Counting): Piece[] {
	return rides.flatMap(({ cells, events }) => [
		...cells.map(({ gear, torqueBin, observedM }) => ({
			teeth: sprocketOf(gear),
			torqueGroup: torqueGroupOf(torqueBin),
			slips: 0,
			observedM
		})),
		...countedSlips(events, unit, unreviewed).map(({ gear, torqueBin }) => ({
			teeth: sprocketOf(gear),
			torqueGroup: torqueGroupOf(torqueBin),
			slips: 1,
			observedM: 0
		}))
	]);
}

/** "40/21" -> 21; 0 for a gear of which only the proportion is known */
function sprocketOf(gear: string | null): number {
	return Number(/^\d+\/(\d+)$/.exec(gear ?? '')?.[1] ?? 0);
}
