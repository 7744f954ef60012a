import { expect, it } from 'vitest';
import { coveredShares } from '$lib/charts/coveredShares';
import { endNumbers } from '$lib/charts/endNumbers';
import { firstThat } from '$lib/charts/firstThat';
import { gatheredSpans } from '$lib/charts/gatheredSpans';
import { gearRays } from '$lib/charts/gearRays';
import { spansBetween } from '$lib/charts/spansBetween';
import { spansPath } from '$lib/charts/spansPath';
import { stepGrid } from '$lib/charts/stepGrid';
import { stepGridWords } from '$lib/charts/stepGridWords';
import { createFormats } from '$lib/ui/formats';
import { stepLine } from '$lib/charts/stepLine';
import { timeTicks } from '$lib/charts/timeTicks';

it('spansBetween gives what the stretches leave out, and the whole when there are none', () => {
	expect(
		spansBetween(
			[
				[2, 5],
				[7, 12]
			],
			[0, 10]
		)
	).toEqual([
		[0, 2],
		[5, 7]
	]);
	expect(spansBetween([], [0, 10])).toEqual([[0, 10]]);
	expect(spansBetween([[0, 10]], [0, 10])).toEqual([]);
});

const lengthOf = (spans: readonly (readonly [number, number])[]) =>
	spans.reduce((sum, [from, to]) => sum + to - from, 0);

it('gatheredSpans pushes together what shares a cell and leaves alone what does not', () => {
	expect(
		gatheredSpans(
			[
				[0, 5],
				[5.5, 6],
				[20, 30]
			],
			3
		)
	).toEqual([
		[0, 5.5],
		[20, 30]
	]);
});

it('gatheredSpans keeps the total length, with at most one stretch a cell, in order and where it belongs', () => {
	// 4000 short stretches of uneven length, two thirds of the whole, on 900 pixels
	const spans = Array.from({ length: 4000 }, (_, i) => {
		const from = i * 0.225;
		return [from, from + 0.225 * ((i % 3) / 3 + 1 / 3)] as const;
	});
	const gathered = gatheredSpans(spans, 3);
	expect(lengthOf(spans) / 900).toBeCloseTo(2 / 3, 3);
	expect(lengthOf(gathered)).toBeCloseTo(lengthOf(spans), 6);
	expect(gathered.length).toBeLessThanOrEqual(300);
	for (let i = 1; i < gathered.length; i++) expect(gathered[i][0]).toBeGreaterThan(gathered[i - 1][1]);
	for (const [from, to] of gathered) {
		const within = spans.map(([a, b]) => [Math.max(a, from), Math.min(b, Math.ceil(to / 3) * 3)] as const);
		expect(lengthOf(within.filter(([a, b]) => b > a))).toBeCloseTo(to - from, 6);
	}
});

it('coveredShares gives the covered part of each cell, and as their mean that of the whole', () => {
	const spans = Array.from({ length: 4000 }, (_, i) => [i * 50, i * 50 + 33] as const);
	const shares = coveredShares(spans, [0, 200_000], 267);
	expect(shares.reduce((sum, share) => sum + share, 0) / 267).toBeCloseTo(0.66, 9);
	expect(Math.max(...shares)).toBeLessThan(0.7);
	expect(
		coveredShares(
			[
				[0, 4],
				[5, 7]
			],
			[0, 8],
			2
		)
	).toEqual([1, 0.5]);
	expect(coveredShares([], [0, 10], 2)).toEqual([0, 0]);
	expect(coveredShares([[-5, 50]], [0, 10], 3)).toEqual([1, 1, 1]);
	// 1.1 / (1.1 / 389) is a hair above 389
	const whole = coveredShares([[0, 1.1]], [0, 1.1], 389);
	expect(whole).toHaveLength(389);
	expect(Math.min(...whole)).toBeCloseTo(1, 9);
});

it('spansPath draws the gathered total to within a hundredth of a pixel a stretch', () => {
	const spans = Array.from({ length: 1000 }, (_, i) => [i * 0.9, i * 0.9 + 0.594] as const);
	const drawn = [...spansPath(gatheredSpans(spans, 3), 0, 8).matchAll(/M([\d.]+),0H([\d.]+)V/g)];
	expect(drawn.length).toBeGreaterThan(250);
	const total = drawn.reduce((sum, [, from, to]) => sum + Number(to) - Number(from), 0);
	expect(Math.abs(total - 594)).toBeLessThan(0.01 * drawn.length);
});

