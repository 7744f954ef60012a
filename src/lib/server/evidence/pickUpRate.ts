import { poissonRateLimits } from '$lib/reliability/poissonRateLimits';
import { CONFIDENCE } from '../rates/countView';
import type { EvidenceRide } from './buildEvidence';

/** How often the clutch did not take up the drive when pedalling began again. */
export interface PickUpRate {
	/** failed pick-ups that nobody rejected, on observed stretches */
	readonly failed: number;
	/** observed pick-ups, failed ones among them; parts of split rides take their share */
	readonly pickUps: number;
	/** per 1000 observed pick-ups; null = none was observed */
	readonly perThousand: number | null;
	readonly lower: number;
	/** null = no bound can be given */
	readonly upper: number | null;
	readonly confidence: number;
}

/** Failed pick-ups per 1000 observed ones, with exact limits; they are a kind of their own and in no rate of slips. */
export function pickUpRate(rides: readonly EvidenceRide[]): PickUpRate {
	const failed = rides.reduce((sum, { failedPickUps }) => sum + failedPickUps.length, 0);
	const pickUps = rides.reduce(
		(sum, { cells }) => sum + cells.reduce((inRide, { observedPickUps }) => inRide + observedPickUps, 0),
		0
	);
	const { rate, lower, upper } = poissonRateLimits(failed, pickUps / 1000, CONFIDENCE);
	return {
		failed,
		pickUps,
		perThousand: Number.isFinite(rate) ? rate : null,
		lower,
		upper: Number.isFinite(upper) ? upper : null,
		confidence: CONFIDENCE
	};
}
