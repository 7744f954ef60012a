/** A stretch of time, milliseconds since 1970 UTC: from <= instant < until; null = still going on. */
export interface TimeStretch {
	readonly fromMs: number;
	readonly untilMs: number | null;
}

/**
 * The times between the first and the last of some stretches that none of them covers, e.g. when no build
 * was on a wheel.
 *
 * @param stretches without overlaps, in any order
 * @returns the gaps in order of time; empty when one follows another at once
 * @example gapsBetween([{ fromMs: 0, untilMs: 5 }, { fromMs: 8, untilMs: null }]) // [{ fromMs: 5, untilMs: 8 }]
 */
export function gapsBetween(stretches: readonly TimeStretch[]): { fromMs: number; untilMs: number }[] {
	const inOrder = [...stretches].sort((a, b) => a.fromMs - b.fromMs);
	const gaps: { fromMs: number; untilMs: number }[] = [];
	inOrder.forEach((stretch, index) => {
		const before = inOrder[index - 1];
		if (before && before.untilMs !== null && before.untilMs < stretch.fromMs)
			gaps.push({ fromMs: before.untilMs, untilMs: stretch.fromMs });
	});
	return gaps;
}
