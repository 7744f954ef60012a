import { buildOfRide, type BuildOfRide, type FittedPeriod, type RideOnWheel } from './buildOfRide';

/** A part of a split ride, by time: from <= instant < until. */
export interface RidePartBuild {
	/** milliseconds since 1970 UTC */
	readonly fromMs: number;
	readonly untilMs: number;
	readonly build: BuildOfRide;
}

/**
 * The parts into which a ride was cut and the build that each of them tells about, by the fitted periods as
 * they are now. A part that no longer lies in one period asks again: the periods were corrected since.
 *
 * @param ride wheel and instants; a build chosen for the whole ride is not looked at
 * @param cutsMs instants of the cuts, in any order; those outside the ride are left out
 * @param periods fitted periods of this wheel, without overlaps, in any order
 * @returns at least one part, in order of time; together they are the ride
 * @example ridePartBuilds({ wheelId: 1, chosenBuildId: null, startMs: 0, endMs: 9 }, [4],
 *   [{ id: 1, wheelId: 1, buildId: 7, fromMs: 0, untilMs: 4 }])
 *   // [{ fromMs: 0, untilMs: 4, build: build 7 }, { fromMs: 4, untilMs: 9, build: none }]
 * Source: common practice, no source.
 */
export function ridePartBuilds(
	ride: RideOnWheel,
	cutsMs: readonly number[],
	periods: readonly FittedPeriod[]
): RidePartBuild[] {
	const inside = [...new Set(cutsMs)].filter((ms) => ms > ride.startMs && ms < ride.endMs);
	const edges = [ride.startMs, ...inside.sort((a, b) => a - b), ride.endMs];
	return edges.slice(1).map((untilMs, index) => ({
		fromMs: edges[index],
		untilMs,
		build: buildOfRide(
			{ wheelId: ride.wheelId, chosenBuildId: null, startMs: edges[index], endMs: untilMs },
			periods
		)
	}));
}
