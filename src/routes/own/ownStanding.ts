import type { OwnRide } from '$lib/server';

/** How a ride stands in the workshop, as far as its rider needs to know; null when it simply counts. */
export function ownStanding(ride: Pick<OwnRide, 'waits' | 'withdrawn'>): string | null {
	if (ride.withdrawn) return 'The workshop has taken this ride out of its figures.';
	return ride.waits ? 'The workshop still has to answer something before this ride counts.' : null;
}
