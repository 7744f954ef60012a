import { widestRateRatio } from '$lib/reliability/widestRateRatio';
import { CONFIDENCE } from '../rates/countView';
import type { EvidenceRide } from './buildEvidence';
import { unitsOf } from './buildRates';
import type { CountedUnit } from './countedSlips';
import { expectedSlips, type ExpectedSlips } from './expectedSlips';
import { strata } from './strata';

/** A ratio of two rates with THE interval. */
export interface RatioView {
	/** null when there is no slip on either side, or only on the build's */
	readonly ratio: number | null;
	readonly lower: number;
	/** null = no upper limit can be given */
	readonly upper: number | null;
	readonly confidence: number;
	/** of "equal rates", exact, slips taken for single ones; null = nothing to compare */
	readonly pValue: number | null;
	readonly decidedBy: 'single' | 'bursts';
	readonly assumesSingleEvents: boolean;
}

/** Rides set against others: per observed km, and at the same torque and age. */
export interface SetAgainst {
	readonly ratio: RatioView;
	readonly expected: ExpectedSlips;
}

/**
 * Sets rides of one build against those of the reference, both comparisons with the same allowance for bursts.
 * Unreviewed events count as slips of the build.
 *
 * @param onReference what they count as on the reference
 */
export function setAgainst(
	rides: readonly EvidenceRide[],
	reference: readonly EvidenceRide[],
	unit: CountedUnit,
	onReference: 'slip' | 'none'
): SetAgainst {
	const ratio = widestRateRatio(
		unitsOf(rides, { unit, unreviewed: 'slip' }),
		unitsOf(reference, { unit, unreviewed: onReference }),
		CONFIDENCE
	);
	return {
		ratio: {
			ratio: Number.isFinite(ratio.ratio) ? ratio.ratio : null,
			lower: ratio.lower,
			upper: Number.isFinite(ratio.upper) ? ratio.upper : null,
			confidence: CONFIDENCE,
			pValue: Number.isNaN(ratio.ratio) ? null : ratio.pValue,
			decidedBy: ratio.decidedBy,
			assumesSingleEvents: ratio.assumesSingleEvents
		},
		expected: expectedSlips(strata(rides, unit, 'slip'), strata(reference, unit, onReference), {
			counted: ratio.usedDispersionA,
			reference: ratio.usedDispersionB
		})
	};
}
