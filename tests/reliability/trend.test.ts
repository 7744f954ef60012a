import { describe, expect, it } from 'vitest';
import { chiSquareTrendTest } from '$lib/reliability/chiSquareTrendTest';
import { laplaceTrendTest } from '$lib/reliability/laplaceTrendTest';
import { randomNumbers } from '$lib/reliability/randomNumbers';
import { trendOfRate } from '$lib/reliability/trendOfRate';
import { watchedFromNew } from '$lib/reliability/watchedHistory';
import { GAPS, simulated } from './simulatedHistory';

describe('laplaceTrendTest', () => {
	it('is the excess of the mean age over the middle, in standard errors (worked by hand)', () => {
		// three events, mean 60 of 100: (60 - 50) / (100 / sqrt(36))
		const got = laplaceTrendTest([watchedFromNew([30, 60, 90], 100)])!;
		expect(got.statistic).toBeCloseTo(10 / (100 / 6), 12);
		expect(got.pRising).toBeLessThan(0.5);
	});

	it('is 0 for events that lie evenly, and changes its sign when the ages are turned over', () => {
		expect(laplaceTrendTest([watchedFromNew([10, 50, 90], 100)])!.statistic).toBeCloseTo(0, 12);
		const late = laplaceTrendTest([watchedFromNew([70, 80, 95], 100)])!;
		const early = laplaceTrendTest([watchedFromNew([30, 20, 5], 100)])!;
		expect(late.statistic).toBeCloseTo(-early.statistic, 12);
	});

	it('takes windows for what could be seen: events everywhere in them are no trend', () => {
		const windows = [
			{ from: 0, to: 10 },
			{ from: 90, to: 100 }
		];
		expect(laplaceTrendTest([{ windows, events: [5, 95] }])!.statistic).toBeCloseTo(0, 12);
		const late = [{ windows: [{ from: 500, to: 1000 }], events: [600, 750, 900] }];
		expect(laplaceTrendTest(late)!.statistic).toBeCloseTo(0, 12);
	});

	it('drops the event that ended watching, and says nothing without events', () => {
		const open = laplaceTrendTest([watchedFromNew([3, 7], 10)])!;
		const ended = laplaceTrendTest([watchedFromNew([3, 7, 10], 10)], 'event')!;
		expect(ended.statistic).toBeCloseTo(open.statistic, 12);
		expect(laplaceTrendTest([watchedFromNew([], 500)])).toBeNull();
		expect(laplaceTrendTest([watchedFromNew([10], 10)], 'event')).toBeNull();
		expect(laplaceTrendTest([])).toBeNull();
	});
});

describe('chiSquareTrendTest', () => {
	it('is large when events came early (worked by hand) and counts what was watched only', () => {
		const got = chiSquareTrendTest([watchedFromNew([1, 10], 100)])!;
		expect(got.statistic).toBeCloseTo(2 * (Math.log(100) + Math.log(10)), 12);
		expect(got.pFalling).toBeLessThan(0.1);
		const gap = [
			{
				windows: [
					{ from: 0, to: 50 },
					{ from: 950, to: 1000 }
				],
				events: [25, 975]
			}
		];
		expect(chiSquareTrendTest(gap)!.statistic).toBeCloseTo(2 * (Math.log(4) + Math.log(100 / 75)), 12);
	});

	it('has even p-values under a constant rate with gaps (2,000 seeded histories)', () => {
		let low = 0;
		let seen = 0;
		for (let seed = 0; seed < 2000; seed++) {
			const history = simulated(seed, 1, 12, GAPS);
			if (history.events.length === 0) continue;
			seen++;
			if (chiSquareTrendTest([history])!.pTwoSided < 0.1) low++;
		}
		// four standard errors of 0.0067
		expect(Math.abs(low / seen - 0.1)).toBeLessThan(0.027);
	});

	it('says nothing without events and with one at the very start', () => {
		expect(chiSquareTrendTest([watchedFromNew([], 10)])).toBeNull();
		expect(chiSquareTrendTest([watchedFromNew([0, 4], 10)])).toBeNull();
		expect(chiSquareTrendTest([{ windows: [{ from: 5, to: 9 }], events: [5, 7] }])).toBeNull();
	});
});

describe('trendOfRate', () => {
	it('tells rising, falling, not shown and too few', () => {
		const verdict = (events: number[]) => trendOfRate([watchedFromNew(events, 1500)], 0.95).verdict;
		expect(verdict([900, 1200, 1300, 1400, 1450, 1480, 1490])).toBe('rising');
		expect(verdict([1, 4, 9, 30, 55, 120, 200, 420])).toBe('falling');
		expect(verdict([100, 400, 700, 1000, 1400])).toBe('notShown');
		expect(verdict([900, 1400, 1450, 1490])).toBe('tooFew');
		expect(verdict([])).toBe('tooFew');
	});
});

describe('trendOfRate with bursts', () => {
	it('takes a burst for a trend unless it is told how far outings scatter (600 seeded histories)', () => {
		const alarms = (dispersion: number) => {
			let told = 0;
			for (let seed = 0; seed < 600; seed++) {
				const draw = randomNumbers(seed);
				const events: number[] = [];
				for (let bursts = draw.poisson(8); bursts > 0; bursts--) {
					const at = 1 + 990 * draw.next();
					for (let i = 0; i < 3; i++) events.push(at + i);
				}
				const { verdict } = trendOfRate([watchedFromNew(events, 1000)], 0.95, dispersion);
				if (verdict === 'rising' || verdict === 'falling') told++;
			}
			return told / 600;
		};
		expect(alarms(1)).toBeGreaterThan(0.15);
		expect(alarms(3)).toBeLessThan(0.08);
	});
});
