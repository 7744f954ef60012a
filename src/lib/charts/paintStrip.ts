import type { Inks } from './canvasInks.svelte';
import type { StripGroundPaths } from './groundPaths';
import { groundRows } from './groundRows';
import type { LinearScale } from './linearScale';
import { pixelBox, type PixelSurface, type PlotBox } from './pixelBox';
import { pixelColumns, type PixelColumns } from './pixelColumns';
import { layRows, paintBetween, paintLine, paintRow } from './pixelPaint';
import { rgbaOf } from './rgbaOf';
import type { StripTrace } from './strip';
import type { StripPlaces } from './stripPlaces';

/** What a strip shows. */
export interface StripScene {
	readonly places: StripPlaces;
	readonly ground: StripGroundPaths;
	readonly y: LinearScale;
	readonly box: PlotBox;
	/** values of the grid lines */
	readonly grid: readonly number[];
	readonly traces: readonly StripTrace[];
	/** [leading, compared]: filled where the first lies above the second */
	readonly filled: readonly [StripTrace, StripTrace] | null;
}

/** columns of the lines of a strip, from strip to strip */
const columnsOf: PixelColumns[] = [];

/**
 * Paints a strip into the pixels of its canvas: ground, grid and lines. A stroked path costs by its corners, this
 * by the width.
 */
export function paintStrip(surface: PixelSurface, scene: StripScene, inks: Inks): void {
	const { places, ground, y, traces, filled } = scene;
	const { ratio } = surface;
	const { left, top, pixels, show } = pixelBox(surface, scene.box);
	layRows(pixels, groundRows(ground, left, pixels.width, ratio, inks));
	const thin = Math.max(1, Math.round(ratio));
	for (const value of scene.grid) {
		const colour = rgbaOf(value === 0 ? inks.soft : inks.rule);
		paintRow(pixels, Math.round(y(value) * ratio - top - thin / 2), thin, colour);
	}
	const down = { start: y.start * ratio - top, slope: y.slope * ratio };
	const lines = traces.map((trace, index) => {
		const { low, high, exact, xs } = places.columns(trace.levels, ratio, left);
		const columns = columnsFor(index, pixels.width);
		pixelColumns({ low, high, exact }, xs, down, columns);
		return { trace, columns, exact };
	});
	const of = (wanted: StripTrace) => lines.find(({ trace }) => trace === wanted)?.columns;
	const [leading, compared] = filled ? [of(filled[0]), of(filled[1])] : [];
	if (leading && compared) paintBetween(pixels, leading, compared, rgbaOf(inks.wash));
	for (const { trace, columns, exact } of lines) {
		// summaries go up and down within a pixel: dashes would only make noise of them
		const dash = trace.dashed && exact ? ([5 * ratio, 3 * ratio] as const) : null;
		const thickness = (trace.tone === 'soft' || !exact ? 1 : 1.5) * ratio;
		paintLine(pixels, columns, rgbaOf(inks[trace.tone]), thickness, dash, exact);
	}
	show();
}

function columnsFor(index: number, width: number): PixelColumns {
	if (columnsOf[index]?.upper.length !== width)
		columnsOf[index] = { upper: new Float32Array(width), lower: new Float32Array(width) };
	return columnsOf[index];
}
