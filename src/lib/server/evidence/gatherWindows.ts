import type { Window } from '$lib/reliability/watchedHistory';
import { overBins } from './overBins';

/** more windows than this are gathered in as many cells: fits and drawings would take seconds for nothing */
const MOST_WINDOWS = 500;

/**
 * As many observed metres in each cell of the age axis, in one window a cell. It moves an age by at most a
 * cell, a five-hundredth of the wheel's life.
 *
 * @param windows in order, without overlaps
 * @param most as many windows are left as they are, and so many cells are made of more
 */
export function gatherWindows(windows: readonly Window[], most = MOST_WINDOWS): Window[] {
	if (windows.length <= most) return [...windows];
	const cellM = windows[windows.length - 1].to / most;
	const observedM = new Float64Array(most);
	for (const { from, to } of windows)
		overBins(from, to, cellM, (cell, metres) => {
			observedM[Math.min(cell, most - 1)] += metres;
		});
	return [...observedM].flatMap((length, cell) =>
		length > 0 ? [{ from: cell * cellM, to: cell * cellM + Math.min(length, cellM * (1 - 1e-9)) }] : []
	);
}
