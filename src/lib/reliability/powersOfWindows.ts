import type { Window } from './watchedHistory';

/** Sums over windows for one shape of a power law. */
export interface WindowPowers {
	/** sum of to^shape - from^shape */
	readonly grown: number;
	/** its derivative by the shape */
	readonly moved: number;
}

/**
 * Prepares the sums that the likelihood of a power law over windows needs, for many shapes after each other: the
 * logarithms are taken once.
 *
 * @param windows ages >= 0
 * @param unit ages are divided by it, > 0; the largest age keeps powers between 0 and 1
 * @returns a function of the shape
 * @example powersOfWindows([{ from: 0, to: 10 }], 10)(2) // { grown: 1, moved: 0 }
 * Source: definition; 0^shape and its derivative are 0.
 */
export function powersOfWindows(windows: readonly Window[], unit: number): (shape: number) => WindowPowers {
	const logTo = Float64Array.from(windows, ({ to }) => Math.log(to / unit));
	const logFrom = Float64Array.from(windows, ({ from }) => Math.log(from / unit));
	return (shape) => {
		let [grown, moved] = [0, 0];
		for (let i = 0; i < logTo.length; i++) {
			if (logTo[i] === -Infinity) continue;
			const to = Math.exp(shape * logTo[i]);
			grown += to;
			moved += to * logTo[i];
			if (logFrom[i] === -Infinity) continue;
			const from = Math.exp(shape * logFrom[i]);
			grown -= from;
			moved -= from * logFrom[i];
		}
		return { grown, moved };
	};
}
