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
	const packed = packedPixel(colour);
	const { width } = pixels;
	const half = thickness / 2;
	const drawn = dash ? dash[0] : 1;
	const period = dash ? dash[0] + dash[1] : 1;
	for (let x = 0; x < width; x++) {
		const run = lower[x] - upper[x];
		if (!(run >= 0)) continue;
		if (dash && x % period >= drawn) continue;
		let more = half;
		if (slanted) {
			// beyond some slope a column is no longer crossed by one stretch of the line alone
			const slope = run < STEEPEST ? run : STEEPEST;
			// a slope lies half in its column's rows already
			more = half * Math.sqrt(1 + slope * slope) - slope / 2;
		}
		paintSpan(pixels, x, upper[x] - more, lower[x] + more, colour, packed);
	}
}

/** pixels up in one column */
const STEEPEST = 1.5;

/** Fills between two lines where the first lies above the second (smaller y). */
export function paintBetween(pixels: Pixels, above: PixelColumns, below: PixelColumns, colour: Rgba): void {
	const packed = packedPixel(colour);
	for (let x = 0; x < pixels.width; x++) {
		const to = below.upper[x];
		// of summaries the highest values are compared: their ranges overlap nearly everywhere
		if (above.upper[x] < to && to <= below.lower[x]) paintSpan(pixels, x, above.upper[x], to, colour, packed);
	}
}

/** Paints one column from one place to another, its ends softened. */
export function paintSpan(
	pixels: Pixels,
	x: number,
	from: number,
	to: number,
	colour: Rgba,
	packed = packedPixel(colour)
): void {
	const { width, height, whole } = pixels;
	const top = from > 0 ? from : 0;
	const base = to < height ? to : height;
	if (!(base > top)) return;
	const first = Math.floor(top);
	const last = Math.ceil(base) - 1;
	const alpha = colour[3];
	if (first === last) return cover(pixels, first * width + x, base - top, colour, packed);
	if (first === top && alpha === 255) whole[first * width + x] = packed;
	else cover(pixels, first * width + x, first + 1 - top, colour, packed);
	const end = last * width + x;
	if (alpha === 255) for (let at = (first + 1) * width + x; at < end; at += width) whole[at] = packed;
	else for (let at = (first + 1) * width + x; at < end; at += width) cover(pixels, at, 1, colour, packed);
	cover(pixels, end, base - last, colour, packed);
}

/** Lays a colour that covers a share of a pixel over what is there. */
export function layOver(pixels: Pixels, pixel: number, share: number, colour: Rgba): void {
	cover(pixels, pixel, share, colour, packedPixel(colour));
}

/** layOver where the colour is packed already: on opaque ground two bytes at a time, as whole numbers */
function cover(pixels: Pixels, pixel: number, share: number, colour: Rgba, packed: number): void {
	const { whole } = pixels;
	const there = whole[pixel] | 0;
	if ((there & ALPHA) !== ALPHA) return coverThin(pixels, pixel, (share * colour[3]) / 255, colour);
	// of 256: both shares together fill a byte without a remainder
	const over = (share * colour[3] * (256 / 255) + 0.5) | 0;
	const under = 256 - over;
	const opaque = packed | ALPHA;
	const odd = (Math.imul(there & 0xff00ff, under) + Math.imul(opaque & 0xff00ff, over) + 0x800080) | 0;
	const even =
		(Math.imul((there >>> 8) & 0xff00ff, under) + Math.imul((opaque >>> 8) & 0xff00ff, over) + 0x800080) | 0;
	whole[pixel] = ((odd >>> 8) & 0xff00ff) | (even & 0xff00ff00);
}

/** what is there is not opaque itself */
function coverThin({ bytes }: Pixels, pixel: number, over: number, colour: Rgba): void {
	if (over <= 0) return;
	const at = 4 * pixel;
	const there = bytes[at + 3];
	const under = (there / 255) * (1 - over);
	const alpha = over + under;
	for (let i = 0; i < 3; i++) bytes[at + i] = (colour[i] * over + bytes[at + i] * under) / alpha;
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
