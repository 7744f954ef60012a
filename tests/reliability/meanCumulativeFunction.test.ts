import { describe, expect, it } from 'vitest';
import { meanCumulativeAt } from '$lib/reliability/meanCumulativeAt';
import { meanCumulativeDifference } from '$lib/reliability/meanCumulativeDifference';
import { meanCumulativeFunction } from '$lib/reliability/meanCumulativeFunction';
import { randomNumbers } from '$lib/reliability/randomNumbers';
import { watchedFromNew, type WatchedHistory } from '$lib/reliability/watchedHistory';

/** constant rate, seeded; systems enter late, have gaps, and differ in rate by `spread` */
function fleet(seed: number, systems: number, rate: number, spread: number): WatchedHistory[] {
	const draw = randomNumbers(seed);
	return Array.from({ length: systems }, () => {
		const start = draw.below(3) * 100;
		const windows = [
			{ from: start, to: 500 },
			{ from: 600, to: 1000 }
		];
		const own = rate * (draw.next() < 0.5 ? 1 - spread : 1 + spread);
		const events = Array.from({ length: draw.poisson(own * 1000) }, () => 1000 * draw.next());
		return { windows, events: events.filter((t) => windows.some((w) => t > w.from && t <= w.to)) };
	});
}

/** the curve and its robust error at one age, by the definition, one sum after the other: the naive reference */
function naiveAt(histories: readonly WatchedHistory[], age: number): { mean: number; error: number } {
	const ages = [...new Set(histories.flatMap((h) => [...h.events]))].filter((t) => t <= age);
	const watched = (h: WatchedHistory, t: number) => h.windows.some((w) => w.from < t && t <= w.to);
	const atRisk = (t: number) => histories.filter((h) => watched(h, t)).length;
	const own = (h: WatchedHistory, t: number) => h.events.filter((e) => e === t).length;
	const all = (t: number) => histories.reduce((sum, h) => sum + own(h, t), 0);
	const mean = ages.reduce((sum, t) => sum + all(t) / atRisk(t), 0);
	const squares = histories.map((h) =>
		ages
			.filter((t) => watched(h, t))
			.reduce((sum, t) => sum + (own(h, t) - all(t) / atRisk(t)) / atRisk(t), 0)
	);
	return { mean, error: Math.sqrt(squares.reduce((sum, s) => sum + s * s, 0)) };
}

describe('meanCumulativeFunction', () => {
	it('agrees with its definition, written out, on seeded fleets with late entry and gaps', () => {
		for (let seed = 1; seed <= 12; seed++) {
			const histories = fleet(seed, 5, 0.006, 0.5);
			for (const step of meanCumulativeFunction(histories, 0.95).steps) {
				const naive = naiveAt(histories, step.age);
				expect(step.mean).toBeCloseTo(naive.mean, 10);
				expect(step.standardError).toBeCloseTo(naive.error, 10);
			}
		}
	});

	it('covers the true mean nearly as often as it says with 12 systems that differ (500 seeded fleets)', () => {
		let held = 0;
		let seen = 0;
		for (let seed = 0; seed < 500; seed++) {
			const at = meanCumulativeAt(meanCumulativeFunction(fleet(seed, 12, 0.004, 0.4), 0.95), 500);
			if (!at) continue;
			seen++;
			if (at.lower <= 2 && at.upper >= 2) held++;
		}
		expect(held / seen).toBeGreaterThan(0.93);
	});

	it('takes late entrants in when they come and no earlier', () => {
		const got = meanCumulativeFunction(
			[watchedFromNew([50, 150], 300), { windows: [{ from: 100, to: 300 }], events: [150] }],
			0.95
		);
		expect(got.steps.map(({ age, atRisk, events, mean }) => [age, atRisk, events, mean])).toEqual([
			[50, 1, 1, 1],
			[150, 2, 2, 2]
		]);
	});

	it('counts a system once where two of its windows meet, and every event of a tie', () => {
		const met = {
			windows: [
				{ from: 0, to: 100 },
				{ from: 100, to: 200 }
			],
			events: [100, 100, 130]
		};
		const got = meanCumulativeFunction([met, watchedFromNew([], 200)], 0.95);
		expect(got.steps.map((step) => [step.age, step.atRisk, step.mean])).toEqual([
			[100, 2, 1],
			[130, 2, 1.5]
		]);
	});

	it('tells where nobody was watched instead of letting the curve look level', () => {
		const late = {
			windows: [
				{ from: 120, to: 200 },
				{ from: 350, to: 500 }
			],
			events: [150, 400]
		};
		const got = meanCumulativeFunction([late], 0.95);
		expect(got.unwatched).toEqual([
			{ from: 0, to: 120 },
			{ from: 200, to: 350 }
		]);
		expect(got.end).toBe(500);
	});

	it('has no error between systems to tell from one system: not certainty, but not available', () => {
		const got = meanCumulativeFunction([watchedFromNew([100, 300], 500)], 0.95);
		expect(got.steps.map((step) => step.mean)).toEqual([1, 2]);
		expect(got.steps[1].standardError).toBeNaN();
		expect(got.steps[1].standardErrorSingle).toBeCloseTo(Math.SQRT2, 12);
		expect(got.steps[1].lower).toBeGreaterThan(0);
		expect(got.steps[1].upper).toBeGreaterThan(7);
	});

	it('is empty without events or systems', () => {
		expect(meanCumulativeFunction([watchedFromNew([], 500)], 0.95)).toMatchObject({ steps: [], end: 500 });
		expect(meanCumulativeFunction([], 0.95)).toEqual({
			systems: 0,
			speaksForOthers: false,
			steps: [],
			unwatched: [],
			end: 0
		});
	});

	it('takes an event at the start of a window for watched', () => {
		const got = meanCumulativeFunction([{ windows: [{ from: 40, to: 90 }], events: [40] }], 0.95);
		expect(got.steps[0]).toMatchObject({ age: 40, atRisk: 1, mean: 1 });
	});
});

