import { describe, expect, it } from 'vitest';
import { compareGears, type StatedGears } from '$lib/drivetrain/compareGears';
import { development } from '$lib/drivetrain/development';
import { gatherGears, type LearnedGear } from '$lib/drivetrain/gatherGears';
import { gearCorrection } from '$lib/drivetrain/gearCorrection';

const stated: StatedGears = {
	chainrings: [40],
	cassette: [10, 11, 13, 15, 17, 19, 21, 24, 28, 32, 38, 44],
	circumferenceM: 2.22
};
/** what rides on this bike show, 10 minutes in each gear, scattered by half a percent */
const ridden = (bike: StatedGears, seconds = 600): LearnedGear[] =>
	bike.chainrings.flatMap((chainring) =>
		bike.cassette.map((sprocket, index) => ({
			developmentM: development(chainring, sprocket, bike.circumferenceM) * (1 + 0.005 * Math.sin(index * 7)),
			seconds
		}))
	);

describe('gatherGears', () => {
	it('makes one gear of neighbours of several rides, in the mean by time', () => {
		const gears = gatherGears([
			{ developmentM: 5.02, seconds: 30 },
			{ developmentM: 5, seconds: 90 },
			{ developmentM: 6, seconds: 60 }
		]);
		expect(gears).toHaveLength(2);
		expect(gears[0].developmentM).toBeCloseTo(5.005, 9);
		expect(gears[0].seconds).toBe(120);
	});

	it('leaves out what was hardly ridden, and what is no gear', () => {
		const gears = gatherGears([
			{ developmentM: 5, seconds: 995 },
			{ developmentM: 7, seconds: 5 },
			{ developmentM: NaN, seconds: 50 },
			{ developmentM: -1, seconds: 50 }
		]);
		expect(gears.map(({ developmentM }) => developmentM)).toEqual([5]);
		expect(gatherGears([])).toEqual([]);
	});
});

describe('compareGears', () => {
	it('names the stated gear beside each learned one and tells how much of the riding that explains', () => {
		const learned = [
			{ developmentM: development(40, 17, 2.22) * 1.01, seconds: 300 },
			{ developmentM: development(40, 17, 2.22) * 1.05, seconds: 100 }
		];
		const { gears, explained } = compareGears(stated, learned);
		expect(gears.map(({ label }) => label)).toEqual(['40/17', null]);
		expect(gears[0].off).toBeCloseTo(0.01, 9);
		expect(explained).toBe(0.75);
		expect(compareGears(stated, []).explained).toBeNaN();
		expect(compareGears({ ...stated, chainrings: [] }, learned).explained).toBe(0);
	});
});

describe('gearCorrection', () => {
	it('offers nothing where the stated gears fit', () => {
		expect(compareGears(stated, ridden(stated)).explained).toBe(1);
		expect(gearCorrection(stated, ridden(stated))).toBeNull();
	});

	it('finds a circumference that is off', () => {
		for (const circumferenceM of [2.08, 2.15, 2.32]) {
			const found = gearCorrection(stated, ridden({ ...stated, circumferenceM }))!;
			expect(found.change.kind).toBe('circumference');
			expect(found.stated.circumferenceM / circumferenceM).toBeGreaterThan(0.993);
			expect(found.stated.circumferenceM / circumferenceM).toBeLessThan(1.007);
			expect(found.explainedAfter).toBeGreaterThan(found.explainedBefore + 0.08);
		}
	});

	it('finds one sprocket, and one chainring, that have other teeth', () => {
		const cassette = stated.cassette.map((teeth) => (teeth === 24 ? 26 : teeth));
		expect(gearCorrection(stated, ridden({ ...stated, cassette }))?.change).toEqual({
			kind: 'sprocket',
			fromTeeth: 24,
			toTeeth: 26
		});
		const two = { ...stated, chainrings: [46, 30], cassette: [11, 14, 18, 23, 30] };
		expect(gearCorrection(two, ridden({ ...two, chainrings: [46, 34] }))?.change).toEqual({
			kind: 'chainring',
			fromTeeth: 30,
			toTeeth: 34
		});
	});

	it('does not take one wrong sprocket for a tyre that would push all other gears off', () => {
		const cassette = stated.cassette.map((teeth) => (teeth === 32 ? 33 : teeth));
		const found = gearCorrection({ ...stated, cassette }, ridden(stated))!;
		expect(found.change).toEqual({ kind: 'sprocket', fromTeeth: 33, toTeeth: 32 });
		expect(found.explainedAfter).toBe(1);
	});

	it('offers nothing after little riding, and nothing where no single change helps', () => {
		expect(gearCorrection(stated, ridden({ ...stated, circumferenceM: 2.08 }, 60))).toBeNull();
		// one sprocket is stated, three others were ridden: 1.4 m apart, no single change explains two of them
		const other = [2.5, 3.9, 5.3].map((developmentM) => ({ developmentM, seconds: 3000 }));
		expect(gearCorrection({ chainrings: [40], cassette: [10], circumferenceM: 2.2 }, other)).toBeNull();
	});
});
