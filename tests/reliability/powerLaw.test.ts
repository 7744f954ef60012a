import { describe, expect, it } from 'vitest';
import { cramerVonMises } from '$lib/reliability/cramerVonMises';
import { laplaceTrendTest } from '$lib/reliability/laplaceTrendTest';
import { meanGapAtEnd } from '$lib/reliability/meanGapAtEnd';
import { powerLawInWindows } from '$lib/reliability/powerLawInWindows';
import { powerLawPooled } from '$lib/reliability/powerLawPooled';
import { powerLawProcess } from '$lib/reliability/powerLawProcess';
import { trendOfRate } from '$lib/reliability/trendOfRate';
import { watchedFromNew, type WatchedHistory } from '$lib/reliability/watchedHistory';
import { GAPS, simulated } from './simulatedHistory';

/** the log likelihood with the integral of the intensity summed in thin slices: the naive reference */
function naiveLikelihood(histories: readonly WatchedHistory[], shape: number, scale: number): number {
	const intensity = (t: number) => scale * shape * t ** (shape - 1);
	let sum = 0;
	for (const { windows, events } of histories) {
		for (const t of events) sum += Math.log(intensity(t));
		for (const { from, to } of windows) {
			const slices = 20_000;
			for (let i = 0; i < slices; i++)
				sum -= (intensity(from + ((i + 0.5) / slices) * (to - from)) * (to - from)) / slices;
		}
	}
	return sum;
}

describe('powerLawProcess', () => {
	it('finds the shape that seeded histories were drawn with, and its limits cover it as often as they say', () => {
		let held = 0;
		let sum = 0;
		for (let seed = 0; seed < 1500; seed++) {
			const fit = powerLawProcess(simulated(seed, 1.5, 14, [{ from: 0, to: 900 }]).events, 900, 'age', 0.9);
			if (!fit) continue;
			if (fit.shapeLower <= 1.5 && fit.shapeUpper >= 1.5) held++;
			sum += fit.shapeUnbiased;
		}
		expect(Math.abs(held / 1500 - 0.9)).toBeLessThan(0.031);
		expect(Math.abs(sum / 1500 - 1.5)).toBeLessThan(0.05);
	});

	it('comes to nothing for no event, and says little from one', () => {
		expect(powerLawProcess([], 500, 'age', 0.9)).toBeNull();
		expect(powerLawProcess([500], 500, 'age', 0.9)).toBeNull();
		expect(powerLawProcess([80], 80, 'event', 0.9)).toBeNull();
		const one = powerLawProcess([200], 500, 'age', 0.9)!;
		expect(one.shapeUnbiased).toBe(0);
		expect(one.shapeUpper / one.shapeLower).toBeGreaterThan(50);
		expect(meanGapAtEnd(one, 0.9)).toEqual({ mean: Infinity, lower: 0, upper: Infinity });
	});

	it('knows no upper limit of the mean gap from too few events', () => {
		const few = powerLawProcess([100, 300], 500, 'age', 0.9)!;
		expect(meanGapAtEnd(few, 0.99).upper).toBe(Infinity);
		expect(meanGapAtEnd(few, 0.5).upper).toBeLessThan(Infinity);
	});

	it('takes ties for separate events, fits nothing through age 0 and refuses ages outside', () => {
		expect(powerLawProcess([16.5, 16.5, 40], 50, 'age', 0.9)!.events).toBe(3);
		expect(powerLawProcess([0, 4], 10, 'age', 0.9)).toBeNull();
		expect(powerLawInWindows([watchedFromNew([0, 4], 10)], 0.9)).toBeNull();
		expect(powerLawPooled([watchedFromNew([0, 4], 10)], 'age', 0.9)).toBeNull();
		expect(trendOfRate([watchedFromNew([0, 4], 10)], 0.9).verdict).toBe('tooFew');
		expect(() => powerLawProcess([4, 11], 10, 'age', 0.9)).toThrow(/11 lies outside/);
	});
});

