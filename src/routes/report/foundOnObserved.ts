import { benchFigures } from '../method/benchFigures';

/** Of the slips of the reference size on observed stretches, how many were found in one set of test rides. */
export interface FoundOnObserved {
	readonly rides: string;
	/** "32/38 = 84 %" */
	readonly found: string;
}

/**
 * How far "observed" kept its promise where slips are known, from the benchmark's written figures. Sets that
 * the detector has learned from are left out: they flatter it.
 *
 * @param written the file that the benchmark writes, Markdown; "" gives none
 * @example foundOnObserved('### A\n\n- observed: 61 % of the distance; of the slips there, found 3/4 = 75 %\n')
 * // [{ rides: 'A', found: '3/4 = 75 %' }]
 */
export function foundOnObserved(written: string): FoundOnObserved[] {
	return benchFigures(written).sets.flatMap(({ name, lines }) => {
		const line = lines.find((text) => text.startsWith('observed:'));
		const found = /found (\d+\/\d+ = \d+ %)/.exec(line ?? '')?.[1];
		return found && !name.includes('has learned from') ? [{ rides: name, found }] : [];
	});
}
