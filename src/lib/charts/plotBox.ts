/** Where the lines of a chart lie, pixels; its frame writes the axes around it. */
export interface PlotBox {
	readonly left: number;
	readonly right: number;
	readonly top: number;
	/** y of the lower axis */
	readonly base: number;
}

/** Room above every plot, pixels. */
const TOP = 14;

/**
 * @param width of the whole chart, pixels
 * @param high of the plot, pixels
 * @param sides room for the values at the left and for what stands at the ends of lines, pixels
 * @example plotBox(400, 200) // { left: 44, right: 386, top: 14, base: 214 }
 */
export function plotBox(
	width: number,
	high: number,
	{ left = 44, right = 14 }: { readonly left?: number; readonly right?: number } = {}
): PlotBox {
	return { left, right: width - right, top: TOP, base: TOP + high };
}
