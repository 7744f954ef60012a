/** A stretch of time that may carry a verdict, milliseconds since 1970 UTC. */
export interface Judged {
	readonly id: number;
	readonly startMs: number;
	readonly endMs: number;
}

/** another analysis version may place an onset this far off, milliseconds */
const TOLERANCE_MS = 3_000;

/**
 * Finds again what people judged: each verdict goes to the event that overlaps it or begins within 3 s of
 * it; where several could be meant the nearest onsets go together first. No event gets two verdicts.
 *
 * @returns event id -> verdict id
 */
export function matchVerdicts(events: readonly Judged[], verdicts: readonly Judged[]): Map<number, number> {
	const pairs = [];
	for (const event of events) {
		for (const verdict of verdicts) {
			const distanceMs = Math.abs(event.startMs - verdict.startMs);
			const overlaps = event.startMs <= verdict.endMs && verdict.startMs <= event.endMs;
			if (overlaps || distanceMs <= TOLERANCE_MS) pairs.push({ event, verdict, distanceMs });
		}
	}
	pairs.sort((a, b) => a.distanceMs - b.distanceMs || a.event.id - b.event.id || a.verdict.id - b.verdict.id);
	const matched = new Map<number, number>();
	const used = new Set<number>();
	for (const { event, verdict } of pairs) {
		if (matched.has(event.id) || used.has(verdict.id)) continue;
		matched.set(event.id, verdict.id);
		used.add(verdict.id);
	}
	return matched;
}
