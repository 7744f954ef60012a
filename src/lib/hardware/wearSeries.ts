import { repeatedMeasurement, type RepeatedMeasurement } from './repeatedMeasurement';

/** One inspection of one place, as it was read. */
export interface WearReading {
	readonly inspectionId: number;
	/** distance of the build on its wheel, metres; null = not known */
	readonly distanceM: number | null;
	readonly values: readonly number[];
	/** smallest step of the instrument; null = not known */
	readonly resolution: number | null;
}

export interface WearPoint extends RepeatedMeasurement {
	readonly inspectionId: number;
	readonly distanceM: number;
	/** measured before the parts had run in: shown, not part of the line */
	readonly beforeRunIn: boolean;
}

/** What a run of inspections of one place gives to a line over distance. */
export interface WearSeries {
	/** in order of distance */
	readonly points: readonly WearPoint[];
	/** readings whose distance is not known; they are on no axis */
	readonly withoutDistance: number;
}

/**
 * Lays the readings of one place on the axis of distance. Parts wear fast while they run in and slower
 * afterwards, so what was measured before the end of the run-in stands apart: a line through both would
 * promise too much.
 *
 * @param readings of one place and one unit, in any order
 * @param runInM distance of the run-in, metres, >= 0
 * @returns points in order of distance, then of inspection
 * @throws RangeError for a negative run-in
 * @example wearSeries([{ inspectionId: 1, distanceM: 90000, values: [1.5], resolution: null }], 50000)
 *   .points[0].beforeRunIn // false
 * Source: common practice, no source.
 */
export function wearSeries(readings: readonly WearReading[], runInM: number): WearSeries {
	if (!(runInM >= 0)) throw new RangeError(`runInM: ${runInM}`);
	const points: WearPoint[] = [];
	let withoutDistance = 0;
	for (const { inspectionId, distanceM, values, resolution } of readings) {
		const measured = repeatedMeasurement(values, resolution);
		if (measured === null) continue;
		if (distanceM === null) withoutDistance++;
		else points.push({ ...measured, inspectionId, distanceM, beforeRunIn: distanceM < runInM });
	}
	points.sort((a, b) => a.distanceM - b.distanceM || a.inspectionId - b.inspectionId);
	return { points, withoutDistance };
}
