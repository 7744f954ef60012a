import type { FittedPeriod, RideOnWheel } from './buildOfRide';

/**
 * When, during a ride, a build came on or off its wheel: where the ride can be cut so that each part lies
 * in one period or in none.
 *
 * @param ride wheel and instants
 * @param periods fitted periods of this wheel (others are ignored), in any order
 * @returns instants strictly inside the ride, milliseconds since 1970 UTC, in order, each once
 * @example changesDuringRide({ wheelId: 1, chosenBuildId: null, startMs: 0, endMs: 9 },
 *   [{ id: 1, wheelId: 1, buildId: 7, fromMs: 0, untilMs: 4 }]) // [4]
 * Source: common practice, no source.
 */
export function changesDuringRide(ride: RideOnWheel, periods: readonly FittedPeriod[]): number[] {
	const instants = periods
		.filter(({ wheelId }) => wheelId === ride.wheelId)
		.flatMap(({ fromMs, untilMs }) => (untilMs === null ? [fromMs] : [fromMs, untilMs]))
		.filter((ms) => ms > ride.startMs && ms < ride.endMs);
	return [...new Set(instants)].sort((a, b) => a - b);
}