it('stepGrid draws the steps of the clutch, or every second, fifth, tenth of them', () => {
	expect(stepGrid([-30, 90], 10, 6)).toEqual({ values: [-20, 0, 20, 40, 60, 80], every: 2 });
	expect(stepGrid([-15, 60], 15, 7)).toEqual({ values: [-15, 0, 15, 30, 45, 60], every: 1 });
});

it('stepGrid draws round degrees where no step is known', () => {
	expect(stepGrid([-60, 240], null, 7)).toEqual({ values: [-45, 0, 45, 90, 135, 180, 225], every: null });
});

it('timeTicks lie on round times', () => {
	expect(timeTicks([0, 90], 4)).toEqual([0, 30, 60, 90]);
	expect(timeTicks([3601, 3614], 5)).toEqual([3605, 3610]);
});

it('stepLine is flat between events and ends where the distance ends', () => {
	const path = stepLine(
		[
			{ atM: 100, count: 1 },
			{ atM: 300, count: 2 }
		],
		500,
		(m) => m / 10,
		(n) => 100 - 10 * n
	);
	expect(path).toBe('M0,100H10V90H30V80H50');
});

it('endNumbers writes numbers that would run into each other as one', () => {
	const ends = [
		{ number: 1, x: 90, y: 50 },
		{ number: 2, x: 95, y: 52 },
		{ number: 3, x: 95, y: 90 }
	];
	expect(endNumbers(ends, 16)).toEqual([
		{ text: '1, 2', x: 95, y: 51 },
		{ text: '3', x: 95, y: 90 }
	]);
});

it('spansPath draws each stretch as a rectangle, and a very short one as wide as is asked for', () => {
	expect(spansPath([[2, 5]], 10, 20)).toBe('M2,10H5V30H2Z');
	expect(spansPath([[7, 7.02]], 0, 4)).toBe('M7,0H7.02V4H7Z');
	expect(spansPath([[7, 7]], 0, 4, 0.5)).toBe('M7,0H7.5V4H7Z');
	expect(spansPath([], 0, 4)).toBe('');
});

it('gearRays leave the drawing where speed or cadence ends, from the easiest gear to the hardest', () => {
	const rays = gearRays(
		[
			{ label: 'hard', developmentM: 10 },
			{ label: 'easy', developmentM: 2.5 }
		],
		30,
		120,
		0.05
	);
	// 120 rpm x 2.5 m = 18 km/h; 30 km/h / 10 m = 50 rpm
	expect(rays).toEqual([
		{ label: 'easy', speedKmh: 18, cadenceRpm: 120, labelled: true },
		{ label: 'hard', speedKmh: 30, cadenceRpm: 50, labelled: true }
	]);
});

it('gearRays leave out a label that would run into the one before', () => {
	const gears = [5, 5.05, 8].map((developmentM) => ({ label: String(developmentM), developmentM }));
	expect(gearRays(gears, 30, 120, 0.05).map(({ labelled }) => labelled)).toEqual([true, false, true]);
});

it('stepGridWords says what lies between two lines of the grid, and where steps are not known', () => {
	const formats = createFormats('en-GB', 'UTC');
	expect(stepGridWords(1, 15, formats)).toBe(' (grid: one engagement step, 15°)');
	expect(stepGridWords(5, 15, formats)).toBe(' (grid: every 5 engagement steps of 15°)');
	expect(stepGridWords(null, null, formats)).toContain('does not say');
	expect(stepGridWords(null, undefined, formats)).toBe('');
});

it('firstThat finds where a condition begins to hold, as looking at each does', () => {
	const list = Array.from({ length: 37 }, (_, i) => Math.floor(i / 3));
	for (let least = -1; least <= 13; least++) {
		const each = list.findIndex((value) => value >= least);
		expect(firstThat(list, (value) => value >= least)).toBe(each < 0 ? list.length : each);
	}
	expect(firstThat([], () => true)).toBe(0);
});
