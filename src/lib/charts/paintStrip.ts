import type { Inks } from './canvasInks.svelte';
import { groundRows } from './groundRows';
import { inCssPixels } from './paintAxis';
import type { StripScene } from './paintScene';
import { paintSigns, type SignSurface } from './paintSigns';
import { pixelBox, type PixelSurface, type PlotBox } from './pixelBox';
import { pixelColumns, type PixelColumns } from './pixelColumns';
import { layRows, paintBetween, paintLine, paintRow } from './pixelPaint';
import { rgbaOf } from './rgbaOf';
import { STRIP_MARGIN } from './strip';

/** columns of the lines of a strip, from strip to strip */
const columnsOf: PixelColumns[] = [];

/**
 * Paints a strip into the pixels of its canvas: ground, grid and lines. A stroked path costs by its corners, this
 * by the width. Signs, which are few, are drawn over them.
 */
export function paintStrip(surface: PixelSurface & SignSurface, scene: StripScene, inks: Inks): void {
	const { ground, y, filled, signs } = scene;
	const { ratio } = surface;
	const { left, top, pixels, show } = pixelBox(surface, scene.box);
	layRows(pixels, groundRows(ground, left, pixels.width, ratio, inks));
	const thin = Math.max(1, Math.round(ratio));
	for (const value of scene.grid) {
		const colour = rgbaOf(value === 0 ? inks.soft : inks.rule);
		paintRow(pixels, Math.round((y.start + y.slope * value) * ratio - top - thin / 2), thin, colour);
	}
	const down = { start: y.start * ratio - top, slope: y.slope * ratio };
	const lines = scene.lines.map((line, index) => {
		const columns = columnsFor(index, pixels.width);
		const { values, first, places, exact } = line;
		const behind = first + places.length;
		const shown = {
			low: values.low.subarray(first, behind),
			high: values.high.subarray(first, behind),
			exact
		};
		pixelColumns(shown, places, down, columns);
		return { ...line, columns };
	});
	const [leading, compared] = filled ? [lines[filled[0]], lines[filled[1]]] : [];
	if (leading && compared) paintBetween(pixels, leading.columns, compared.columns, rgbaOf(inks.wash));
	for (const { columns, exact, tone, dashed } of lines) {
		// summaries go up and down within a pixel: dashes would only make noise of them
		const dash = dashed && exact ? ([5 * ratio, 3 * ratio] as const) : null;
		const thickness = (tone === 'soft' || !exact ? 1 : 1.5) * ratio;
		paintLine(pixels, columns, rgbaOf(inks[tone]), thickness, dash, exact);
	}
	if (signs) clearBeside(surface, scene.box);
	show();
	if (signs) paintSigns(surface, signs, scene.box, inks);
}

/** what signs and numbers of the frame before have left around the box, which is painted as a whole */
function clearBeside(surface: SignSurface, { left, top, width, height }: PlotBox): void {
	inCssPixels(surface).clearRect(0, 0, left + width + STRIP_MARGIN.right, top + height);
}

function columnsFor(index: number, width: number): PixelColumns {
	if (columnsOf[index]?.upper.length !== width)
		columnsOf[index] = { upper: new Float32Array(width), lower: new Float32Array(width) };
	return columnsOf[index];
}
