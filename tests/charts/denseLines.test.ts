import { describe, expect, it } from 'vitest';
import { drawDots } from '$lib/charts/drawDots';
import { drawDense, isDense } from '$lib/charts/drawDense';
import { minMaxLevels } from '$lib/charts/minMaxLevels';
import { pixelColumns } from '$lib/charts/pixelColumns';
import { paintBetween, paintLine, pixelsOf, type Pixels } from '$lib/charts/pixelPaint';
import { rgbaOf } from '$lib/charts/rgbaOf';
import type { StripTrace } from '$lib/charts/strip';
import { traceOfWindow } from '$lib/charts/traceOfWindow';

const f32 = (...values: number[]) => Float32Array.from(values);
const samples = (...values: number[]) => ({
	atS: Float64Array.from(values, (_, i) => i),
	low: f32(...values),
	high: f32(...values),
	exact: true
});
const same = (value: number) => value;
const blank = (width: number, height: number) =>
	pixelsOf(new Uint8ClampedArray(4 * width * height), width, height);
const alphas = ({ width, height, bytes }: Pixels, x: number) =>
	Array.from({ length: height }, (_, row) => bytes[4 * (row * width + x) + 3]);

describe('pixelColumns', () => {
	it('holds the line between two samples in every column that it crosses', () => {
		const { upper, lower } = pixelColumns(samples(0, 40), (s) => 0.5 + 4 * s, same, 6);
		expect([...upper]).toEqual([0, 5, 15, 25, 35, Infinity]);
		expect([...lower]).toEqual([5, 15, 25, 35, 40, -Infinity]);
	});

	it('breaks at a missing value and keeps a lone one as a dot', () => {
		const { upper, lower } = pixelColumns(samples(5, NaN, 7, NaN, NaN, 1), same, same, 6);
		expect([...upper]).toEqual([5, Infinity, 7, Infinity, Infinity, 1]);
		expect([...lower]).toEqual([5, -Infinity, 7, -Infinity, -Infinity, 1]);
	});

	it('holds the extremes of its surroundings and no more, on drawn values', () => {
		let seed = 5;
		const chance = () => (seed = (seed * 48271) % 2147483647) / 2147483647;
		const values = Float32Array.from({ length: 4000 }, () => 100 * chance());
		const shown = traceOfWindow(minMaxLevels(values), [0, 3999], 200);
		expect(shown.exact).toBe(false);
		const { upper, lower } = pixelColumns(shown, (s) => s / 20, same, 200);
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

/** a canvas as far as dense lines need it */
function canvas(width: number, height: number) {
	const put: { image: { data: Uint8ClampedArray; width: number }; x: number; y: number; dirty: number[] }[] =
		[];
	const context = {
		canvas: { width, height },
		getTransform: () => ({ a: 1 }),
		createImageData: (across: number, down: number) => ({
			width: across,
			height: down,
			data: new Uint8ClampedArray(4 * across * down)
		}),
		putImageData: (image: (typeof put)[0]['image'], x: number, y: number, ...dirty: number[]) =>
			put.push({ image, x, y, dirty })
	};
	return { put, context: context as unknown as CanvasRenderingContext2D };
}

describe('drawDense', () => {
	const inks = { ink: '#000', soft: '#777', accent: '#606', wash: '#6063' };
	const trace: StripTrace = { levels: minMaxLevels(new Float32Array(1000).fill(10)), tone: 'ink' };
	const scales = (window: readonly [number, number]) => ({
		x: (s: number) => 46 + ((s - window[0]) / (window[1] - window[0])) * 100,
		y: (value: number) => 60 - value,
		window,
		pixels: 100
	});

	it('paints a line at its height, inside its box', () => {
		const { put, context } = canvas(200, 80);
		drawDense(context, [trace], null, scales([0, 999]), { left: 46, top: 20, width: 100, height: 60 }, inks);
		expect([put[0].x, put[0].y, put[0].image.width]).toEqual([46, 20, 100]);
		// no more than the rows that it touches
		expect(put[0].dirty).toEqual([0, 29, 100, 2]);
		const rows = Array.from({ length: 60 }, (_, row) => put[0].image.data[4 * (row * 100 + 50) + 3]);
		// value 10 lies at 50 px, row 30 of the box; one pixel thick
		expect(rows.map((alpha, row) => (alpha ? row : -1)).filter((row) => row >= 0)).toEqual([29, 30]);
	});

	it('is for many samples on a canvas: few of them and drawings in files take paths', () => {
		const { context } = canvas(200, 80);
		expect(isDense(context, [trace], scales([0, 999]))).toBe(true);
		expect(isDense(context, [trace], scales([0, 9]))).toBe(false);
		expect(isDense({} as CanvasRenderingContext2D, [trace], scales([0, 999]))).toBe(false);
	});
});

describe('drawDots', () => {
	it('covers more where dots lie on each other', () => {
		const { put, context } = canvas(4, 4);
		drawDots(
			context,
			[
				[0.5, 0.5],
				[2.5, 2.5],
				[2.5, 2.5]
			],
			{ size: 1, alpha: 0.5, colour: '#123' }
		);
		const alpha = (x: number, y: number) => put[0].image.data[4 * (4 * y + x) + 3];
		expect([alpha(0, 0), alpha(2, 2), alpha(3, 3)]).toEqual([128, 191, 0]);
	});
});
