import { describe, expect, it } from 'vitest';
import { axisTicks } from '$lib/charts/axisTicks';
import { distanceAxis, timeAxis } from '$lib/charts/rideAxis';
import { stripPlaces } from '$lib/charts/stripPlaces';
import { createFormats } from '$lib/ui/formats';

const formats = createFormats('en-GB', 'UTC');
const f32 = (...values: number[]) => Float32Array.from(values);

describe('distanceAxis', () => {
	it('says where a second lies and which second lies there first', () => {
		const axis = distanceAxis(f32(0, 60, 60, 160), 3)!;
		expect(axis.at(0.5)).toBe(30);
		expect(axis.timeAt(110)).toBe(2.5);
		expect(axis.timeAt(60)).toBe(1);
		expect([axis.timeAt(0), axis.timeAt(160), axis.timeAt(999)]).toEqual([0, 3, 3]);
	});

	it('never falls: what is missing or went back counts as a stop', () => {
		const axis = distanceAxis(f32(NaN, 50, NaN, 40, 200), 4)!;
		expect([0, 1, 2, 3, 4].map(axis.at)).toEqual([0, 50, 50, 50, 200]);
	});

	it('leads back to the same place from everywhere, on drawn rides with stops', () => {
		let seed = 7;
		const chance = () => (seed = (seed * 16807) % 2147483647) / 2147483647;
		let way = 0;
		const distance = Float32Array.from({ length: 500 }, () => (way += chance() < 0.3 ? 0 : 8 * chance()));
		const axis = distanceAxis(distance, 499)!;
		for (let place = 0; place <= axis.end; place += 3.7)
			expect(axis.at(axis.timeAt(place))).toBeCloseTo(place, 3);
	});

	it('is not there for a recording without distance', () => {
		expect(distanceAxis(new Float32Array(50).fill(NaN), 50)).toBeNull();
		expect(distanceAxis(f32(0, 20, 99), 3)).toBeNull();
	});
});

describe('axisTicks', () => {
	it('counts round times from the instant that a page is about, so that it has a label of its own', () => {
		const places = (most: number) =>
			axisTicks({ ...timeAxis(30), zeroS: 12 }, [0, 29], most, formats).map(({ place }) => place);
		expect(places(4)).toEqual([2, 12, 22]);
		expect(places(8)).toContain(12);
	});

	it('writes times as the clock does and kilometres with the decimals that the step needs', () => {
		const labels = (axis: ReturnType<typeof timeAxis>, span: readonly [number, number]) =>
			axisTicks(axis, span, 4, formats).map(({ label }) => label.replace('\u00a0', ' '));
		const distance = distanceAxis(f32(0, 90_000), 1)!;
		expect(labels(timeAxis(90), [0, 90])).toEqual(['0:00', '0:30', '1:00', '1:30']);
		expect(labels(distance, [0, 90_000])).toEqual(['0 km', '20 km', '40 km', '60 km', '80 km']);
		expect(labels(distance, [12_310, 12_395])).toEqual(['12.32 km', '12.34 km', '12.36 km', '12.38 km']);
	});
});

describe('stripPlaces', () => {
	it('lays seconds by the metres ridden: a stop has no room, nor has what could not be seen in it', () => {
		const axis = distanceAxis(f32(0, 100, 100, 100, 200), 4)!;
		const places = stripPlaces(axis, [0, 4], 260);
		expect(places.place(1)).toBe(places.place(3));
		expect(places.place(4) - places.place(0)).toBe(200);
		expect(places.gathered([[1, 3]])).toEqual([]);
		expect(places.gathered([[0, 3]])).toEqual([[46, 146]]);
		expect(places.timeAt(196)).toBeCloseTo(3.5, 9);
	});

	it('keeps what lies outside the window at its edges', () => {
		const places = stripPlaces(timeAxis(100), [20, 40], 260);
		expect([places.place(0), places.place(99)]).toEqual([46, 246]);
		expect([places.shows([0, 10]), places.shows([0, 20]), places.shows([39, 50])]).toEqual([
			false,
			true,
			true
		]);
	});
});
