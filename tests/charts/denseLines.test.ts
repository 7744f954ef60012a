import { describe, expect, it } from 'vitest';
import { dotsArea } from '$lib/charts/dotsArea';
import { paintDots } from '$lib/charts/paintDots';
import { groundPaths } from '$lib/charts/groundPaths';
import { groundRows } from '$lib/charts/groundRows';
import { hatchTile } from '$lib/charts/hatchTile';
import { minMaxLevels } from '$lib/charts/minMaxLevels';
import { pixelColumns as columnsInto } from '$lib/charts/pixelColumns';
import { layRows, paintBetween, paintLine, pixelsOf, type Pixels } from '$lib/charts/pixelPaint';
import { rgbaOf } from '$lib/charts/rgbaOf';
import { timeAxis } from '$lib/charts/rideAxis';
import { stripPlaces } from '$lib/charts/stripPlaces';
import { traceOfWindow, type TraceColumns } from '$lib/charts/traceOfWindow';
import { canvas, INKS } from './fakeCanvas';

const f32 = (...values: number[]) => Float32Array.from(values);
const samples = (...values: number[]) => ({
	atS: Float64Array.from(values, (_, i) => i),
	low: f32(...values),
	high: f32(...values),
	exact: true
});
const same = (value: number) => value;
/** the columns of a line whose values are pixels already */
function pixelColumns(line: TraceColumns, x: (timeS: number) => number, width: number) {
	const into = { upper: new Float32Array(width), lower: new Float32Array(width) };
	columnsInto(line, line.atS.map(x), { start: 0, slope: 1 }, into);
	return into;
}
const blank = (width: number, height: number) =>
	pixelsOf(new Uint8ClampedArray(4 * width * height), width, height);
const alphas = ({ width, height, bytes }: Pixels, x: number) =>
	Array.from({ length: height }, (_, row) => bytes[4 * (row * width + x) + 3]);

describe('pixelColumns', () => {
	it('holds the line between two samples in every column that it crosses', () => {
		const { upper, lower } = pixelColumns(samples(0, 40), (s) => 0.5 + 4 * s, 6);
		expect([...upper]).toEqual([0, 5, 15, 25, 35, Infinity]);
		expect([...lower]).toEqual([5, 15, 25, 35, 40, -Infinity]);
	});

	it('breaks at a missing value and keeps a lone one as a dot', () => {
		const { upper, lower } = pixelColumns(samples(5, NaN, 7, NaN, NaN, 1), same, 6);
		expect([...upper]).toEqual([5, Infinity, 7, Infinity, Infinity, 1]);
		expect([...lower]).toEqual([5, -Infinity, 7, -Infinity, -Infinity, 1]);
	});

	it('holds the extremes of its surroundings and no more, on drawn values', () => {
		let seed = 5;
		const chance = () => (seed = (seed * 48271) % 2147483647) / 2147483647;
		const values = Float32Array.from({ length: 4000 }, () => 100 * chance());
		const shown = traceOfWindow(minMaxLevels(values), [0, 3999], 200);
		expect(shown.exact).toBe(false);
		const { upper, lower } = pixelColumns(shown, (s) => s / 20, 200);
		// 32 samples a group, 20 a column: what a column shows lies in the group around it and its neighbours
		for (let column = 3; column < 197; column++) {
			const near = values.subarray(20 * column - 52, 20 * column + 72);
			expect(lower[column]).toBeLessThanOrEqual(Math.max(...near));
			expect(upper[column]).toBeGreaterThanOrEqual(Math.min(...near));
		}
		// and no extreme of the ride is lost
		expect(Math.max(...lower)).toBe(Math.max(...values));
		expect(Math.min(...upper)).toBe(Math.min(...values));
	});
});

describe('paintLine', () => {
	it('softens the ends of a column and fills what lies between', () => {
		const pixels = blank(1, 6);
		paintLine(pixels, { upper: f32(2), lower: f32(4) }, [10, 20, 30, 255], 1);
		// from 1.5 to 4.5
		expect(alphas(pixels, 0)).toEqual([0, 128, 255, 255, 128, 0]);
		expect([...pixels.bytes.subarray(8, 12)]).toEqual([10, 20, 30, 255]);
	});

	it('leaves out what the dash leaves out and stays inside', () => {
		const pixels = blank(4, 2);
		paintLine(pixels, { upper: f32(0, 0, 0, -50), lower: f32(1, 1, 1, 90) }, [0, 0, 0, 255], 1, [2, 1]);
		expect([0, 1, 2, 3].map((x) => alphas(pixels, x)[0] > 0)).toEqual([true, true, false, true]);
	});
});

describe('paintBetween', () => {
	it('fills only where the first line lies above the second', () => {
		const pixels = blank(2, 4);
		paintBetween(
			pixels,
			{ upper: f32(1, 3), lower: f32(1, 3) },
			{ upper: f32(3, 1), lower: f32(3, 1) },
			[0, 0, 0, 38]
		);
		expect(alphas(pixels, 0)).toEqual([0, 38, 38, 0]);
		expect(alphas(pixels, 1)).toEqual([0, 0, 0, 0]);
	});
});

describe('rgbaOf', () => {
	it('reads the colours of the tokens', () => {
		expect(rgbaOf('#7b2d6f26')).toEqual([123, 45, 111, 38]);
		expect(rgbaOf(' #FFF ')).toEqual([255, 255, 255, 255]);
		expect(rgbaOf('#6063')).toEqual([102, 0, 102, 51]);
		expect(rgbaOf('red')).toEqual([0, 0, 0, 255]);
	});
});

