import { describe, expect, it } from 'vitest';
import { cover, paintSpans, pixelInk, pixelsOf, type Pixels, type Rgba } from '$lib/charts/pixelPaint';
import { seededChance } from '$lib/slip/seededChance';

const blank = (width: number, height: number) =>
	pixelsOf(new Uint8ClampedArray(4 * width * height), width, height);
const alphas = ({ bytes, width, height }: Pixels, x: number) =>
	Array.from({ length: height }, (_, row) => bytes[4 * (row * width + x) + 3]);

describe('cover', () => {
	it('mixes by share over what is opaque, and over nothing keeps the colour', () => {
		const pixels = blank(2, 1);
		pixels.bytes.set([200, 100, 0, 255], 0);
		cover(pixels, 0, 128, pixelInk([0, 0, 100, 255]));
		cover(pixels, 1, 128, pixelInk([10, 20, 30, 255]));
		expect([...pixels.bytes]).toEqual([100, 50, 50, 255, 10, 20, 30, 128]);
	});

	it('comes within half a step of mixing byte by byte, on drawn colours, and stays opaque', () => {
		const chance = seededChance(5);
		const drawn = () => chance.next();
		const byte = () => Math.floor(256 * drawn());
		for (let i = 0; i < 500; i++) {
			const ground = [byte(), byte(), byte(), 255];
			const colour: Rgba = [byte(), byte(), byte(), byte()];
			const ink = pixelInk(colour);
			const over = Math.round(drawn() * ink.most);
			const pixels = blank(1, 1);
			pixels.bytes.set(ground);
			cover(pixels, 0, over, ink);
			[...pixels.bytes].forEach((value, place) => {
				const mixed = place === 3 ? 255 : ground[place] + ((colour[place] - ground[place]) * over) / 256;
				expect(Math.abs(value - mixed)).toBeLessThanOrEqual(place === 3 ? 0 : 0.5001);
			});
		}
	});
});

describe('paintSpans', () => {
	it('paints every column from place to place, stays inside and leaves out what is empty', () => {
		const pixels = blank(4, 3);
		const [from, to] = [Float64Array.of(0.5, -5, 2, 1), Float64Array.of(2, 9, 1, 1.25)];
		paintSpans(pixels, from, to, [0, 0, 0, 255]);
		expect([0, 1, 2, 3].map((x) => alphas(pixels, x))).toEqual([
			[128, 255, 0],
			[255, 255, 255],
			[0, 0, 0],
			[0, 64, 0]
		]);
	});
});
