import { describe, expect, it } from 'vitest';
import { meanRecall } from '../bench/training/meanRecall';

const slip = (t0: number, crankDeg: number) => ({ t0, t1: t0 + 0.3, kind: 'slip', crankDeg });
const ride = (events: ReturnType<typeof slip>[], startS: number[], logOdds: number[], km: number) => ({
	part: { events, km, startS, sizeDeg: startS.map(() => 90), overrunDeg: startS.map(() => 90) },
	logOdds
});

describe('meanRecall', () => {
	// 100 km without slip: no false alarm may stand at 3, 6 and 9 per 1000 km, one at 12 and 15, two at 20
	const healthy = ride([], [100, 200, 300], [4, 2, -1], 100);

	it('lets as many false alarms stand as the rate allows, and takes the mean', () => {
		const slipping = ride([slip(50, 90), slip(150, 90)], [50, 150], [3, 1], 50);
		expect(meanRecall([healthy, slipping])).toBeCloseTo((0 + 0 + 0 + 0.5 + 0.5 + 1) / 6, 12);
	});

	it('counts a slip that no candidate shows as missed, and small ones not at all', () => {
		const slipping = ride([slip(50, 90), slip(150, 90), slip(250, 40)], [50], [9], 50);
		expect(meanRecall([healthy, slipping])).toBe(0.5);
	});

	it('does not count a tie with a false alarm as found', () => {
		expect(meanRecall([healthy, ride([slip(50, 90)], [50], [4], 50)])).toBeCloseTo(3 / 6, 12);
	});

	it('says nothing without slips or without a ride that has none', () => {
		expect(meanRecall([healthy])).toBeNaN();
		expect(meanRecall([ride([slip(50, 90)], [50], [4], 50)])).toBeNaN();
	});
});
