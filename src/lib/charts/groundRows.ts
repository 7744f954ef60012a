import type { Inks } from './canvasInks.svelte';
import type { EventSpan, GroundSpans } from './groundPaths';
import { hatchTile } from './hatchTile';
import { cover, packedPixel, pixelInk, pixelsOf, type PixelInk, type Pixels } from './pixelPaint';
import { rgbaOf } from './rgbaOf';

/** the rows that were made last, by their width: all strips of a frame stand on the same ground */
const kept = new Map<number, { ground: GroundSpans; key: string; rows: Pixels }>();
/** widths are those of windows: few, but a window may be drawn wider and wider */
const MOST_KEPT = 4;

/**
 * The ground of a strip as rows of pixels that repeat downwards: hatched where no slip of the reference size could
 * have shown, sunken in gaps, tinted where events are.
 *
 * @param left first device pixel of the strip's box
 * @param width device pixels
 * @param ratio device pixels a CSS pixel
 */
export function groundRows(
	ground: GroundSpans,
	left: number,
	width: number,
	ratio: number,
	inks: Inks
): Pixels {
	const key = [left, width, ratio, inks.soft, inks.accent, inks.sheet].join();
	const before = kept.get(width);
	if (before?.ground === ground && before.key === key) return before.rows;
	const tile = hatchTile(ratio);
	const rows = rowsFor(width, tile.length, before?.rows);
	const sheet = packedPixel(rgbaOf(inks.sheet));
	rows.whole.fill(sheet);
	const hatch = hatchOn(sheet, tile, pixelInk(rgbaOf(inks.soft)));
	const { hatched, gaps } = ground;
	for (let i = 0; i < hatched.length; i += 2)
		paintHatch(rows, hatched[i] * ratio - left, hatched[i + 1] * ratio - left, hatch);
	for (let i = 0; i < gaps.length; i += 2)
		paintGap(rows, gaps[i] * ratio - left, gaps[i + 1] * ratio - left, ratio, inks);
	for (const event of ground.events) paintEvent(rows, event, left, ratio, inks);
	if (!before && kept.size >= MOST_KEPT) kept.clear();
	kept.set(width, { ground, key, rows });
	return rows;
}

/** those of the frame before are written over */
function rowsFor(width: number, height: number, before: Pixels | undefined): Pixels {
	if (before?.height === height) return before;
	return pixelsOf(new Uint8ClampedArray(4 * width * height), width, height);
}

/** how much of a pixel column lies in a stretch, 0 to 1 */
const covered = (x: number, from: number, to: number) => (to < x + 1 ? to : x + 1) - (from > x ? from : x);

/** Columns that a stretch covers from edge to edge take the tile's pixels as they are; its ends are laid over. */
function paintHatch(rows: Pixels, from: number, to: number, hatch: Hatch): void {
	const { width, height, whole } = rows;
	const { tile, full, ink } = hatch;
	const end = Math.min(width, Math.ceil(to));
	for (let x = Math.max(0, Math.floor(from)); x < end; x++) {
		const share = covered(x, from, to);
		let place = x % tile.length;
		for (let row = 0, at = x; row < height; row++, at += width) {
			if (share === 1) whole[at] = full[place];
			else cover(rows, at, (tile[place] * share * ink.most + 0.5) | 0, ink);
			if (++place === tile.length) place = 0;
		}
	}
}

interface Hatch {
	readonly tile: Float32Array;
	/** its pixels on the sheet */
	readonly full: Uint32Array;
	readonly ink: PixelInk;
}

function hatchOn(sheet: number, tile: Float32Array, ink: PixelInk): Hatch {
	const pixels = pixelsOf(new Uint8ClampedArray(4 * tile.length), tile.length, 1);
	pixels.whole.fill(sheet);
	tile.forEach((share, place) => cover(pixels, place, (share * ink.most + 0.5) | 0, ink));
	return { tile, full: pixels.whole, ink };
}

/** @param dots only rows that hold a dot of a dotted line, by this ratio; 0 = all */
function fill(rows: Pixels, from: number, to: number, ink: PixelInk, alpha: number, dots = 0): void {
	const { width, height } = rows;
	for (let x = Math.max(0, Math.floor(from)); x < width && x < to; x++) {
		const over = (covered(x, from, to) * alpha * ink.most + 0.5) | 0;
		for (let row = 0; row < height; row++)
			if (dots === 0 || (row / dots) % 3 < 1) cover(rows, row * width + x, over, ink);
	}
}

/** even the shortest gap is seen; its edges are dotted */
function paintGap(rows: Pixels, from: number, to: number, ratio: number, inks: Inks): void {
	const end = Math.max(to, from + 0.5 * ratio);
	fill(rows, from, end, pixelInk(rgbaOf(inks.sunken)), 1);
	const edge = pixelInk(rgbaOf(inks.soft));
	for (const at of [from, end]) fill(rows, at - ratio / 4, at + ratio / 4, edge, 1, ratio);
}

function paintEvent(rows: Pixels, event: EventSpan, left: number, ratio: number, inks: Inks): void {
	const [from, to] = [event.span[0] * ratio - left, event.span[1] * ratio - left];
	const counts = event.standing === 'confirmed' || event.standing === 'unreviewed';
	const ink = pixelInk(rgbaOf(counts ? inks.accent : inks.soft));
	fill(rows, from, to, ink, 0.16);
	const half = (event.selected ? 1.25 : 0.75) * 0.5 * ratio;
	for (const at of [from, to]) fill(rows, at - half, at + half, ink, event.selected ? 1 : 0.45);
}
