import type { TestEvidence } from '$lib/release/criteria';
import type { EvidenceRide } from '../evidence/buildEvidence';
import { detectionFactor } from '../evidence/detectionFactor';
import { foundTallies } from '../evidence/foundTallies';
import type { Ledger } from '../ledger/openLedger';
import { countWaitingInsertions } from '../queue/insertionQueue';

/** How many slips rides would not have shown on their observed stretches, from slips put into them. */
export function notFoundOf(ledger: Ledger, rides: readonly EvidenceRide[]): TestEvidence['notFound'] {
	const rideIds = rides.filter(({ observedM }) => observedM > 0).map(({ rideId }) => rideId);
	const factor = detectionFactor(rides, foundTallies(ledger, rideIds), {
		unit: 'episodes',
		unreviewed: 'slip'
	});
	return {
		ridesWaiting: countWaitingInsertions(ledger, rideIds),
		factor: factor && { upper: factor.upper, put: factor.put, found: factor.found }
	};
}
