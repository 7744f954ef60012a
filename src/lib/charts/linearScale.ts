import { nice, ticks } from 'd3';

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
	readonly domain: readonly [number, number];
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
		range,
		domain
	});
}

/**
 * The same with ends at round values, so that ticks stand at both of them.
 *
 * @param count about how many ticks there will be
 * @example roundedScale([0, 9.3], [0, 200], 5).domain // [0, 10]
 */
export function roundedScale(
	[from, to]: readonly [number, number],
	range: readonly [number, number],
	count: number
): LinearScale {
	return linearScale(nice(from, to, count), range);
}

/** A scale that goes no further than its ends: what lies beyond is drawn at them. */
export function heldScale(scale: LinearScale): LinearScale {
	const [least, most] = scale.domain;
	return Object.assign((value: number) => scale(Math.min(most, Math.max(least, value))), {
		...scale
	});
}