describe('the ground as pixels', () => {
	it('covers as much with the hatching as its lines do', () => {
		for (const ratio of [1, 1.5, 2, 3]) {
			const tile = hatchTile(ratio);
			const mean = tile.reduce((sum, share) => sum + share, 0) / tile.length;
			// lines of 0.8 px, seen across x + y, every 6 px, three quarters opaque
			expect(mean).toBeCloseTo((0.75 * 0.8 * Math.SQRT2) / 6, 3);
		}
		// the same pixels as the pattern of StripGround: on x + y = 6, and a little beside it
		expect([...hatchTile(1)].map((share) => Math.round(100 * share))).toEqual([12, 0, 0, 0, 12, 61]);
	});

	const places = stripPlaces(timeAxis(100), [0, 100], 160);
	const rows = ({ spans }: ReturnType<typeof groundPaths>) => groundRows(spans, 46, 100, 1, INKS);
	const greens = ({ bytes, width }: Pixels, row: number) =>
		Array.from({ length: width }, (_, x) => bytes[4 * (row * width + x) + 1]);

	it('hatches, sinks and tints the stretches that it is given and nothing else', () => {
		const slip = { id: 1, number: 1, startS: 60, endS: 70, standing: 'confirmed' as const };
		const shown = rows(groundPaths(places, [[10, 20]], [[40, 50]], [slip]));
		expect(shown.height).toBe(6);
		const columns = Array.from({ length: 100 }, (_, x) =>
			Array.from({ length: 6 }, (_, row) => greens(shown, row)[x])
		);
		const plain = columns.map((column) => column.every((green) => green === 255));
		expect(plain.slice(0, 10).every(Boolean) && plain.slice(20, 39).every(Boolean)).toBe(true);
		expect(plain.slice(10, 20).some(Boolean)).toBe(false);
		expect(columns[45]).toEqual(Array(6).fill(238));
		// 16 % of the accent
		expect(columns[65]).toEqual(Array(6).fill(214));
		expect(plain.slice(72).every(Boolean)).toBe(true);
	});

	it('hatches whole columns as the ends of a stretch are laid over the sheet', () => {
		const shown = rows(groundPaths(places, [[10, 20.5]], []));
		const tile = hatchTile(1);
		for (let row = 0; row < 6; row++) {
			const share = tile[(15 + row) % 6];
			expect(Math.abs(greens(shown, row)[15] - (255 - share * (255 - 0x77)))).toBeLessThan(1);
			// half a column: half as much ink
			const half = tile[(20 + row) % 6] / 2;
			expect(Math.abs(greens(shown, row)[20] - (255 - half * (255 - 0x77)))).toBeLessThan(1);
		}
	});

	it('is made once for all strips of a frame', () => {
		const ground = groundPaths(places, [[10, 20]], []);
		expect(rows(ground)).toBe(rows(ground));
		const plain = rows(ground).bytes.slice(0, 4);
		expect([
			...groundRows(ground.spans, 46, 100, 1, { ...INKS, sheet: '#010203' }).bytes.slice(0, 4)
		]).toEqual([1, 2, 3, 255]);
		expect(rows(ground).bytes.slice(0, 4)).toEqual(plain);
		const other = groundPaths(places, [[0, 90]], []);
		expect([...rows(other).bytes]).not.toEqual([...rows(ground).bytes.slice()]);
	});

	it('is laid from the top again and again', () => {
		const ground = blank(1, 3);
		ground.whole.set([1, 2, 3]);
		const pixels = blank(1, 8);
		layRows(pixels, ground);
		expect([...pixels.whole]).toEqual([1, 2, 3, 1, 2, 3, 1, 2]);
		const low = blank(1, 2);
		layRows(low, ground);
		expect([...low.whole]).toEqual([1, 2]);
	});
});

describe('paintDots', () => {
	it('covers more where dots lie on each other', () => {
		const { put, context } = canvas(4, 4);
		const scene = (dots: [number, number][]) => ({
			kind: 'dots' as const,
			points: { x: f32(...dots.map(([x]) => x)), y: f32(...dots.map(([, y]) => y)) },
			shown: [0, dots.length] as const,
			area: { left: 0, top: 0, width: 4, height: 4 },
			size: 1,
			alpha: 0.5
		});
		const draw = (...dots: [number, number][]) => paintDots({ context, ratio: 1 }, scene(dots), INKS);
		draw([0.5, 0.5], [2.5, 2.5], [2.5, 2.5]);
		const alpha = (x: number, y: number) => put[0].image.data[4 * (4 * y + x) + 3];
		expect([alpha(0, 0), alpha(2, 2), alpha(3, 3)]).toEqual([128, 191, 0]);
		// the next frame begins with nothing
		draw([3.5, 3.5]);
		expect([alpha(0, 0), alpha(2, 2), alpha(3, 3)]).toEqual([0, 0, 128]);
		// a canvas that holds a part of the drawing
		paintDots({ context, ratio: 1, left: 2, top: 3 }, scene([[3.5, 3.5]]), INKS);
		expect([alpha(1, 0), alpha(3, 3)]).toEqual([128, 0]);
	});

	it('has a canvas no larger than all dots need, and none of its dots cut off', () => {
		const points = { x: f32(60.2, NaN, 300), y: f32(40, 50, 90.7) };
		expect(dotsArea(points, 700, 360)).toEqual({ left: 58, top: 38, width: 244, height: 55 });
		expect(dotsArea({ x: f32(1, 699), y: f32(1, 359) }, 700, 360)).toEqual({
			left: 0,
			top: 0,
			width: 700,
			height: 360
		});
		expect(dotsArea({ x: f32(NaN), y: f32(NaN) }, 700, 360)).toEqual({
			left: 0,
			top: 0,
			width: 1,
			height: 1
		});
	});
});
