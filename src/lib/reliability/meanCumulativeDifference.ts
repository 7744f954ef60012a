import { checkConfidence } from './checks';
import { meanCumulativeAt } from './meanCumulativeAt';
import type { CumulativeStep, MeanCumulativeFunction } from './meanCumulativeFunction';
import { normalQuantile } from './normalQuantile';
import { studentQuantile } from './studentQuantile';

export interface CumulativeDifference {
	readonly age: number;
	/** mean events of a system of A less those of B, up to this age */
	readonly difference: number;
	readonly lower: number;
	readonly upper: number;
}

/**
 * How many events more a system of A has had than one of B, at each age with an event, up to the age that both
 * were watched to. The difference is in numbers of events, so it needs no rate and no proportion.
 *
 * @param a and b from `meanCumulativeFunction`, of different systems
 * @param confidence two-sided, 0 < confidence < 1
 * @returns one entry an age; empty when neither had an event in the common range
 * @throws RangeError for a confidence outside (0, 1)
 * @example meanCumulativeDifference(before, after, 0.95).at(-1) // { difference: 4.2, lower: 1.1, upper: 7.3, ... }
 * Source: Nelson 2003, Recurrent Events Data Analysis for Product Repairs, chapter 5 (from memory); each
 * error is the wider of the robust one and that of single events, and before its first event that of one event
 * (ours).
 */
export function meanCumulativeDifference(
	a: MeanCumulativeFunction,
	b: MeanCumulativeFunction,
	confidence: number
): CumulativeDifference[] {
	checkConfidence('confidence', confidence);
	const tail = 1 - (1 - confidence) / 2;
	const end = Math.min(a.end, b.end);
	const ages = [...new Set([...a.steps, ...b.steps].map((step) => step.age))]
		.filter((age) => age <= end)
		.sort((one, other) => one - other);
	return ages.map((age) => {
		const [inA, inB] = [meanCumulativeAt(a, age), meanCumulativeAt(b, age)];
		const difference = (inA?.mean ?? 0) - (inB?.mean ?? 0);
		const reach = Math.hypot(reachOf(inA, a, tail), reachOf(inB, b, tail));
		return { age, difference, lower: difference - reach, upper: difference + reach };
	});
}

function reachOf(step: CumulativeStep | null, curve: MeanCumulativeFunction, tail: number): number {
	const z = normalQuantile(tail);
	// no event so far is not certainty: the error that one event would have
	if (step === null) return z / Math.max(1, curve.systems);
	const t = curve.speaksForOthers ? studentQuantile(tail, curve.systems - 1) : z;
	// a single system has no error between systems
	return Math.max(z * step.standardErrorSingle, t * (step.standardError || 0));
}
