/** The parts of a trace event that are read (Trace Event Format of the Chromium project). */
export interface TraceEvent {
	readonly name: string;
	readonly ph: string;
	readonly pid: number;
	readonly tid: number;
	/** microseconds on the clock */
	readonly ts: number;
	/** microseconds of processor time of its thread, of complete events */
	readonly tdur?: number;
}

/**
 * Processor time of the page's main thread for each frame: the sum over its tasks between two marks named
 * "frame". Time in which other programs had the processor does not count.
 *
 * @returns milliseconds, one a frame, in order; the first mark begins the first frame, the last one ends the last
 */
export function frameCosts(events: readonly TraceEvent[]): number[] {
	const marks = events.filter(({ name, ph }) => name === 'frame' && ph !== 'E').sort((a, b) => a.ts - b.ts);
	if (marks.length < 2) return [];
	const [{ pid, tid }] = marks;
	const tasks = events.filter(
		(event) => event.name === 'RunTask' && event.ph === 'X' && event.pid === pid && event.tid === tid
	);
	// the task that holds a mark began before it: a frame is counted from the task of its mark
	const begins = marks.map(({ ts }) =>
		tasks.reduce((latest, task) => (task.ts <= ts ? Math.max(latest, task.ts) : latest), -Infinity)
	);
	const costs = new Array<number>(marks.length - 1).fill(0);
	for (const { ts, tdur } of tasks) {
		const frame = begins.findLastIndex((begin) => ts >= begin);
		if (frame >= 0 && frame < costs.length) costs[frame] += (tdur ?? 0) / 1000;
	}
	return costs;
}

/** @example quantile([1, 2, 3, 4], 0.5) // 2 */
export function quantile(values: readonly number[], share: number): number {
	const sorted = [...values].sort((a, b) => a - b);
	return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)];
}
