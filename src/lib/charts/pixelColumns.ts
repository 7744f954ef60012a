import type { LinearScale } from './linearScale';
import type { LineValues, SceneLine } from './paintScene';

/** Of each pixel column the uppermost and lowermost place of a line; upper > lower where there is none. */
export interface PixelColumns {
	readonly upper: Float32Array;
	readonly lower: Float32Array;
}

/**
 * A line as the pixel columns that it crosses: as many samples as a column holds, drawn at the cost of the
 * columns. A missing value breaks it; a lone value is a dot.
 *
 * @param line samples or summaries
 * @param xs pixel column of each, from 0; never falls
 * @param y value -> pixel, growing downwards
 * @param into overwritten: as many columns as are drawn
 */
export function pixelColumns(
	{ low, high, exact }: LineValues & Pick<SceneLine, 'exact'>,
	xs: ArrayLike<number>,
	{ start, slope }: Pick<LinearScale, 'start' | 'slope'>,
	into: PixelColumns
): void {
	const { upper, lower } = into;
	const width = upper.length;
	upper.fill(Infinity);
	lower.fill(-Infinity);
	// on an axis that grows downwards the highest value lies lowest
	const [tops, bases] = slope > 0 ? [low, high] : [high, low];
	// plain variables throughout: this runs thousands of times a frame
	let lastX = NaN;
	let lastColumn = 0;
	let lastTop = NaN;
	let lastBase = NaN;
	for (let i = 0; i < low.length; i++) {
		const value = tops[i];
		if (value !== value) {
			lastX = NaN;
			continue;
		}
		const at = xs[i];
		const top = start + slope * value;
		const base = exact ? top : start + slope * bases[i];
		const column = Math.floor(at);
		if (column >= 0 && column < width) {
			if (top < upper[column]) upper[column] = top;
			if (base > lower[column]) lower[column] = base;
		}
		// two points of one column have been taken with the column
		if (lastX === lastX && column > lastColumn) {
			// from where the two come closest, so that a summary is not drawn higher than it is
			let from = lastBase;
			let to = top;
			if (lastBase >= top) {
				if (lastTop > base) {
					from = lastTop;
					to = base;
				} else from = to = (Math.max(lastTop, top) + Math.min(lastBase, base)) / 2;
			}
			if (column - lastColumn === 1 && lastColumn >= 0 && column < width) {
				// neighbours share the place on the edge between them; their ends have been taken
				const edge = from + ((column - lastX) / (at - lastX)) * (to - from);
				if (edge < upper[lastColumn]) upper[lastColumn] = edge;
				if (edge > lower[lastColumn]) lower[lastColumn] = edge;
				if (edge < upper[column]) upper[column] = edge;
				if (edge > lower[column]) lower[column] = edge;
			} else join(upper, lower, lastX, from, at, to);
		}
		lastX = at;
		lastColumn = column;
		lastTop = top;
		lastBase = base;
	}
}

/** the columns between two points and those of the points themselves */
function join(
	upper: Float32Array,
	lower: Float32Array,
	fromX: number,
	fromY: number,
	toX: number,
	toY: number
): void {
	const first = Math.max(0, Math.floor(fromX));
	const last = Math.min(upper.length - 1, Math.floor(toX));
	const slope = toX > fromX ? (toY - fromY) / (toX - fromX) : 0;
	let a = first <= fromX ? fromY : fromY + (first - fromX) * slope;
	for (let column = first; column <= last; column++) {
		const b = column + 1 >= toX ? toY : fromY + (column + 1 - fromX) * slope;
		if (a < upper[column]) upper[column] = a;
		if (b < upper[column]) upper[column] = b;
		if (a > lower[column]) lower[column] = a;
		if (b > lower[column]) lower[column] = b;
		a = b;
	}
}
