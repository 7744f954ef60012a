import type { Inks } from './canvasInks.svelte';
import type { LaneSum } from './driveLanes';
import type { StripGroundPaths } from './groundPaths';
import { groundRows } from './groundRows';
import { pixelBox, type PixelSurface, type PlotBox } from './pixelBox';
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
import type { StripPlaces } from './stripPlaces';

/** The ribbon and its lanes, CSS pixels. */
interface LanesScene {
	readonly places: StripPlaces;
	readonly ground: StripGroundPaths;
	readonly box: PlotBox;
	readonly lanes: readonly LaneSum[];
	/** places of strokes at the foot of the ribbon: a ride has thousands of shifts */
	readonly strokes: ArrayLike<number>;
	/** how many lanes have a line to stand on, from the top */
	readonly lines: number;
	/** from one lane to the next */
	readonly lane: number;
	/** height of a lane that is full */
	readonly fill: number;
}

/** how thick a stroke is, CSS pixels */
const STROKE = 1.25;

/** CSS pixels of a column: finer would only cost */
const COLUMN = 2;

/**
 * Paints the ribbon: each column of a lane is filled as high as its share, so that a ride of hours drives as much
 * on the drawing as it drove.
 */
export function paintLanes(surface: PixelSurface, scene: LanesScene, inks: Inks): void {
	const { places, ground, lanes, lane, fill } = scene;
	const { ratio } = surface;
	const { left, pixels, show } = pixelBox(surface, scene.box);
	layRows(pixels, groundRows(ground, left, pixels.width, ratio, inks));
	const thin = Math.max(1, Math.round(ratio));
	const base = (row: number) => Math.round((row + 1) * lane * ratio);
	for (let row = 0; row < scene.lines; row++) paintRow(pixels, base(row) - thin, thin, rgbaOf(inks.rule));
	const wide = Math.max(1, Math.round(COLUMN * ratio));
	const columns = Math.ceil(pixels.width / wide);
	const edges = edgesFor(columns + 1);
	const most = lanes.length ? lanes[0].length - 1 : 0;
	for (let column = 0; column <= columns; column++) {
		const timeS = places.timeAt((left + Math.min(pixels.width, column * wide)) / ratio);
		// the place in the sums, one for all lanes: see `secondsBefore`
		edges[column] = Math.min(most, Math.max(0, timeS + 0.5));
	}
	const { from, to } = spansFor(pixels.width);
	for (let row = 0; row < lanes.length; row++) {
		const [sum, bottom] = [lanes[row], base(row)];
		to.fill(bottom);
		let before = 0;
		for (let column = -1; column < columns; column++) {
			const edge = edges[column + 1];
			const whole = Math.floor(edge);
			const part = edge - whole;
			// what lies before the end of a column lies before the begin of the next
			const after = part > 0 ? sum[whole] + part * (sum[whole + 1] - sum[whole]) : sum[whole];
			if (column >= 0) {
				const lengthS = edge - edges[column];
				const place = bottom - (lengthS > 0 ? (fill * ratio * (after - before)) / lengthS : 0);
				const behind = Math.min(pixels.width, (column + 1) * wide);
				for (let x = column * wide; x < behind; x++) from[x] = place;
			}
			before = after;
		}
		paintSpans(pixels, from, to, rgbaOf(row === 0 ? inks.ink : inks.soft));
	}
	const { strokes } = scene;
	const ink = pixelInk(rgbaOf(inks.ink));
	const half = (STROKE / 2) * ratio;
	for (let i = 0; i < strokes.length; i++)
		paintStroke(pixels, strokes[i] * ratio - left, half, Math.round(fill * ratio), ink);
	show();
}

/** An upright stroke at the foot, its edges softened. */
function paintStroke(pixels: Pixels, middle: number, half: number, height: number, ink: PixelInk): void {
	const { width } = pixels;
	const [from, to] = [middle - half, middle + half];
	const top = Math.max(0, pixels.height - height);
	for (let x = Math.max(0, Math.floor(from)); x < width && x < to; x++) {
		const share = Math.min(x + 1, to) - Math.max(x, from);
		const over = (share * ink.most + 0.5) | 0;
		for (let row = top; row < pixels.height; row++) cover(pixels, row * width + x, over, ink);
	}
}

/** seconds at the edges of the columns, from frame to frame */
let kept = new Float64Array(0);
function edgesFor(count: number): Float64Array {
	if (kept.length !== count) kept = new Float64Array(count);
	return kept;
}
