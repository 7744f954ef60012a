import { compareGears, SAME_GEAR, type ComparedGear, type StatedGears } from './compareGears';
import type { LearnedGear } from './gatherGears';

/** The one change of what is stated that would explain the rides better. */
export interface GearCorrection {
	readonly change:
		| { readonly kind: 'circumference'; readonly fromM: number; readonly toM: number }
		| {
				readonly kind: 'sprocket' | 'chainring';
				readonly fromTeeth: number;
				readonly toTeeth: number;
		  };
	readonly stated: StatedGears;
	/** share of the riding time that was explained before, and would be */
	readonly explainedBefore: number;
	readonly explainedAfter: number;
}

/** Below this share something stated does not fit; a change is offered when it gains at least that much. */
const EXPLAINED = 0.95;
const GAIN = 0.05;
/** Two changes fit equally well when their misfits are nearer than that. */
const EQUAL_MISFIT = 0.02;
/** Riding time below which nothing is said, seconds: one long ride. */
const LEAST_SECONDS = 1800;

/**
 * Looks for one change that makes the stated gears fit the ridden ones: another circumference (within 12 %),
 * or one sprocket or chainring with another tooth count. With many gears close together nearly any set fits
 * by chance, so only a clear gain is offered. The best fit wins, by the squared distances of all gears: a tyre
 * that explains one gear by pushing all others off is no better. Among equals the change that says least new
 * wins: circumference, then sprocket, then chainring.
 *
 * @param stated what the bike is said to have
 * @param learned gathered from its rides
 * @returns null when the stated gears fit, when nothing single makes them fit, or after less than half an hour
 *   of riding
 * Source: common practice, no source.
 */
export function gearCorrection(stated: StatedGears, learned: readonly LearnedGear[]): GearCorrection | null {
	const seconds = learned.reduce((sum, gear) => sum + gear.seconds, 0);
	const explainedBefore = compareGears(stated, learned).explained;
	if (seconds < LEAST_SECONDS || !(explainedBefore < EXPLAINED)) return null;
	let best: { correction: GearCorrection; misfit: number } | null = null;
	for (const { change, stated: changed } of candidates(stated)) {
		const { gears, explained } = compareGears(changed, learned);
		if (explained - explainedBefore < GAIN) continue;
		const misfit = misfitOf(gears);
		// an earlier kind of change wins among equals, a better fit within its own kind
		const margin = best && best.correction.change.kind !== change.kind ? EQUAL_MISFIT : 0;
		if (best && misfit >= best.misfit - margin) continue;
		best = { correction: { change, stated: changed, explainedBefore, explainedAfter: explained }, misfit };
	}
	return best?.correction ?? null;
}

/** Mean squared distance from the stated gears by time, 0 to 1; what no gear explains counts as 1. */
function misfitOf(gears: readonly ComparedGear[]): number {
	const total = gears.reduce((sum, { seconds }) => sum + seconds, 0);
	const misfit = gears.reduce(
		(sum, { off, seconds }) => sum + seconds * Math.min(1, (off / SAME_GEAR) ** 2),
		0
	);
	return misfit / total;
}

function* candidates(stated: StatedGears): Generator<Pick<GearCorrection, 'change' | 'stated'>> {
	const fromM = stated.circumferenceM;
	for (let step = 1; step <= 24; step++)
		for (const sign of [1, -1]) {
			const toM = Math.round(fromM * (1 + sign * step * 0.005) * 1000) / 1000;
			yield { change: { kind: 'circumference', fromM, toM }, stated: { ...stated, circumferenceM: toM } };
		}
	for (const [kind, name, reach] of [
		['sprocket', 'cassette', 6],
		['chainring', 'chainrings', 12]
	] as const)
		for (const fromTeeth of stated[name])
			for (let step = 1; step <= reach; step++)
				for (const toTeeth of [fromTeeth + step, fromTeeth - step]) {
					if (toTeeth < 9 || stated[name].includes(toTeeth)) continue;
					const teeth = stated[name].map((one) => (one === fromTeeth ? toTeeth : one)).sort((a, b) => a - b);
					yield { change: { kind, fromTeeth, toTeeth }, stated: { ...stated, [name]: teeth } };
				}
}
