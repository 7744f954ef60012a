import { repeatedMeasurement } from '$lib/hardware/repeatedMeasurement';
import { wearSeries } from '$lib/hardware/wearSeries';
import { describe, expect, it } from 'vitest';

describe('repeatedMeasurement', () => {
	it('puts mean, number, range and half a step of the instrument side by side', () => {
		const { mean, ...rest } = repeatedMeasurement([1.52, 1.5, 1.54], 0.01)!;
		expect(mean).toBeCloseTo(1.52, 12);
		expect(rest.repeats).toBe(3);
		expect(rest.range).toBeCloseTo(0.04, 12);
		expect(rest.halfStep).toBe(0.005);
	});

	it('gives nothing for no readings, no step when the resolution is not known, and refuses NaN', () => {
		expect(repeatedMeasurement([], 0.01)).toBeNull();
		expect(repeatedMeasurement([2], null)).toEqual({ mean: 2, repeats: 1, range: 0, halfStep: null });
		expect(() => repeatedMeasurement([NaN], null)).toThrow('reading: NaN');
	});
});

describe('wearSeries', () => {
	const reading = (inspectionId: number, distanceM: number | null, ...values: number[]) => ({
		inspectionId,
		distanceM,
		values,
		resolution: null
	});

	it('puts readings in order of distance and marks those before the end of the run-in', () => {
		const { points } = wearSeries(
			[reading(3, 200_000, 1.4), reading(1, 20_000, 1.5), reading(2, 50_000, 1.45)],
			50_000
		);
		expect(points.map(({ inspectionId, beforeRunIn }) => [inspectionId, beforeRunIn])).toEqual([
			[1, true],
			[2, false],
			[3, false]
		]);
	});

	it('counts readings without a distance apart and leaves out those without a value', () => {
		const series = wearSeries([reading(1, null, 1.5), reading(2, 10)], 0);
		expect(series).toEqual({ points: [], withoutDistance: 1 });
	});

	it('refuses a negative run-in', () => {
		expect(() => wearSeries([], -1)).toThrow('runInM: -1');
	});
});
