import { traceOfWindow } from './traceOfWindow';
import type { StripTrace } from './strip';

export interface Scales {
	readonly x: (timeS: number) => number;
	readonly y: (value: number) => number;
	readonly window: readonly [number, number];
	/** drawn width in pixels */
	readonly pixels: number;
}

/**
 * Draws one trace as a line through the low and high of each column; a missing value breaks the line.
 *
 * @param colour resolved CSS colour (a canvas knows no custom properties)
 */
export function drawTrace(
	context: CanvasRenderingContext2D,
	trace: StripTrace,
	scales: Scales,
	colour: string
): void {
	const { atS, low, high, exact } = traceOfWindow(trace.levels, scales.window, scales.pixels);
	context.strokeStyle = colour;
	context.lineWidth = trace.tone === 'soft' || !exact ? 1 : 1.5;
	// summaries go up and down within a pixel: dashes would only make noise of them
	context.setLineDash(trace.dashed && exact ? [5, 3] : []);
	context.lineJoin = 'round';
	context.beginPath();
	let pen = false;
	for (let i = 0; i < atS.length; i++) {
		if (Number.isNaN(low[i])) {
			pen = false;
			continue;
		}
		const x = scales.x(atS[i]);
		// a lone sample between two gaps still leaves a dot
		if (!pen) context.moveTo(x, scales.y(high[i]) - 0.5);
		context.lineTo(x, scales.y(high[i]));
		if (!exact) context.lineTo(x, scales.y(low[i]));
		pen = true;
	}
	context.stroke();
	context.setLineDash([]);
}

/**
 * Fills where one trace lies above another: the crank ahead of the wheel.
 *
 * @param above the trace that leads where it is filled
 * @param below the trace it is compared with; same step and length
 */
export function fillBetween(
	context: CanvasRenderingContext2D,
	above: StripTrace,
	below: StripTrace,
	scales: Scales,
	colour: string
): void {
	const upper = traceOfWindow(above.levels, scales.window, scales.pixels);
	const lower = traceOfWindow(below.levels, scales.window, scales.pixels);
	context.fillStyle = colour;
	for (let i = 0; i + 1 < upper.atS.length; i++) {
		const [top, base] = [upper.high[i], lower.low[i]];
		const [nextTop, nextBase] = [upper.high[i + 1], lower.low[i + 1]];
		if (!(top > base) && !(nextTop > nextBase)) continue;
		if ([top, base, nextTop, nextBase].some(Number.isNaN)) continue;
		const [x, nextX] = [scales.x(upper.atS[i]), scales.x(upper.atS[i + 1])];
		context.beginPath();
		context.moveTo(x, scales.y(base));
		context.lineTo(x, scales.y(Math.max(top, base)));
		context.lineTo(nextX, scales.y(Math.max(nextTop, nextBase)));
		context.lineTo(nextX, scales.y(nextBase));
		context.fill();
	}
}
