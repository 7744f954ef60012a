import { describe, expect, it } from 'vitest';
import { DRIVE_STATES } from '$lib/slip/analysis';
import { partAmounts, type CutRide } from '$lib/server/rides/partAmounts';

const driving = DRIVE_STATES.indexOf('driving');
const coasting = DRIVE_STATES.indexOf('coasting');

/** 100 s at 5 m/s; driven in the first 40 s and the last 20 s; observed from 10 s to 60 s */
function steadyRide(change: Partial<CutRide> = {}): CutRide {
	return {
		durationS: 100,
		totalM: 500,
		observedM: 250,
		drivenM: 300,
		distanceM: Array.from({ length: 101 }, (_, second) => second * 5),
		state: Array.from({ length: 101 }, (_, second) => (second < 40 || second >= 80 ? driving : coasting)),
		observed: [{ startS: 10, endS: 60, startM: 50, endM: 300 }],
		...change
	};
}

describe('partAmounts', () => {
	it('files total, observed and driven distance by the second in which they were ridden', () => {
		expect(partAmounts(steadyRide(), [50])).toEqual([
			{ fromS: 0, toS: 50, fromM: 0, totalM: 250, observedM: 200, drivenM: 200 },
			{ fromS: 50, toS: 100, fromM: 250, totalM: 250, observedM: 50, drivenM: 100 }
		]);
	});

	it('cuts within a second and within a stretch', () => {
		const [first] = partAmounts(steadyRide(), [20.5]);
		expect(first.totalM).toBeCloseTo(102.5, 9);
		expect(first.observedM).toBeCloseTo(52.5, 9);
		expect(first.drivenM).toBeCloseTo(102.5, 9);
	});

	it('adds up to the ride, also where its sums were counted otherwise', () => {
		const ride = steadyRide({ totalM: 510.25, observedM: 240.5, drivenM: 290.125 });
		for (const cuts of [[1], [33.3, 66.6], [10, 20, 30, 99.9]]) {
			const parts = partAmounts(ride, cuts);
			const sum = (name: 'totalM' | 'observedM' | 'drivenM') =>
				parts.reduce((total, part) => total + part[name], 0);
			expect(sum('totalM')).toBeCloseTo(510.25, 9);
			expect(sum('observedM')).toBeCloseTo(240.5, 9);
			expect(sum('drivenM')).toBeCloseTo(290.125, 9);
			for (const part of parts)
				expect(Math.min(part.totalM, part.observedM, part.drivenM)).toBeGreaterThanOrEqual(0);
		}
	});

	it('gives nothing negative when the distance is not known at the cut', () => {
		const parts = partAmounts(steadyRide({ distanceM: Array<number>(101).fill(NaN) }), [50]);
		expect(parts.map(({ totalM, drivenM }) => [totalM, drivenM])).toEqual([
			[0, 0],
			[500, 300]
		]);
	});
});
