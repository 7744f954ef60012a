import type { Inks } from './canvasInks.svelte';
import { secondsBefore, type LaneSum } from './driveLanes';
import type { StripGroundPaths } from './groundPaths';
import { groundRows } from './groundRows';
import { pixelBox, type PixelSurface, type PlotBox } from './pixelBox';
import { layRows, paintRow, paintSpans, spansFor } from './pixelPaint';
import { rgbaOf } from './rgbaOf';
import type { StripPlaces } from './stripPlaces';

/** The ribbon and its lanes, CSS pixels. */
interface LanesScene {
	readonly places: StripPlaces;
	readonly ground: StripGroundPaths;
	readonly box: PlotBox;
	readonly lanes: readonly LaneSum[];
	/** how many lanes have a line to stand on, from the top */
	readonly lines: number;
	/** from one lane to the next */
	readonly lane: number;
	/** height of a lane that is full */
	readonly fill: number;
}

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
	for (let column = 0; column <= columns; column++)
		edges[column] = places.timeAt((left + Math.min(pixels.width, column * wide)) / ratio);
	const { from, to } = spansFor(pixels.width);
	for (let row = 0; row < lanes.length; row++) {
		const [sum, bottom] = [lanes[row], base(row)];
		to.fill(bottom);
		let before = secondsBefore(sum, edges[0]);
		for (let column = 0; column < columns; column++) {
			const lengthS = edges[column + 1] - edges[column];
			// what lies before the end of a column lies before the begin of the next
			const after = secondsBefore(sum, edges[column + 1]);
			const place = bottom - (lengthS > 0 ? (fill * ratio * (after - before)) / lengthS : 0);
			before = after;
			const behind = Math.min(pixels.width, (column + 1) * wide);
			for (let x = column * wide; x < behind; x++) from[x] = place;
		}
		paintSpans(pixels, from, to, rgbaOf(row === 0 ? inks.ink : inks.soft));
	}
	show();
}

/** seconds at the edges of the columns, from frame to frame */
let kept = new Float64Array(0);
function edgesFor(count: number): Float64Array {
	if (kept.length !== count) kept = new Float64Array(count);
	return kept;
}
