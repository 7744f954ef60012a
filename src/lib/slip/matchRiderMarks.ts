/** A lap later than this after an onset is not taken to mean it, s. Estimate, no source. */
export const LONGEST_MARK_DELAY_S = 15;

/** A lap and the event that it is taken to mean. */
export interface MatchedMark {
	/** index in the laps that were given */
	readonly mark: number;
	/** index in the events that were given */
	readonly event: number;
	/** seconds from the event's onset to the lap, 0 to 15 */
	readonly delayS: number;
}

/**
 * Which event each lap means, on rides whose rider says that laps mean slips. A lap goes to the nearest
 * event that begins at most 15 s before it and has no lap yet; one lap means one event. In order of time, so
 * that two laps after two slips mean both.
 *
 * @param marksS laps, seconds from the first record
 * @param events with their onsets, seconds from the first record
 * @returns pairs in order of the laps; a lap without an event is in none
 * @example matchRiderMarks([104, 300], [{ startS: 100 }]) // [{ mark: 0, event: 0, delayS: 4 }]
 */
export function matchRiderMarks(
	marksS: readonly number[],
	events: readonly { readonly startS: number }[]
): MatchedMark[] {
	const inOrder = marksS.map((timeS, mark) => ({ timeS, mark })).sort((a, b) => a.timeS - b.timeS);
	const taken = new Set<number>();
	const matched: MatchedMark[] = [];
	for (const { timeS, mark } of inOrder) {
		let nearest: MatchedMark | null = null;
		events.forEach(({ startS }, event) => {
			const delayS = timeS - startS;
			if (taken.has(event) || !(delayS >= 0 && delayS <= LONGEST_MARK_DELAY_S)) return;
			if (!nearest || delayS < nearest.delayS) nearest = { mark, event, delayS };
		});
		if (!nearest) continue;
		matched.push(nearest);
		taken.add((nearest as MatchedMark).event);
	}
	return matched;
}
