import type { PlotBox } from './pixelBox';

/** A part of a drawing in whole device pixels; it has one of them at least. */
export function deviceBox({ left, top, width, height }: PlotBox, ratio: number): PlotBox {
	return {
		left: Math.round(left * ratio),
		top: Math.round(top * ratio),
		width: Math.max(1, Math.round(width * ratio)),
		height: Math.max(1, Math.round(height * ratio))
	};
}
