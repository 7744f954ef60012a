import type { DistancePiece } from './wheelAxis';

/**
 * Metres that had been ridden by an instant. A ride that is under way counts by the share of its time; what
 * was ridden without a recording counts from its instant on. It never falls with time, so the distance
 * between two instants is a difference, and the distances of stretches that follow each other add up.
 *
 * @param pieces in the order of `wheelAxis`, so that sums come out the same to the last digit
 * @param ms milliseconds since 1970 UTC
 * @returns metres, >= 0
 * @example distanceReached([{ kind: 'ride', id: 1, startMs: 0, endMs: 10, distanceM: 40, buildId: 7 }], 5) // 20
 * Source: common practice, no source.
 */
export function distanceReached(pieces: readonly DistancePiece[], ms: number): number {
	let reachedM = 0;
	for (const { startMs, endMs, distanceM } of pieces) {
		if (ms >= endMs) reachedM += distanceM;
		else if (ms > startMs) reachedM += (distanceM * (ms - startMs)) / (endMs - startMs);
	}
	return reachedM;
}

/**
 * Metres ridden between two instants.
 *
 * @returns metres, >= 0; NaN when `untilMs` is before `fromMs`
 */
export function distanceBetween(pieces: readonly DistancePiece[], fromMs: number, untilMs: number): number {
	if (!(untilMs >= fromMs)) return NaN;
	return distanceReached(pieces, untilMs) - distanceReached(pieces, fromMs);
}
