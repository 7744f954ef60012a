import type { RideFacts } from './rideFacts';

/** Whether a ride, or a part of a split one, was ridden on a build. For lists; sums read evidenceParts. */
export function tellsOfBuild(ride: RideFacts, buildId: number): boolean {
	return (
		ride.buildId === buildId ||
		ride.parts.some(({ build }) => build.kind === 'build' && build.buildId === buildId)
	);
}
