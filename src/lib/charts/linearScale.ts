import { ticks } from 'd3';

/** A straight scale: what an axis needs and no more, since strips ask it thousands of times a frame. */
export interface LinearScale {
	(value: number): number;
	/** the pixel of the value 0 and the pixels of one unit: for loops that cannot afford a call */
	readonly start: number;
	readonly slope: number;
	/** the value at a pixel */
	readonly invert: (pixel: number) => number;
	/** about `count` round values in the domain */
	readonly ticks: (count: number) => number[];
	readonly range: readonly [number, number];
}

/**
 * @param domain values [from, to]; where both are equal everything lies in the middle of the range
 * @param range pixels [from, to]
 * @example linearScale([0, 10], [0, 200])(5) // 100
 */
export function linearScale(
	domain: readonly [number, number],
	range: readonly [number, number]
): LinearScale {
	const [from, to] = domain;
	const slope = to === from ? 0 : (range[1] - range[0]) / (to - from);
	const start = slope === 0 ? (range[0] + range[1]) / 2 : range[0] - from * slope;
	return Object.assign((value: number) => start + value * slope, {
		start,
		slope,
		invert: (pixel: number) => (slope === 0 ? from : (pixel - start) / slope),
		ticks: (count: number) => ticks(from, to, count),
		range
	});
}
