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

/** Lays rows over all pixels, from the top again and again. */
export function layRows(pixels: Pixels, rows: Pixels): void {
	const { width, height, whole } = pixels;
	for (let row = 0; row < Math.min(height, rows.height); row++)
		whole.set(rows.whole.subarray(row * width, (row + 1) * width), row * width);
	// what is laid already serves as rows twice as long
	for (let done = rows.height; done < height; done *= 2)
		whole.copyWithin(done * width, 0, Math.min(done, height - done) * width);
}

/** Paints whole rows of an opaque colour; those outside are left out. */
export function paintRow(pixels: Pixels, first: number, count: number, colour: Rgba): void {
	const { width, height, whole } = pixels;
	const [from, to] = [Math.max(0, first), Math.min(height, first + count)];
	if (to > from) whole.fill(packedPixel(colour), from * width, to * width);
}

/**
 * Paints a line of this thickness along its columns; the ends of each column are softened, so that a slope does
 * not look like stairs.
 *
 * @param dash [painted, left out] columns; null = no dashes
 * @param slanted a line of single samples: as thick across a slope as on the level
 */
export function paintLine(
	pixels: Pixels,
	{ upper, lower }: PixelColumns,
	colour: Rgba,
	thickness: number,
	dash: readonly [number, number] | null = null,
	slanted = false
): void {
	const { width } = pixels;
	const { from, to } = spansFor(width);
	const half = thickness / 2;
	const drawn = dash ? dash[0] : 1;
	const period = dash ? dash[0] + dash[1] : 1;
	for (let x = 0; x < width; x++) {
		const run = lower[x] - upper[x];
		if (!(run >= 0) || x % period >= drawn) {
			to[x] = from[x] = 0;
			continue;
		}
		let more = half;
		if (slanted) {
			// beyond some slope a column is no longer crossed by one stretch of the line alone
			const slope = run < STEEPEST ? run : STEEPEST;
			// a slope lies half in its column's rows already
			more = half * Math.sqrt(1 + slope * slope) - slope / 2;
		}
		from[x] = upper[x] - more;
		to[x] = lower[x] + more;
	}
	paintSpans(pixels, from, to, colour);
}

/** pixels up in one column */
const STEEPEST = 1.5;

/** Fills between two lines where the first lies above the second (smaller y). */
export function paintBetween(pixels: Pixels, above: PixelColumns, below: PixelColumns, colour: Rgba): void {
	const { from, to } = spansFor(pixels.width);
	for (let x = 0; x < pixels.width; x++) {
		from[x] = above.upper[x];
		// of summaries the highest values are compared: their ranges overlap nearly everywhere
		to[x] = below.upper[x] <= below.lower[x] ? below.upper[x] : -Infinity;
	}
	paintSpans(pixels, from, to, colour);
}

/** A span of each pixel column, from place to place; used again and again. */
interface Spans {
	readonly from: Float64Array;
	readonly to: Float64Array;
}
let kept: Spans | null = null;
export function spansFor(width: number): Spans {
	if (kept?.from.length !== width) kept = { from: new Float64Array(width), to: new Float64Array(width) };
	return kept;
}

/**
 * Paints each column from one place to another, its ends softened; nothing where it does not end below its begin.
 * All columns in one loop: places handed from function to function cost more than the painting.
 */
export function paintSpans(pixels: Pixels, from: Float64Array, to: Float64Array, colour: Rgba): void {
	const { width, height, whole } = pixels;
	const ink = pixelInk(colour);
	const { packed, most } = ink;
	const opaque = most === 256;
	for (let x = 0; x < width; x++) {
		const top = from[x] > 0 ? from[x] : 0;
		const base = to[x] < height ? to[x] : height;
		if (!(base > top)) continue;
		const first = Math.floor(top);
		const last = Math.ceil(base) - 1;
		let at = first * width + x;
		if (first === last) {
			cover(pixels, at, ((base - top) * most + 0.5) | 0, ink);
			continue;
		}
		cover(pixels, at, ((first + 1 - top) * most + 0.5) | 0, ink);
		const end = last * width + x;
		for (at += width; at < end; at += width) {
			if (opaque) whole[at] = packed;
			else cover(pixels, at, most, ink);
		}
		cover(pixels, end, ((base - last) * most + 0.5) | 0, ink);
	}
}

/** A colour made ready to be laid over others. */
export interface PixelInk {
	readonly colour: Rgba;
	readonly packed: number;
	/** what covers a whole pixel, of 256 */
	readonly most: number;
	/** two of the four bytes, opaque, with room between them, and the two others */
	readonly odd: number;
	readonly even: number;
}

export function pixelInk(colour: Rgba): PixelInk {
	const packed = packedPixel(colour);
	const opaque = packed | ALPHA;
	return {
		colour,
		packed,
		most: Math.round((colour[3] * 256) / 255),
		odd: opaque & 0xff00ff,
		even: (opaque >>> 8) & 0xff00ff
	};
}

/**
 * Lays an ink over what is there: on opaque ground as whole numbers, two bytes at a time.
 *
 * @param over how much it covers, of 256: whole, at most `ink.most`
 */
export function cover(pixels: Pixels, pixel: number, over: number, ink: PixelInk): void {
	const there = pixels.whole[pixel] | 0;
	if ((there & ALPHA) !== ALPHA) return coverThin(pixels, pixel, over, ink.colour);
	// both shares together are 256, so that a byte is filled without a remainder
	const under = 256 - over;
	const odd = (Math.imul(there & 0xff00ff, under) + Math.imul(ink.odd, over) + 0x800080) | 0;
	const even = (Math.imul((there >>> 8) & 0xff00ff, under) + Math.imul(ink.even, over) + 0x800080) | 0;
	pixels.whole[pixel] = ((odd >>> 8) & 0xff00ff) | (even & 0xff00ff00);
}

/** what is there is not opaque itself */
function coverThin({ bytes }: Pixels, pixel: number, over: number, colour: Rgba): void {
	if (over <= 0) return;
	const share = over / 256;
	const at = 4 * pixel;
	const under = (bytes[at + 3] / 255) * (1 - share);
	const alpha = share + under;
	for (let i = 0; i < 3; i++) bytes[at + i] = (colour[i] * share + bytes[at + i] * under) / alpha;
	bytes[at + 3] = 255 * alpha;
}

/** the byte order of this machine */
const LITTLE_ENDIAN = new Uint8Array(new Uint32Array([1]).buffer)[0] === 1;

/** where a packed pixel has its alpha, as a whole number of 32 bits with a sign */
const ALPHA = LITTLE_ENDIAN ? 0xff000000 | 0 : 0xff;

/** A colour as one number, as `whole` holds it. */
export function packedPixel(colour: Rgba): number {
	const [first, second, third, last] = LITTLE_ENDIAN
		? [colour[3], colour[2], colour[1], colour[0]]
		: [colour[0], colour[1], colour[2], colour[3]];
	return ((first << 24) | (second << 16) | (third << 8) | last) >>> 0;
}
