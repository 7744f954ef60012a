/** What repeats of one measurement say together. */
export interface RepeatedMeasurement {
	readonly mean: number;
	/** how many times it was read */
	readonly repeats: number;
	/** largest less smallest reading */
	readonly range: number;
	/**
	 * half the width within which the reading is known no better, from the instrument's resolution alone:
	 * half a step; null when it was not written down
	 */
	readonly halfStep: number | null;
}

/**
 * Puts the repeats of one measurement together. The mean goes on; range and resolution stand beside it,
 * because one reading or a coarse instrument hides more than the line through the means shows.
 *
 * @param values readings in one unit
 * @param resolution smallest step of the instrument in that unit, > 0; null = not known
 * @returns null for no readings
 * @throws RangeError for a reading that is not a number
 * @example repeatedMeasurement([1.52, 1.5, 1.54], 0.01)
 *   // { mean: 1.52, repeats: 3, range: 0.04, halfStep: 0.005 }
 * Source: common practice, no source.
 */
export function repeatedMeasurement(
	values: readonly number[],
	resolution: number | null
): RepeatedMeasurement | null {
	if (values.length === 0) return null;
	for (const value of values) if (!Number.isFinite(value)) throw new RangeError(`reading: ${value}`);
	return {
		mean: values.reduce((sum, value) => sum + value, 0) / values.length,
		repeats: values.length,
		range: Math.max(...values) - Math.min(...values),
		halfStep: resolution === null ? null : resolution / 2
	};
}
