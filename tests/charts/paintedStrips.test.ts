import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { laneShare, laneSums } from '$lib/charts/driveLanes';
import { deviceBox } from '$lib/charts/deviceBox';
import { groundPaths } from '$lib/charts/groundPaths';
import { lanesScene } from '$lib/charts/lanesScene';
import { linearScale } from '$lib/charts/linearScale';
import { minMaxLevels } from '$lib/charts/minMaxLevels';
import { paintLanes } from '$lib/charts/paintLanes';
import { paintStrip } from '$lib/charts/paintStrip';
import { pixelBox } from '$lib/charts/pixelBox';
import { distanceAxis, timeAxis, type RideAxis } from '$lib/charts/rideAxis';
import { sceneArea } from '$lib/charts/sceneArea';
import type { StripTrace } from '$lib/charts/strip';
import { stripPlaces } from '$lib/charts/stripPlaces';
import { stripScene } from '$lib/charts/stripScene';
import { DRIVE_STATES } from '$lib/slip/analysis';
import { canvas, Image, INKS } from './fakeCanvas';

beforeAll(() => void vi.stubGlobal('ImageData', Image));
afterAll(() => void vi.unstubAllGlobals());

describe('paintStrip', () => {
	const trace: StripTrace = { levels: minMaxLevels(new Float32Array(1000).fill(10)), tone: 'ink' };
	const box = { left: 46, top: 20, width: 100, height: 60 };
	const y = linearScale([0, 40], [60, 20]);
	function painted(window: readonly [number, number], grid: readonly number[] = []) {
		const { put, context } = canvas(160, 80);
		const places = stripPlaces(timeAxis(1000), window, 160);
		const scene = {
			places,
			ground: groundPaths(places, [], []),
			y,
			box,
			grid,
			traces: [trace],
			filled: null,
			signs: null
		};
		paintStrip({ context, ratio: 1 }, stripScene(scene, 1), INKS);
		return Array.from({ length: 60 }, (_, row) => put[0].image.data[4 * (row * 100 + 50)]);
	}

	it('paints a line at its height, inside its box, on the sheet', () => {
		const { put, context } = canvas(160, 80);
		const places = stripPlaces(timeAxis(1000), [0, 999], 160);
		const ground = groundPaths(places, [], []);
		paintStrip(
			{ context, ratio: 1 },
			stripScene({ places, ground, y, box, grid: [], traces: [trace], filled: null, signs: null }, 1),
			INKS
		);
		expect([put[0].x, put[0].y, put[0].image.width]).toEqual([46, 20, 100]);
		// value 10 lies at 50 px, row 30 of the box; summaries are one pixel thick, samples one and a half
		expect(painted([0, 999]).flatMap((red, row) => (red === 255 ? [] : [[row, red]]))).toEqual([
			[29, 128],
			[30, 128]
		]);
		expect(painted([0, 9]).flatMap((red, row) => (red === 255 ? [] : [[row, red]]))).toEqual([
			[29, 64],
			[30, 64]
		]);
	});

	it('paints canvas after canvas in the same memory, also when one is larger than all before it', () => {
		const { put, context } = canvas(160, 80);
		const paint = (width: number, height: number, value: number) => {
			const surface = { context, ratio: 1 };
			const { pixels, show } = pixelBox(surface, { left: 0, top: 0, width, height });
			pixels.whole.fill(value);
			show();
		};
		paint(4, 4, 1);
		paint(900, 900, 2);
		paint(4, 4, 3);
		const [, large, small] = put.map(({ image }) => image.data);
		expect(small.buffer).toBe(large.buffer);
		expect([...new Uint32Array(small.buffer, 0, 17)]).toEqual([...Array(16).fill(3), 2]);
		expect(small).toHaveLength(64);
	});

	it('leaves out of its canvas what lies beside the box', () => {
		const { put, context } = canvas(100, 60);
		const places = stripPlaces(timeAxis(1000), [0, 999], 160);
		const shown = {
			places,
			ground: groundPaths(places, [], []),
			y,
			box,
			grid: [],
			traces: [trace],
			filled: null,
			signs: null
		};
		const scene = stripScene(shown, 1.25);
		expect(sceneArea(scene, 160, 80)).toEqual(box);
		const surface = deviceBox(box, 1.25);
		expect(surface).toEqual({ left: 58, top: 25, width: 125, height: 75 });
		paintStrip({ context, ratio: 1.25, left: surface.left, top: surface.top }, scene, INKS);
		expect([put[0].x, put[0].y, put[0].image.width]).toEqual([0, 0, 125]);
	});

	it('paints its grid under the line, the nought stronger', () => {
		const reds = painted([0, 999], [0, 20]);
		expect([reds[20], reds[19], reds[40], reds[39]].sort()).toEqual([119, 204, 255, 255]);
	});
});

