import type { FirstLook } from '$lib/server';

/**
 * The page on which a step takes place.
 *
 * @param step 1 to 7
 * @returns null while the example has no such place, e.g. because its rides are still being read
 */
export function placeOf(step: number, { slip, before, after }: FirstLook): string | null {
	const onRide = slip && `/rides/${slip.rideId}?event=${slip.eventId}`;
	const builds = before !== null && after !== null ? { before, after } : null;
	const places = [
		onRide && `${onRide}&look=1`,
		onRide && `${onRide}&look=2`,
		'/rides?needs=1&look=3',
		builds && `/builds/${builds.after}?look=4`,
		builds && `/compare?reference=${builds.before}&build=${builds.before}&build=${builds.after}&look=5`,
		builds && `/builds/${builds.after}/release?look=6`,
		builds && `/report?before=${builds.before}&after=${builds.after}&look=7`
	];
	return places[step - 1] ?? null;
}
