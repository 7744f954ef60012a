import type { PixelColumns } from './pixelColumns';

/** A colour as its four bytes. */
export type Rgba = readonly [red: number, green: number, blue: number, alpha: number];

/** Pixels to paint on, row by row, not multiplied by alpha: the same memory as bytes and as whole pixels. */
export interface Pixels {
	readonly width: number;
	readonly height: number;
	readonly bytes: Uint8ClampedArray;
	readonly whole: Uint32Array;
}

/** @param bytes four a pixel, red first */
export function pixelsOf(bytes: Uint8ClampedArray, width: number, height: number): Pixels {
	return { width, height, bytes, whole: new Uint32Array(bytes.buffer, bytes.byteOffset, width * height) };
}

/** The rows that lines of these columns touch, [first, behind the last]; null = none. */
export function touchedRows(
	lines: readonly PixelColumns[],
	thickness: number,
	height: number
): [number, number] | null {
	let top = Infinity;
	let base = -Infinity;
	for (const { upper, lower } of lines) {
		for (let x = 0; x < upper.length; x++) {
			if (upper[x] < top) top = upper[x];
			if (lower[x] > base) base = lower[x];
		}
	}
	const first = Math.max(0, Math.floor(top - thickness / 2));
	const end = Math.min(height, Math.ceil(base + thickness / 2));
	return first < end ? [first, end] : null;
}

/**
 * Paints a line of this thickness along its columns; the ends of each column are softened, so that a slope does
 * not look like stairs.
 *
 * @param dash [painted, left out] columns; null = no dashes
 */
export function paintLine(
	pixels: Pixels,
	columns: PixelColumns,
	colour: Rgba,
	thickness: number,
	dash: readonly [number, number] | null = null
): void {
	for (let x = 0; x < pixels.width; x++) {
		if (columns.upper[x] > columns.lower[x]) continue;
		if (dash && x % (dash[0] + dash[1]) >= dash[0]) continue;
		paintSpan(pixels, x, columns.upper[x] - thickness / 2, columns.lower[x] + thickness / 2, colour);
	}
}

/** Fills between two lines where the first lies above the second (smaller y). */
export function paintBetween(pixels: Pixels, above: PixelColumns, below: PixelColumns, colour: Rgba): void {
	for (let x = 0; x < pixels.width; x++) {
		if (above.upper[x] < below.lower[x]) paintSpan(pixels, x, above.upper[x], below.lower[x], colour);
	}
}

function paintSpan(pixels: Pixels, x: number, from: number, to: number, colour: Rgba): void {
	const { width, whole } = pixels;
	const top = Math.max(0, from);
	const base = Math.min(pixels.height, to);
	if (!(base > top)) return;
	const first = Math.floor(top);
	const last = Math.ceil(base) - 1;
	if (first === last) return blend(pixels, first * width + x, base - top, colour);
	blend(pixels, first * width + x, first + 1 - top, colour);
	blend(pixels, last * width + x, base - last, colour);
	const packed = packedPixel(colour);
	const opaque = colour[3] === 255;
	const end = last * width + x;
	for (let at = (first + 1) * width + x; at < end; at += width) {
		if (opaque || whole[at] === 0) whole[at] = packed;
		else blend(pixels, at, 1, colour);
	}
}

/** lays a colour that covers a share of a pixel over what is there */
function blend({ bytes, whole }: Pixels, pixel: number, share: number, colour: Rgba): void {
	const over = (share * colour[3]) / 255;
	if (over <= 0) return;
	const at = 4 * pixel;
	if (whole[pixel] === 0) {
		bytes[at] = colour[0];
		bytes[at + 1] = colour[1];
		bytes[at + 2] = colour[2];
		bytes[at + 3] = 255 * over;
		return;
	}
	const under = (bytes[at + 3] / 255) * (1 - over);
	const alpha = over + under;
	for (let i = 0; i < 3; i++) bytes[at + i] = (colour[i] * over + bytes[at + i] * under) / alpha;
	bytes[at + 3] = 255 * alpha;
}

/** the byte order of this machine */
const LITTLE_ENDIAN = new Uint8Array(new Uint32Array([1]).buffer)[0] === 1;

function packedPixel([red, green, blue, alpha]: Rgba): number {
	return LITTLE_ENDIAN
		? ((alpha << 24) | (blue << 16) | (green << 8) | red) >>> 0
		: ((red << 24) | (green << 16) | (blue << 8) | alpha) >>> 0;
}
