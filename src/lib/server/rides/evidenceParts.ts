import type { Ledger } from '../ledger/openLedger';
import { remember } from '../ledger/remember';
import { eventTallies, NO_EVENTS, readPartTallies, type EventTally } from '../rates/eventTallies';
import { allRideFacts, type RideFacts } from './rideFacts';

/** A ride, or one part of a split ride, as evidence about one build. Instants and distances are the part's. */
export type EvidencePart = RideFacts;

/**
 * What statistics add up: every ride, split ones as their parts, each with its own build, instants and
 * distances. A ride that was not split is there as it is. Whoever counts by build reads these, or the
 * parts of a split ride are missing from both builds.
 */
export function evidenceParts(ledger: Ledger, onWheelId?: number): EvidencePart[] {
	return onWheelId === undefined
		? remember(ledger, 'evidence parts', () => partsOfRides(allRideFacts(ledger)))
		: partsOfRides(allRideFacts(ledger, onWheelId));
}

/** made once for each ride as it was read */
const made = new WeakMap<RideFacts, readonly EvidencePart[]>();

/** The same from facts that were read already. A ride that was not split is its own part: nothing is copied. */
export function partsOfRides(rides: readonly RideFacts[]): EvidencePart[] {
	return rides.flatMap((ride) => {
		if (ride.parts.length === 0 || ride.parts.some(({ amount }) => amount === null)) return ride;
		const known = made.get(ride) ?? partsOfRide(ride);
		made.set(ride, known);
		return known;
	});
}

function partsOfRide(ride: RideFacts): EvidencePart[] {
	const last = ride.parts.length - 1;
	return ride.parts.map(({ amount, build, fromMs, untilMs }, part) => ({
		...ride,
		...amount!,
		part,
		toS: part === last ? Infinity : amount!.toS,
		startMs: fromMs,
		endMs: untilMs,
		build,
		buildId: build.kind === 'build' ? build.buildId : null
	}));
}

/** How the events of each of these parts stand, in their order; an event belongs to the part it begins in. */
export function partTallies(ledger: Ledger, parts: readonly EvidencePart[]): EventTally[] {
	const whole = eventTallies(ledger);
	return parts.map(
		(ride) => (ride.part === null ? whole.get(ride.id) : readPartTallies(ledger, ride)) ?? NO_EVENTS
	);
}
