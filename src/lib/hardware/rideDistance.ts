/** The distance of a ride as its file says and as the tyre says. */
export interface RideDistance {
	readonly recordedM: number;
	/** null while one of the two circumferences is not known */
	readonly correctedM: number | null;
	/** the one that counts everywhere: in rates, ages and services */
	readonly countedM: number;
	/** corrected / recorded; null while it cannot be told */
	readonly factor: number | null;
}

/**
 * Recorded and corrected distance of a ride, and the one rule which of them counts. A device that counts
 * turns of the wheel multiplies them by the circumference it was set to; where the tyre's own is known the
 * distance can be corrected. The recorded distance counts: observed stretches, events and exposures are
 * metres of the recording, so that all of a ride's figures add up, and a correction that is known for some
 * rides only would put a step between them. The corrected one stands beside it as a check.
 *
 * @param recordedM metres of the file, >= 0
 * @param circumferences metres, 0.5 to 4 each; null = not known. Only where the speed is counted at the
 *   driven wheel: for other sensors give null
 * @example rideDistance(1000, { tyreM: 2.2, deviceM: 2.0 }) // correctedM 1100, countedM 1000
 * Source: common practice, no source.
 */
export function rideDistance(
	recordedM: number,
	circumferences: { readonly tyreM: number | null; readonly deviceM: number | null }
): RideDistance {
	const { tyreM, deviceM } = circumferences;
	const factor = tyreM !== null && deviceM !== null && tyreM > 0 && deviceM > 0 ? tyreM / deviceM : null;
	return {
		recordedM,
		correctedM: factor === null ? null : recordedM * factor,
		countedM: recordedM,
		factor
	};
}
