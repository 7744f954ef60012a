/** A ride as far as the distance of the hardware is concerned. */
export interface RideLength {
	readonly rideId: number;
	/** milliseconds since 1970 UTC */
	readonly startMs: number;
	/** metres, >= 0 */
	readonly totalM: number;
}

/** What the same hardware was ridden without a recording. */
export interface UnloggedLength {
	/** instant by which it was ridden, milliseconds since 1970 UTC */
	readonly atMs: number;
	/** metres, >= 0 */
	readonly distanceM: number;
}

/** Where a ride lies on the axis of distance since fitting, metres. */
export interface AgeWindow {
	readonly rideId: number;
	readonly fromM: number;
	readonly toM: number;
}

/**
 * Lays the rides of one build on one wheel end to end on its age axis: the distance that the wheel had
 * done since the build was fitted. The axis follows from the rides alone, in order of their start (of
 * their id at the same instant), so late uploads and corrections in any order end in the same sums.
 *
 * Distance without a recording moves what comes after it and has no window: nothing was observed on it.
 *
 * @param rides those that count, in any order, each once
 * @param unlogged distance without a recording on the same build and wheel, in any order
 * @returns one window a ride, in order
 * @throws RangeError for a negative or unknown distance
 * @example ageWindows([{ rideId: 2, startMs: 9, totalM: 50 }, { rideId: 1, startMs: 3, totalM: 20 }])
 *   // [{ rideId: 1, fromM: 0, toM: 20 }, { rideId: 2, fromM: 20, toM: 70 }]
 * Source: common practice, no source.
 */
export function ageWindows(
	rides: readonly RideLength[],
	unlogged: readonly UnloggedLength[] = []
): AgeWindow[] {
	const inOrder = [...rides].sort((a, b) => a.startMs - b.startMs || a.rideId - b.rideId);
	const between = [...unlogged].sort((a, b) => a.atMs - b.atMs || a.distanceM - b.distanceM);
	let reachedM = 0;
	let next = 0;
	return inOrder.map(({ rideId, startMs, totalM }) => {
		if (!(totalM >= 0 && totalM < Infinity)) throw new RangeError(`totalM of ride ${rideId}: ${totalM}`);
		for (; next < between.length && between[next].atMs <= startMs; next++) {
			const { distanceM } = between[next];
			if (!(distanceM >= 0 && distanceM < Infinity)) throw new RangeError(`distanceM: ${distanceM}`);
			reachedM += distanceM;
		}
		const fromM = reachedM;
		reachedM += totalM;
		return { rideId, fromM, toM: reachedM };
	});
}
