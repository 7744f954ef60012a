import type { MarkExposure } from './exposure';
import { LONGEST_MARK_DELAY_S } from './matchRiderMarks';

/**
 * Says of each lap whether a slip that it may stand for would have been seen. A slip begins under drive and
 * the rider often coasts before pressing, so only the driven seconds of the 15 s before the lap are asked.
 *
 * @param marksS rider's laps, seconds from the first record
 * @param driven 1 for each second under drive
 * @param seen 1 for each second on an observed stretch
 * @returns one entry a lap in the same order; not observed where nothing was driven before it
 */
export function markExposures(
	marksS: readonly number[],
	driven: Uint8Array,
	seen: Uint8Array
): MarkExposure[] {
	return marksS.map((timeS) => {
		let under = 0;
		let both = 0;
		const last = Math.min(driven.length - 1, Math.floor(timeS));
		for (let t = Math.max(0, Math.ceil(timeS - LONGEST_MARK_DELAY_S)); t <= last; t++) {
			under += driven[t];
			both += driven[t] && seen[t];
		}
		return { timeS, observed: under > 0 && both >= under / 2 };
	});
}
