import { describe, expect, it } from 'vitest';
import { ageWindows } from '$lib/hardware/ageWindows';
import { buildAtInstant } from '$lib/hardware/buildAtInstant';
import { checkOdometer } from '$lib/hardware/checkOdometer';
import { gapsBetween } from '$lib/hardware/gapsBetween';
import { rideDistance } from '$lib/hardware/rideDistance';
import { readTyreSize, tyreCircumferenceM } from '$lib/hardware/tyreCircumference';
import { wheelAxis } from '$lib/hardware/wheelAxis';

describe('ageWindows with unlogged distance', () => {
	const rides = [
		{ rideId: 1, startMs: 100, totalM: 30 },
		{ rideId: 2, startMs: 200, totalM: 40 }
	];

	it('moves what comes after it and has no window of its own', () => {
		expect(ageWindows(rides, [{ atMs: 150, distanceM: 7 }])).toEqual([
			{ rideId: 1, fromM: 0, toM: 30 },
			{ rideId: 2, fromM: 37, toM: 77 }
		]);
		expect(ageWindows(rides, [{ atMs: 900, distanceM: 7 }])).toEqual(ageWindows(rides));
		expect(ageWindows([], [{ atMs: 1, distanceM: 7 }])).toEqual([]);
	});

	it('comes out the same in whatever order it was written down', () => {
		const unlogged = [0.1, 0.2, 0.3].map((distanceM) => ({ atMs: 150, distanceM }));
		expect(ageWindows([...rides].reverse(), [...unlogged].reverse())).toEqual(ageWindows(rides, unlogged));
	});

	it('refuses a length that is none', () => {
		expect(() => ageWindows(rides, [{ atMs: 0, distanceM: NaN }])).toThrow(RangeError);
	});
});

describe('buildAtInstant', () => {
	const periods = [
		{ id: 1, wheelId: 1, buildId: 7, fromMs: 0, untilMs: 5 },
		{ id: 2, wheelId: 1, buildId: 8, fromMs: 5, untilMs: null },
		{ id: 3, wheelId: 2, buildId: 9, fromMs: 0, untilMs: null }
	];

	it('gives what was ridden by the instant of a change to the build that came off', () => {
		expect([1, 5, 6].map((ms) => buildAtInstant(1, ms, periods))).toEqual([7, 7, 8]);
	});

	it('knows no build before the first one, and looks at its wheel alone', () => {
		expect([buildAtInstant(1, 0, periods), buildAtInstant(3, 4, periods)]).toEqual([null, null]);
	});
});

describe('rideDistance', () => {
	it('tells recorded and corrected distance apart and counts the recorded one', () => {
		expect(rideDistance(1000, { tyreM: 2.2, deviceM: 2.0 })).toEqual({
			recordedM: 1000,
			correctedM: 1100,
			countedM: 1000,
			factor: 1.1
		});
	});

	it('corrects nothing while one circumference is not known', () => {
		for (const circumferences of [
			{ tyreM: null, deviceM: 2 },
			{ tyreM: 2, deviceM: null },
			{ tyreM: 2, deviceM: 0 }
		])
			expect(rideDistance(1000, circumferences)).toMatchObject({ correctedM: null, countedM: 1000 });
	});
});

describe('checkOdometer', () => {
	const axis = wheelAxis(
		[0, 1, 2, 3].map((id) => ({
			kind: 'ride' as const,
			id,
			startMs: id * 100,
			endMs: id * 100 + 50,
			distanceM: 50_000,
			buildId: 1
		}))
	);
	const readings = (...list: [number, number][]) =>
		list.map(([atMs, readingM], id) => ({ id, atMs, readingM }));

	it('compares from reading to reading, whatever the counter began with', () => {
		const checks = checkOdometer(readings([60, 1_230_000], [160, 1_281_000], [360, 1_390_000]), axis);
		expect(checks.map(({ verdict }) => verdict)).toEqual(['first reading', 'agrees', 'more than the ledger']);
		expect(checks[1].since).toEqual({
			countedM: 51_000,
			ledgerM: 50_000,
			differenceM: 1000,
			toleranceM: 2000
		});
		// 3 % of 109 km
		expect(checks[2].since).toMatchObject({ differenceM: 9000, toleranceM: 3270 });
	});

	it('says when the ledger has more than the counter, and begins anew after a counter that went back', () => {
		const checks = checkOdometer(readings([260, 20_000], [60, 10_000], [360, 500], [400, 600]), axis);
		expect(checks.map(({ id, verdict }) => [id, verdict])).toEqual([
			[1, 'first reading'],
			[0, 'less than the ledger'],
			[2, 'went back'],
			[3, 'agrees']
		]);
		expect(checks[3].since!.ledgerM).toBe(0);
	});
});

describe('gapsBetween', () => {
	it('finds what no stretch covers, in whatever order they come', () => {
		expect(
			gapsBetween([
				{ fromMs: 20, untilMs: null },
				{ fromMs: 0, untilMs: 5 },
				{ fromMs: 5, untilMs: 12 }
			])
		).toEqual([{ fromMs: 12, untilMs: 20 }]);
		expect(gapsBetween([])).toEqual([]);
	});
});

describe('readTyreSize', () => {
	it('reads a designation by ISO 5775 and nothing else', () => {
		expect(readTyreSize('40-622')).toEqual({ widthMm: 40, rimMm: 622 });
		expect(readTyreSize(' 47 – 559 ')).toEqual({ widthMm: 47, rimMm: 559 });
		for (const wrong of ['700x40C', '622-40', '40-62', '400-622', '', '40-622 extra', '28 x 1.50'])
			expect(readTyreSize(wrong)).toBeNull();
		expect(tyreCircumferenceM('700x40C')).toBeNaN();
	});
});
