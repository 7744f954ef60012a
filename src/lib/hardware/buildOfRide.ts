/** When a build was on a wheel: from <= instant < until. */
export interface FittedPeriod {
	readonly id: number;
	readonly wheelId: number;
	readonly buildId: number;
	/** milliseconds since 1970 UTC */
	readonly fromMs: number;
	/** null = still fitted */
	readonly untilMs: number | null;
}

/** What decides which build a ride was ridden on. */
export interface RideOnWheel {
	readonly wheelId: number | null;
	/** a person's choice; it wins over the periods */
	readonly chosenBuildId: number | null;
	readonly startMs: number;
	readonly endMs: number;
}

export type BuildOfRide =
	| { readonly kind: 'build'; readonly buildId: number }
	| { readonly kind: 'no wheel' }
	/** nothing was fitted on that wheel while the ride was ridden */
	| { readonly kind: 'no build' }
	/** the build changed, came on or came off during the ride */
	| { readonly kind: 'across a change'; readonly buildIds: readonly number[] };

/**
 * The build that a ride tells about. Only a period that holds the whole ride gives an answer by itself:
 * of a ride across a change nobody can say which build its slips belong to.
 *
 * @param ride wheel, instants, and what a person chose
 * @param periods fitted periods of this wheel (others are ignored), without overlaps, in any order
 * @returns the build, or what is missing
 * @example buildOfRide({ wheelId: 1, chosenBuildId: null, startMs: 5, endMs: 9 },
 *   [{ id: 1, wheelId: 1, buildId: 7, fromMs: 0, untilMs: null }]) // { kind: 'build', buildId: 7 }
 * Source: common practice, no source.
 */
export function buildOfRide(ride: RideOnWheel, periods: readonly FittedPeriod[]): BuildOfRide {
	if (ride.wheelId === null) return { kind: 'no wheel' };
	if (ride.chosenBuildId !== null) return { kind: 'build', buildId: ride.chosenBuildId };
	const touching = periods
		.filter(
			(period) =>
				period.wheelId === ride.wheelId &&
				(period.fromMs <= ride.startMs || period.fromMs < ride.endMs) &&
				(period.untilMs === null || ride.startMs < period.untilMs)
		)
		.sort((a, b) => a.fromMs - b.fromMs);
	if (touching.length === 0) return { kind: 'no build' };
	const [only] = touching;
	const holdsAll =
		touching.length === 1 &&
		only.fromMs <= ride.startMs &&
		(only.untilMs === null || ride.endMs <= only.untilMs);
	if (holdsAll) return { kind: 'build', buildId: only.buildId };
	return { kind: 'across a change', buildIds: touching.map((period) => period.buildId) };
}
