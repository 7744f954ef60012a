import type { Window } from '$lib/reliability/watchedHistory';

/** gaps shorter than this share of the whole are narrower than a few pixels and not drawn */
const LEAST_SHARE = 0.01;

/**
 * Ages at which nothing was watched on any wheel. A line over them is flat because nobody could have seen a slip, not
 * because there was none.
 *
 * @param windows observed stretches of age, of all wheels together, in any order
 * @param endM the greatest age that was reached
 * @example unwatchedGaps([{ from: 0, to: 40 }, { from: 60, to: 100 }], 100) // [{ fromM: 40, toM: 60 }]
 */
export function unwatchedGaps(
	windows: readonly Window[],
	endM: number
): { readonly fromM: number; readonly toM: number }[] {
	const gaps: { fromM: number; toM: number }[] = [];
	let reachedM = 0;
	const note = (fromM: number, toM: number) => {
		if (toM - fromM >= LEAST_SHARE * endM && toM > fromM) gaps.push({ fromM, toM });
	};
	for (const { from, to } of [...windows].sort((a, b) => a.from - b.from)) {
		note(reachedM, Math.min(from, endM));
		reachedM = Math.max(reachedM, to);
	}
	note(reachedM, endM);
	return gaps;
}
