import { borrowableDispersion } from './borrowableDispersion';
import { clusteredCount } from './clusteredCount';
import {
	countedAgainstExpected,
	type CountedAgainstExpected,
	type ExpectedStratum
} from './countedAgainstExpected';
import type { UnitCount } from './unitCounts';

export interface WidestCountedAgainstExpected extends CountedAgainstExpected {
	/** variance / mean used for the counted and for the reference events, 1 or more */
	readonly countedDispersion: number;
	readonly referenceDispersion: number;
	/** true: say beside the figure that it assumes that events do not cluster */
	readonly assumesSingleEvents: boolean;
}

/**
 * THE figure of counted over expected events: `countedAgainstExpected` with limits widened by the scatter that
 * whole outings show on both sides. Where the new side has too few events to show its own, the reference's is
 * borrowed, if that has enough.
 *
 * @param strata fixed beforehand
 * @param units outings of the new side: all of them, whatever stratum their exposure falls into
 * @param referenceUnits outings of the reference
 * @param confidence two-sided, 0 < confidence < 1
 * @returns the ratio with limits, what was left out, and the dispersions used
 * @throws RangeError for counts, exposures or a confidence outside their ranges
 * @example widestCountedAgainstExpected(strata, ridesAfter, ridesBefore, 0.95).upper
 * Source: see `countedAgainstExpected` and `clusteredCount`; coverage measured in tests/bench/coverage-figures.md.
 */
export function widestCountedAgainstExpected(
	strata: readonly ExpectedStratum[],
	units: readonly UnitCount[],
	referenceUnits: readonly UnitCount[],
	confidence: number
): WidestCountedAgainstExpected {
	const reference = clusteredCount(referenceUnits);
	const counted = clusteredCount(units, borrowableDispersion(referenceUnits));
	const clustering = { counted: counted.usedDispersion, reference: reference.usedDispersion };
	return {
		...countedAgainstExpected(strata, confidence, clustering),
		countedDispersion: counted.usedDispersion,
		referenceDispersion: reference.usedDispersion,
		assumesSingleEvents: counted.assumesSingleEvents || reference.assumesSingleEvents
	};
}
