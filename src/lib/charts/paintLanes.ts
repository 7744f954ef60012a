import type { Inks } from './canvasInks.svelte';
import { groundRows } from './groundRows';
import { paintAxis, paintNames, type WordsSurface } from './paintAxis';
import type { LanesScene } from './paintScene';
import { pixelBox, type PixelSurface } from './pixelBox';
import {
	cover,
	layRows,
	paintRow,
	paintSpans,
	pixelInk,
	spansFor,
	type PixelInk,
	type Pixels
} from './pixelPaint';
import { rgbaOf } from './rgbaOf';

/** Paints the ribbon: each column of a lane is filled as high as its share. The axis stands under it. */
export function paintLanes(surface: PixelSurface & WordsSurface, scene: LanesScene, inks: Inks): void {
	const { ground, lanes, column, lane, fill } = scene;
	const { ratio } = surface;
	const { left, pixels, show } = pixelBox(surface, scene.box);
	layRows(pixels, groundRows(ground, left, pixels.width, ratio, inks));
	const thin = Math.max(1, Math.round(ratio));
	const base = (row: number) => Math.round((row + 1) * lane * ratio);
	for (let row = 0; row < scene.lines; row++) paintRow(pixels, base(row) - thin, thin, rgbaOf(inks.rule));
	const { from, to } = spansFor(pixels.width);
	for (let row = 0; row < lanes.length; row++) {
		const [shares, bottom] = [lanes[row], base(row)];
		to.fill(bottom);
		for (let i = 0; i < shares.length; i++)
			from.fill(bottom - fill * ratio * shares[i], i * column, (i + 1) * column);
		paintSpans(pixels, from, to, rgbaOf(row === 0 ? inks.ink : inks.soft));
	}
	const ink = pixelInk(rgbaOf(inks.ink));
	for (const place of scene.shifts) paintStroke(pixels, place * ratio - left, fill, ratio, ink);
	show();
	paintNames(surface, scene.names, scene.box.top + scene.box.height - 1, inks);
	paintAxis(surface, scene.axis, inks);
}

/** CSS pixels */
const STROKE = 1.25;

/** An upright stroke at the foot, its edges softened. */
function paintStroke(pixels: Pixels, middle: number, height: number, ratio: number, ink: PixelInk): void {
	const [from, to] = [middle - (STROKE / 2) * ratio, middle + (STROKE / 2) * ratio];
	const top = Math.max(0, pixels.height - Math.round(height * ratio));
	for (let x = Math.max(0, Math.floor(from)); x < pixels.width && x < to; x++) {
		const share = Math.min(x + 1, to) - Math.max(x, from);
		for (let row = top; row < pixels.height; row++)
			cover(pixels, row * pixels.width + x, (share * ink.most + 0.5) | 0, ink);
	}
}
