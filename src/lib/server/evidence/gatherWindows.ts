import type { Window } from '$lib/reliability/watchedHistory';
import { overBins } from './overBins';

/** more windows than this are gathered in as many cells: fits and drawings would take seconds for nothing */
const MOST_WINDOWS = 500;

/**
 * As many observed metres in each cell of the age axis, in one window a cell. It moves an age by at most a
 * cell, a five-hundredth of the wheel's life.
 *
 * @param windows in order, without overlaps
 */
export function gatherWindows(windows: readonly Window[]): Window[] {
	if (windows.length <= MOST_WINDOWS) return [...windows];
	const cellM = windows[windows.length - 1].to / MOST_WINDOWS;
	const observedM = new Float64Array(MOST_WINDOWS);
	for (const { from, to } of windows)
		overBins(from, to, cellM, (cell, metres) => {
			observedM[Math.min(cell, MOST_WINDOWS - 1)] += metres;
		});
	return [...observedM].flatMap((length, cell) =>
		length > 0 ? [{ from: cell * cellM, to: cell * cellM + Math.min(length, cellM * (1 - 1e-9)) }] : []
	);
}
