import { describe, expect, it } from 'vitest';
import { MOST_MARKS } from '$lib/charts/mostMarks';
import { shownComparison, shownCurve } from '$lib/server/figures/shownComparison';
import type { BuildAgainstBuild } from '$lib/server';
import type { AgeLine } from '$lib/server/views';
import { randomNumbers } from '$lib/reliability/randomNumbers';

const draw = randomNumbers(5);

function lineOf(wheelId: number, slips: number): AgeLine {
	return {
		buildId: 1,
		build: 'Original',
		wheel: `Wheel ${wheelId}`,
		wheelId,
		rides: [{ rideId: 1, fromM: 0, toM: 9 }],
		observed: [{ fromM: 1 / 3, toM: 2000.06 }],
		observedM: 1999.7,
		slips: Array.from({ length: slips }, (_, place) => ({
			atM: 1000 * place + draw.next(),
			count: place + 1,
			eventId: 100 * wheelId + place,
			rideId: place,
			confirmed: place % 2 === 0
		})),
		endM: 1_000_000.25
	};
}

function curveOf(length: number) {
	let [atM, value] = [0, 0];
	return Array.from({ length }, () => {
		atM += 900 * draw.next();
		value += draw.next();
		return { atM, value, lower: value * draw.next(), upper: value * (1 + draw.next()) };
	});
}

const told = (curve: ReturnType<typeof curveOf>, endM: number) =>
	({ builds: [{ name: 'Original', endM, life: { curve, wheels: 2 } }] }) as unknown as BuildAgainstBuild;

describe('shownComparison', () => {
	it('keeps every slip as it is while each gets a mark', () => {
		const lines = [lineOf(1, 300), lineOf(2, 100)];
		const shown = shownComparison({ builds: [], lines }, told([], 0));
		expect(shown.comparison.lines.map(({ slips }) => slips)).toEqual(lines.map(({ slips }) => slips));
		expect(shown.comparison.lines.map(({ furtherM }) => furtherM)).toEqual([[], []]);
	});

	it('of more slips keeps those in full that its table lists, and where the others lie to a metre', () => {
		const lines = [lineOf(1, 300), lineOf(2, 101)];
		const { comparison, listed } = shownComparison({ builds: [], lines }, told([], 0));
		expect(listed.slipsOfLine).toBe(50);
		comparison.lines.forEach(({ slips, furtherM, endM, observedM }, place) => {
			const all = lines[place].slips;
			expect(slips).toEqual(all.slice(0, 50));
			expect(furtherM).toHaveLength(all.length - 50);
			for (const [i, atM] of furtherM.entries())
				expect(Math.abs(atM - all[50 + i].atM)).toBeLessThanOrEqual(0.5);
			expect([endM, observedM]).toEqual([1_000_000.25, 1999.7]);
		});
	});

	it('cuts where the drawing stops giving marks, and no slip sooner', () => {
		const further = (slips: number) =>
			shownComparison({ builds: [], lines: [lineOf(1, slips)] }, told([], 0)).comparison.lines[0].furtherM;
		expect(further(MOST_MARKS)).toEqual([]);
		expect(further(MOST_MARKS + 1)).not.toEqual([]);
	});

	it('gives stretches to a tenth of a metre and no windows of rides', () => {
		const [line] = shownComparison({ builds: [], lines: [lineOf(1, 0)] }, told([], 0)).comparison.lines;
		expect(line.observed).toEqual([{ fromM: 0.3, toM: 2000.1 }]);
		expect(line).not.toHaveProperty('rides');
	});

	it('changes nothing of what was computed', () => {
		const lines = [lineOf(1, 500)];
		const computed = told(curveOf(100), 100_000);
		const before = structuredClone([lines, computed]);
		const shown = shownComparison({ builds: [], lines }, computed);
		expect([lines, computed]).toEqual(before);
		expect(shown.told.builds[0].life.wheels).toBe(2);
		expect(shown.told.builds[0].life.curve).toHaveLength(100);
	});
});

describe('shownCurve', () => {
	it('keeps the steps that are listed and the last one as they are, and rounds the others to less than is seen', () => {
		const steps = curveOf(200);
		const shown = shownCurve(steps, 200_000);
		expect(shown.slice(0, 60)).toEqual(steps.slice(0, 60));
		expect(shown.at(-1)).toEqual(steps.at(-1));
		expect(shown).toHaveLength(200);
		shown.forEach((step, place) => {
			const { atM, value, lower, upper } = steps[place];
			expect(Math.abs(step.atM - atM)).toBeLessThanOrEqual(0.5);
			for (const [rounded, exact] of [
				[step.value, value],
				[step.lower, lower],
				[step.upper, upper]
			])
				expect(Math.abs(rounded - exact)).toBeLessThanOrEqual(0.0005 * exact);
		});
		expect(String(shown[100].value).length).toBeLessThan(7);
	});

	it('keeps a curve that is short or empty', () => {
		expect(shownCurve([], 0)).toEqual([]);
		const [one] = curveOf(1);
		expect(shownCurve([one], 1000)).toEqual([one]);
	});

	it('of very many steps keeps as many as can be drawn: none is seen beside its place, and the highest limit stays', () => {
		const steps = curveOf(20_000);
		const endM = steps[steps.length - 1].atM;
		const shown = shownCurve(steps, endM);
		expect(shown.length).toBeLessThanOrEqual(60 + 2 * 1401);
		const pixelM = endM / 1400;
		let place = 0;
		for (const [i, { atM, value }] of steps.entries()) {
			// the mean that the drawing has a pixel further on
			while (place + 1 < shown.length && shown[place + 1].atM <= atM + pixelM + 1) place++;
			if (i % 50 === 0) expect(shown[place].value).toBeGreaterThanOrEqual(value * 0.9995);
		}
		const highest = (of: typeof steps) => Math.max(...of.map(({ upper }) => upper));
		expect(highest(shown) / highest(steps)).toBeCloseTo(1, 3);
		expect(shown.every(({ atM }, i) => i === 0 || atM >= shown[i - 1].atM)).toBe(true);
	});
});