describe('paintLanes', () => {
	it('fills each column as high as its share, on an axis of time and along the distance', () => {
		// 0.6 of each ten seconds driven, a stop of 200 s in the middle that takes no room along the distance
		const state = Float32Array.from({ length: 1000 }, (_, s) => {
			const name = s >= 400 && s < 600 ? 'stopped' : s % 10 < 6 ? 'driving' : 'coasting';
			return DRIVE_STATES.indexOf(name);
		});
		const way = Float32Array.from({ length: 1000 }, (_, s) => 8 * (s < 400 ? s : Math.max(400, s - 200)));
		const filled = (axis: RideAxis) => {
			const { put, context } = canvas(160, 80);
			const places = stripPlaces(axis, [0, 999], 160);
			const scene = {
				places,
				ground: groundPaths(places, [], []),
				box: { left: 46, top: 4, width: 100, height: 60 },
				lanes: laneSums(state),
				shifts: new Float32Array(0),
				lines: 0,
				lane: 12,
				fill: 9,
				names: [],
				ticks: [],
				axisTop: 66
			};
			paintLanes({ context, ratio: 1 }, lanesScene(scene, 1), INKS);
			const { data } = put[0].image;
			// ink covers the rows of the first lane as far as it is filled
			let sum = 0;
			for (let pixel = 0; pixel < 12 * 100; pixel++) sum += (255 - data[4 * pixel]) / 255;
			return sum / (9 * 100);
		};
		expect(filled(timeAxis(999))).toBeCloseTo((0.6 * 800) / 1000, 1);
		expect(filled(distanceAxis(way, 999)!)).toBeCloseTo(0.6, 1);
	});

	const places = stripPlaces(timeAxis(999), [0, 999], 160);
	const ribbon = {
		places,
		ground: groundPaths(places, [], []),
		box: { left: 46, top: 4, width: 100, height: 24 },
		lines: 0,
		lane: 12,
		fill: 9,
		names: [],
		ticks: [],
		axisTop: 30
	};

	it('has of each column the share that the lane has of its seconds, also beyond the ends of the ride', () => {
		const state = Float32Array.from({ length: 1000 }, (_, s) =>
			DRIVE_STATES.indexOf(s % 7 < 3 ? 'driving' : 'coasting')
		);
		const lanes = laneSums(state);
		const long = stripPlaces(timeAxis(1100), [-50, 1050], 160);
		const scene = lanesScene({ ...ribbon, places: long, lanes, shifts: new Float32Array(0) }, 1);
		expect(scene.lanes[0]).toHaveLength(50);
		for (const column of [3, 10, 25, 40]) {
			const [fromS, toS] = [long.timeAt(46 + 2 * column), long.timeAt(48 + 2 * column)];
			expect(scene.lanes[0][column]).toBeCloseTo(laneShare(lanes[0], fromS, toS), 5);
		}
		expect(scene.lanes[0][0]).toBe(0);
		expect(scene.lanes[0][49]).toBe(0);
	});

	it('draws a stroke at each recorded shift, at the foot of the ribbon', () => {
		const { put, context } = canvas(160, 40);
		const scene = lanesScene({ ...ribbon, lanes: [], shifts: Float32Array.of(56.5) }, 1);
		paintLanes({ context, ratio: 1 }, scene, INKS);
		const red = (x: number, row: number) => put[0].image.data[4 * (row * 100 + x)];
		// 1.25 px wide around 56.5: all of the column at 10, an eighth of those beside it
		expect([8, 9, 10, 11, 12].map((x) => red(x, 20))).toEqual([255, 223, 0, 223, 255]);
		expect([14, 15, 23].map((row) => red(10, row))).toEqual([255, 0, 0]);
	});

	it('writes the gears at their foot, and the axis under it with a stroke at each of its words', () => {
		const { said, strokes, context } = canvas(160, 60);
		const names = [{ x: 60, label: '46/22' }];
		const ticks = [
			{ x: 46, label: '0:00' },
			{ x: 96, label: '8:20' }
		];
		const scene = lanesScene({ ...ribbon, lanes: [], shifts: new Float32Array(0), names, ticks }, 2);
		paintLanes({ context, ratio: 2 }, scene, INKS);
		expect(said).toEqual([
			{ word: '46/22', x: 60, y: 27, font: '11px sans-serif', ink: INKS.ink },
			{ word: '0:00', x: 46, y: 47, font: '12px sans-serif', ink: INKS.words },
			{ word: '8:20', x: 96, y: 47, font: '12px sans-serif', ink: INKS.words }
		]);
		expect(strokes.map(({ x, y, width, height }) => [x, y, width, height])).toEqual([
			[46, 29.5, 100, 1],
			[45.5, 30, 1, 5],
			[95.5, 30, 1, 5]
		]);
	});

	it('keeps the word of a tick at the very end within the drawing', () => {
		const { said, strokes, context } = canvas(160, 60);
		const ticks = [{ x: 144, label: '2:00:00' }];
		const scene = lanesScene({ ...ribbon, lanes: [], shifts: new Float32Array(0), ticks }, 1);
		paintLanes({ context, ratio: 1 }, scene, INKS);
		// the plot ends at 146, the drawing 14 px further
		expect(said.map(({ word, x }) => [word, x])).toEqual([['2:00:00', 160]]);
		expect(context.textAlign).toBe('right');
		expect(strokes.at(-1)).toMatchObject({ x: 143.5, width: 1 });
	});
});