describe('meanCumulativeDifference', () => {
	it('is the difference of both curves with the root of their squared errors, up to the common end', () => {
		const a = meanCumulativeFunction(fleet(3, 6, 0.008, 0.3), 0.95);
		const b = meanCumulativeFunction([watchedFromNew([200, 390], 700), watchedFromNew([390], 400)], 0.95);
		const got = meanCumulativeDifference(a, b, 0.95);
		expect(got.at(-1)!.age).toBeLessThanOrEqual(700);
		const at = got.find((one) => one.age === 390)!;
		const [inA, inB] = [meanCumulativeAt(a, 390)!, meanCumulativeAt(b, 390)!];
		expect(at.difference).toBeCloseTo(inA.mean - inB.mean, 12);
		// six systems: Student's quantile on 5 degrees of freedom (table: 2.571); two: the normal one
		const reachA = Math.max(2.570582 * inA.standardError, 1.959964 * inA.standardErrorSingle);
		const reachB = 1.959964 * Math.max(inB.standardError, inB.standardErrorSingle);
		expect((at.upper - at.lower) / 2).toBeCloseTo(Math.hypot(reachA, reachB), 5);
	});

	it('holds no difference between halves of one fleet about as often as it says (400 seeded fleets)', () => {
		let held = 0;
		for (let seed = 0; seed < 400; seed++) {
			const all = fleet(seed, 16, 0.004, 0.4);
			const [a, b] = [all.slice(0, 8), all.slice(8)].map((half) => meanCumulativeFunction(half, 0.9));
			const at = meanCumulativeDifference(a, b, 0.9).at(-1);
			if (at && at.lower <= 0 && at.upper >= 0) held++;
		}
		expect(held / 400).toBeGreaterThan(0.85);
	});

	it('does not take a side without any event for certain', () => {
		const one = meanCumulativeFunction([watchedFromNew([90], 100), watchedFromNew([], 100)], 0.95);
		const none = meanCumulativeFunction([watchedFromNew([], 100), watchedFromNew([], 100)], 0.95);
		const [at] = meanCumulativeDifference(none, one, 0.95);
		expect(at.difference).toBeCloseTo(-0.5, 12);
		expect(at.upper).toBeGreaterThan(0.5);
	});

	it('is empty when neither had an event while both were watched', () => {
		const none = meanCumulativeFunction([watchedFromNew([], 100)], 0.95);
		const late = meanCumulativeFunction([watchedFromNew([400], 500)], 0.95);
		expect(meanCumulativeDifference(none, late, 0.95)).toEqual([]);
	});
});
