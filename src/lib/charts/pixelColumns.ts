import type { TraceColumns } from './traceOfWindow';

/** Of each pixel column the uppermost and lowermost place of a line; upper > lower where there is none. */
export interface PixelColumns {
	readonly upper: Float32Array;
	readonly lower: Float32Array;
}

/**
 * A line as the pixel columns that it crosses: as many samples as a column holds, drawn at the cost of the
 * columns. A missing value breaks it; a lone value is a dot.
 *
 * @param trace samples or summaries, in order of time
 * @param x second -> pixel column, from 0; never falls
 * @param y value -> pixel, growing downwards
 * @param width columns
 */
export function pixelColumns(
	trace: TraceColumns,
	x: (timeS: number) => number,
	y: (value: number) => number,
	width: number
): PixelColumns {
	const upper = new Float32Array(width).fill(Infinity);
	const lower = new Float32Array(width).fill(-Infinity);
	const reach = (column: number, from: number, to: number) => {
		if (column < 0 || column >= width) return;
		if (from < upper[column]) upper[column] = from;
		if (to > lower[column]) lower[column] = to;
	};
	const { atS, low, high, exact } = trace;
	// plain variables throughout: this runs thousands of times a frame
	let lastX = NaN;
	let lastTop = NaN;
	let lastBase = NaN;
	for (let i = 0; i < atS.length; i++) {
		if (Number.isNaN(low[i])) {
			lastX = NaN;
			continue;
		}
		const at = x(atS[i]);
		const top = y(high[i]);
		const base = exact ? top : y(low[i]);
		reach(Math.floor(at), top, base);
		if (lastX === lastX) {
			// from where the two come closest, so that a summary is not drawn higher than it is
			let from = lastBase;
			let to = top;
			if (lastBase >= top) {
				if (lastTop > base) {
					from = lastTop;
					to = base;
				} else from = to = (Math.max(lastTop, top) + Math.min(lastBase, base)) / 2;
			}
			join(reach, width, lastX, from, at, to);
		}
		lastX = at;
		lastTop = top;
		lastBase = base;
	}
	return { upper, lower };
}

/** the columns between two points and those of the points themselves */
function join(
	reach: (column: number, from: number, to: number) => void,
	width: number,
	fromX: number,
	fromY: number,
	toX: number,
	toY: number
): void {
	const first = Math.max(0, Math.floor(fromX));
	const last = Math.min(width - 1, Math.floor(toX));
	const slope = toX > fromX ? (toY - fromY) / (toX - fromX) : 0;
	let a = first <= fromX ? fromY : fromY + (first - fromX) * slope;
	for (let column = first; column <= last; column++) {
		const b = column + 1 >= toX ? toY : fromY + (column + 1 - fromX) * slope;
		if (a < b) reach(column, a, b);
		else reach(column, b, a);
		a = b;
	}
}
