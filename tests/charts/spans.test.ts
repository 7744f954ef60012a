import { expect, it } from 'vitest';
import { endNumbers } from '$lib/charts/endNumbers';
import { gearRays } from '$lib/charts/gearRays';
import { mergedSpans } from '$lib/charts/mergedSpans';
import { spansBetween } from '$lib/charts/spansBetween';
import { spansPath } from '$lib/charts/spansPath';
import { stepGrid } from '$lib/charts/stepGrid';
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

it('mergedSpans joins what cannot be drawn apart and keeps the rest', () => {
	expect(
		mergedSpans(
			[
				[0, 5],
				[5.5, 9],
				[20, 30]
			],
			1
		)
	).toEqual([
		[0, 9],
		[20, 30]
	]);
	expect(
		mergedSpans(
			[
				[0, 9],
				[2, 3]
			],
			1
		)
	).toEqual([[0, 9]]);
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

it('spansPath draws each stretch as a rectangle, and a very short one still half a pixel wide', () => {
	expect(spansPath([[2, 5]], 10, 20)).toBe('M2,10H5V30H2Z');
	expect(spansPath([[7, 7]], 0, 4)).toBe('M7,0H7.5V4H7Z');
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
