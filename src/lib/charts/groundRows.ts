import type { Inks } from './canvasInks.svelte';
import type { EventSpan, PixelSpan, StripGroundPaths } from './groundPaths';
import { hatchTile } from './hatchTile';
import { layOver, packedPixel, pixelsOf, type Pixels, type Rgba } from './pixelPaint';
import { rgbaOf } from './rgbaOf';

/** the rows that were made last, by their width: all strips of a frame stand on the same ground */
const kept = new Map<number, { ground: StripGroundPaths; key: string; rows: Pixels }>();
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
	ground: StripGroundPaths,
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
	rows.whole.fill(packedPixel(rgbaOf(inks.sheet)));
	const inBox = ([from, to]: PixelSpan): PixelSpan => [from * ratio - left, to * ratio - left];
	const hatch = rgbaOf(inks.soft);
	for (const span of ground.hatchedSpans)
		columns(width, inBox(span), (x, share) => {
			for (let row = 0; row < tile.length; row++)
				layOver(rows, row * width + x, share * tile[(x + row) % tile.length], hatch);
		});
	for (const span of ground.gapSpans) paintGap(rows, inBox(span), ratio, inks);
	for (const event of ground.events) paintEvent(rows, event, inBox(event.span), ratio, inks);
	if (!before && kept.size >= MOST_KEPT) kept.clear();
	kept.set(width, { ground, key, rows });
	return rows;
}

/** those of the frame before are written over */
function rowsFor(width: number, height: number, before: Pixels | undefined): Pixels {
	if (before?.height === height) return before;
	return pixelsOf(new Uint8ClampedArray(4 * width * height), width, height);
}

/** each column of a stretch with the share of it that the stretch covers */
function columns(width: number, [from, to]: PixelSpan, paint: (x: number, share: number) => void): void {
	for (let x = Math.max(0, Math.floor(from)); x < Math.min(width, to); x++) {
		const share = Math.min(to, x + 1) - Math.max(from, x);
		if (share > 0) paint(x, share);
	}
}

function fill(rows: Pixels, span: PixelSpan, colour: Rgba, alpha: number): void {
	columns(rows.width, span, (x, share) => {
		for (let row = 0; row < rows.height; row++) layOver(rows, row * rows.width + x, share * alpha, colour);
	});
}

/** even the shortest gap is seen; its edges are dotted */
function paintGap(rows: Pixels, [from, to]: PixelSpan, ratio: number, inks: Inks): void {
	const end = Math.max(to, from + 0.5 * ratio);
	fill(rows, [from, end], rgbaOf(inks.sunken), 1);
	const edge = rgbaOf(inks.soft);
	for (const at of [from, end])
		columns(rows.width, [at - ratio / 4, at + ratio / 4], (x, share) => {
			for (let row = 0; row < rows.height; row++)
				if ((row / ratio) % 3 < 1) layOver(rows, row * rows.width + x, share, edge);
		});
}

function paintEvent(rows: Pixels, event: EventSpan, [from, to]: PixelSpan, ratio: number, inks: Inks): void {
	const counts = event.standing === 'confirmed' || event.standing === 'unreviewed';
	const colour = rgbaOf(counts ? inks.accent : inks.soft);
	fill(rows, [from, to], colour, 0.16);
	const half = (event.selected ? 1.25 : 0.75) * 0.5 * ratio;
	for (const at of [from, to]) fill(rows, [at - half, at + half], colour, event.selected ? 1 : 0.45);
}
