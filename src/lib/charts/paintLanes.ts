import type { Inks } from './canvasInks.svelte';
import { laneShare, type LaneSum } from './driveLanes';
import type { StripGroundPaths } from './groundPaths';
import { groundRows } from './groundRows';
import { pixelBox, type PixelSurface, type PlotBox } from './pixelBox';
import { layRows, packedPixel, paintRow, paintSpan } from './pixelPaint';
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
	const edges: number[] = [];
	for (let x = 0; x < pixels.width + wide; x += wide)
		edges.push(places.timeAt((left + Math.min(pixels.width, x)) / ratio));
	for (const [row, sum] of lanes.entries()) {
		const colour = rgbaOf(row === 0 ? inks.ink : inks.soft);
		const packed = packedPixel(colour);
		for (let column = 0; column + 1 < edges.length; column++) {
			const [from, to] = [edges[column], edges[column + 1]];
			const share = to > from ? laneShare(sum, from, to) : 0;
			if (share <= 0) continue;
			const end = Math.min(pixels.width, (column + 1) * wide);
			for (let x = column * wide; x < end; x++)
				paintSpan(pixels, x, base(row) - fill * ratio * share, base(row), colour, packed);
		}
	}
	show();
}
