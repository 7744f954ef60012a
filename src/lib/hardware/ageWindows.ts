/** A ride as far as the distance of the hardware is concerned. */
export interface RideLength {
	readonly rideId: number;
	/** milliseconds since 1970 UTC */
	readonly startMs: number;
	/** metres, >= 0 */
	readonly totalM: number;
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
 * @param rides those that count, in any order, each once
 * @returns one window a ride, in order; the last `toM` is the distance of the build on this wheel
 * @throws RangeError for a negative or unknown distance
 * @example ageWindows([{ rideId: 2, startMs: 9, totalM: 50 }, { rideId: 1, startMs: 3, totalM: 20 }])
 *   // [{ rideId: 1, fromM: 0, toM: 20 }, { rideId: 2, fromM: 20, toM: 70 }]
 * Source: common practice, no source.
 */
export function ageWindows(rides: readonly RideLength[]): AgeWindow[] {
	const inOrder = [...rides].sort((a, b) => a.startMs - b.startMs || a.rideId - b.rideId);
	let reachedM = 0;
	return inOrder.map(({ rideId, totalM }) => {
		if (!(totalM >= 0 && totalM < Infinity)) throw new RangeError(`totalM of ride ${rideId}: ${totalM}`);
		const fromM = reachedM;
		reachedM += totalM;
		return { rideId, fromM, toM: reachedM };
	});
}
