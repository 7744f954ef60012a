import type { Inks } from './canvasInks.svelte';
import { pixelColumns, type PixelColumns } from './pixelColumns';
import { paintBetween, paintLine, pixelsOf, touchedRows } from './pixelPaint';
import { rgbaOf } from './rgbaOf';
import type { Scales } from './drawTrace';
import type { StripTrace } from './strip';
import { traceOfWindow } from './traceOfWindow';

/** The part of a canvas that lines may fill, CSS pixels. */
export interface PlotBox {
	readonly left: number;
	readonly top: number;
	readonly width: number;
	readonly height: number;
}

/** pixels of each canvas from frame to frame: new ones every frame would be megabytes to clear away */
const kept = new WeakMap<object, ImageData>();

/** From this many samples a pixel on, lines are painted by columns: a path costs by its corners. */
const SAMPLES_A_PIXEL = 0.1;

/** Whether these lines are worth painting pixel by pixel; a drawing that is no canvas (a file) takes paths. */
export function isDense(
	context: CanvasRenderingContext2D,
	traces: readonly StripTrace[],
	{ window, pixels }: Scales
): boolean {
	const samples = Math.max(0, ...traces.map(({ levels }) => (window[1] - window[0]) / levels.stepS));
	return samples > pixels * SAMPLES_A_PIXEL && typeof context.putImageData === 'function';
}

/**
 * Paints lines of many samples into their box of a canvas that is clear.
 *
 * @param filled [leading, compared]: filled where the first lies above the second
 */
export function drawDense(
	context: CanvasRenderingContext2D,
	traces: readonly StripTrace[],
	filled: readonly [StripTrace, StripTrace] | null,
	scales: Scales,
	box: PlotBox,
	inks: Inks
): void {
	const ratio = context.getTransform().a;
	const [left, top] = [Math.round(box.left * ratio), Math.round(box.top * ratio)];
	const width = Math.max(1, Math.round(box.width * ratio));
	const height = Math.max(1, Math.round(box.height * ratio));
	const image = keptImage(context, width, height);
	const pixels = pixelsOf(image.data, width, height);
	const x = (timeS: number) => scales.x(timeS) * ratio - left;
	const y = (value: number) => scales.y(value) * ratio - top;
	const columns = new Map<StripTrace, PixelColumns>();
	const exact = new Map<StripTrace, boolean>();
	for (const trace of traces) {
		const shown = traceOfWindow(trace.levels, scales.window, scales.pixels);
		columns.set(trace, pixelColumns(shown, x, y, width));
		exact.set(trace, shown.exact);
	}
	const rows = touchedRows([...columns.values()], 1.5 * ratio, height);
	if (!rows) return;
	// only the rows that the lines touch are cleared and handed over
	pixels.whole.fill(0, rows[0] * width, rows[1] * width);
	const [leading, compared] = (filled ?? []).map((trace) => columns.get(trace));
	if (leading && compared) paintBetween(pixels, leading, compared, rgbaOf(inks.wash));
	for (const trace of traces) {
		const thin = trace.tone === 'soft' || !exact.get(trace);
		// summaries go up and down within a pixel: dashes would only make noise of them
		const dash = trace.dashed && exact.get(trace) ? ([5 * ratio, 3 * ratio] as const) : null;
		paintLine(pixels, columns.get(trace)!, rgbaOf(inks[trace.tone]), (thin ? 1 : 1.5) * ratio, dash);
	}
	context.putImageData(image, left, top, 0, rows[0], width, rows[1] - rows[0]);
}

function keptImage(context: CanvasRenderingContext2D, width: number, height: number): ImageData {
	let image = kept.get(context.canvas);
	if (image?.width !== width || image.height !== height)
		kept.set(context.canvas, (image = context.createImageData(width, height)));
	return image;
}