describe('powerLawInWindows', () => {
	it('stands on the summit of the likelihood over windows (naive integral in slices)', () => {
		const histories = [simulated(4, 1.7, 20, GAPS), simulated(5, 1.7, 12, [{ from: 300, to: 1100 }])];
		const fit = powerLawInWindows(histories, 0.95)!;
		const summit = naiveLikelihood(histories, fit.shape, fit.scale);
		expect(fit.logLikelihood).toBeCloseTo(summit, 3);
		for (const shape of [fit.shape * 0.97, fit.shape * 1.03]) {
			// the best scale for another shape, by trial
			const best = [0.7, 0.8, 0.9, 1, 1.1, 1.2, 1.3, 1.4].map((by) =>
				naiveLikelihood(histories, shape, by * fit.scale * 700 ** (fit.shape - shape))
			);
			expect(Math.max(...best)).toBeLessThan(summit);
		}
	});

	it('covers the true shape as often as it says when half of the age was not watched (1,000 seeded fleets)', () => {
		let held = 0;
		for (let seed = 0; seed < 1000; seed++) {
			const fleet = [
				simulated(2 * seed, 1.4, 12, GAPS),
				simulated(2 * seed + 1, 1.4, 12, [{ from: 250, to: 1400 }])
			];
			const fit = powerLawInWindows(fleet, 0.9);
			if (fit && fit.shapeLower <= 1.4 && fit.shapeUpper >= 1.4) held++;
		}
		// approximate limits: 0.9 within 3 per cent
		expect(held / 1000).toBeGreaterThan(0.87);
		expect(held / 1000).toBeLessThan(0.93);
	});

	it('would be fooled by the closed form where the early age was not watched', () => {
		// a constant rate seen only from 800 to 1000: the closed form cannot be used, the windows tell no trend
		const late = [{ windows: [{ from: 800, to: 1000 }], events: [810, 850, 890, 930, 970, 990] }];
		const fit = powerLawInWindows(late, 0.95)!;
		expect(fit.shapeLower).toBeLessThan(1);
		expect(fit.shapeUpper).toBeGreaterThan(1);
		expect(() => powerLawPooled(late, 'age', 0.95)).toThrow(/age 0/);
	});

	it('stands at its edge where late entry and early events ask for less than any power', () => {
		const fit = powerLawInWindows(
			[{ windows: [{ from: 100, to: 1000 }], events: [101, 102, 104, 108, 113, 120] }],
			0.95
		)!;
		expect(fit.shape).toBeCloseTo(0.02, 10);
		expect(fit.shapeLower).toBe(0);
		expect(fit.shapeUpper).toBeLessThan(1);
	});

	it('counts a system without events as watched in vain', () => {
		const one = watchedFromNew([100, 400], 500);
		const alone = powerLawInWindows([one], 0.9)!;
		const beside = powerLawInWindows([one, watchedFromNew([], 500)], 0.9)!;
		expect(beside.shape).toBeCloseTo(alone.shape, 8);
		expect(beside.scale).toBeCloseTo(alone.scale / 2, 8);
	});

	it('comes to nothing without events and when all lie at the edge', () => {
		expect(powerLawInWindows([watchedFromNew([], 10)], 0.9)).toBeNull();
		expect(powerLawInWindows([], 0.9)).toBeNull();
		expect(powerLawInWindows([watchedFromNew([10, 10], 10)], 0.9)).toBeNull();
	});
});

describe('powerLawPooled', () => {
	it('leaves systems without events out and finds no difference between copies of one system', () => {
		const one = [30, 90, 210];
		const alone = powerLawPooled([watchedFromNew(one, 300)], 'age', 0.9)!;
		const copies = powerLawPooled(
			[watchedFromNew(one, 300), watchedFromNew(one, 300), watchedFromNew([], 900)],
			'age',
			0.9
		)!;
		expect(copies.shape).toBeCloseTo(alone.shape, 12);
		expect(copies.difference).toBeCloseTo(0, 12);
		expect(alone.differenceDegrees).toBe(0);
		expect(powerLawPooled([watchedFromNew([], 9)], 'age', 0.9)).toBeNull();
	});
});

describe('cramerVonMises', () => {
	it('speaks against a power law in about one of twenty seeded power-law histories', () => {
		let against = 0;
		for (let seed = 0; seed < 2000; seed++) {
			const history = simulated(seed, 0.7, 15, [{ from: 0, to: 500 }]);
			if (cramerVonMises([history], 'age')?.speaksAgainst) against++;
		}
		expect(Math.abs(against / 2000 - 0.05)).toBeLessThan(0.02);
	});

	it('speaks against it when all events fall into one stretch, and is silent on gaps and single events', () => {
		const burst = Array.from({ length: 20 }, (_, i) => 500 + i);
		expect(cramerVonMises([watchedFromNew(burst, 1000)], 'age')!.speaksAgainst).toBe(true);
		expect(cramerVonMises([{ windows: GAPS, events: [100, 500] }], 'age')).toBeNull();
		expect(cramerVonMises([watchedFromNew([10], 20)], 'age')).toBeNull();
	});
});

describe('histories', () => {
	it('are refused when windows overlap or run backwards and when an event lies outside', () => {
		const twice = {
			windows: [
				{ from: 0, to: 10 },
				{ from: 5, to: 20 }
			],
			events: []
		};
		expect(() => laplaceTrendTest([twice])).toThrow(/overlap at 5/);
		expect(() => laplaceTrendTest([{ windows: [{ from: 9, to: 3 }], events: [] }])).toThrow(/forwards/);
		expect(() => laplaceTrendTest([watchedFromNew([12], 10)])).toThrow(/12 lies outside/);
	});
});
