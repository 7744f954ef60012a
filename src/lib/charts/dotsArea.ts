import type { DotPoints } from './paintScene';
import type { PlotBox } from './pixelBox';

/** half of the largest dot and what rounding moves it by, pixels */
const MARGIN = 2;

/** The smallest part of a drawing of this size that holds all dots, in whole pixels; one pixel where there are none. */
export function dotsArea({ x, y }: DotPoints, width: number, height: number): PlotBox {
	let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
	for (let i = 0; i < x.length; i++) {
		// written so that NaN moves nothing
		if (x[i] < left) left = x[i];
		if (x[i] > right) right = x[i];
		if (y[i] < top) top = y[i];
		if (y[i] > bottom) bottom = y[i];
	}
	left = Math.max(0, Math.floor(left - MARGIN));
	top = Math.max(0, Math.floor(top - MARGIN));
	right = Math.min(width, Math.ceil(right + MARGIN));
	bottom = Math.min(height, Math.ceil(bottom + MARGIN));
	if (!(right > left && bottom > top)) return { left: 0, top: 0, width: 1, height: 1 };
	return { left, top, width: right - left, height: bottom - top };
}
