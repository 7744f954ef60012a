/** The parts of a trace event that are read (Trace Event Format of the Chromium project). */
export interface TraceEvent {
	readonly name: string;
	readonly ph: string;
	readonly pid: number;
	readonly tid: number;
	/** microseconds on the clock */
	readonly ts: number;
	/** microseconds on the clock, of complete events */
	readonly dur?: number;
	/** microseconds of processor time of its thread, of complete events */
	readonly tdur?: number;
	/** of an event that names a thread */
	readonly args?: { readonly name?: string };
}

/** What the main thread does in a frame. */
export const KINDS = ['script', 'clearing away', 'style', 'layout', 'paint', 'layers', 'other'] as const;
export type Kind = (typeof KINDS)[number];

/** how the browser names it; what is not here belongs to what it lies in */
const KIND_OF: Readonly<Record<string, Kind>> = {
	FireAnimationFrame: 'script',
	FunctionCall: 'script',
	EventDispatch: 'script',
	RunMicrotasks: 'script',
	MinorGC: 'clearing away',
	MajorGC: 'clearing away',
	UpdateLayoutTree: 'style',
	Layout: 'layout',
	PrePaint: 'paint',
	Paint: 'paint',
	Layerize: 'layers',
	UpdateLayer: 'layers',
	Commit: 'layers'
};

/**
 * Processor time of the page's main thread for each frame: the sum over its tasks between two marks named
 * "frame". Time in which other programs had the processor does not count.
 *
 * @returns milliseconds, one a frame, in order; the first mark begins the first frame, the last one ends the last
 */
export function frameCosts(events: readonly TraceEvent[]): number[] {
	const { tasks, begins } = framesOf(events);
	return costsOf(tasks, begins);
}

/** The same for the threads beside the page's main one: those that it began itself. */
export function workerCosts(events: readonly TraceEvent[]): number[] {
	const { begins } = framesOf(events);
	const workers = new Set(
		events
			.filter(({ name, args }) => name === 'thread_name' && args?.name?.startsWith('DedicatedWorker'))
			.map(({ pid, tid }) => `${pid} ${tid}`)
	);
	const tasks = events.filter(
		({ name, ph, pid, tid }) => TASKS.has(name) && ph === 'X' && workers.has(`${pid} ${tid}`)
	);
	return costsOf(tasks, begins);
}

function costsOf(tasks: readonly TraceEvent[], begins: readonly number[]): number[] {
	const costs = new Array<number>(Math.max(0, begins.length - 1)).fill(0);
	for (const { ts, tdur } of tasks) {
		const frame = begins.findLastIndex((begin) => ts >= begin);
		if (frame >= 0 && frame < costs.length) costs[frame] += (tdur ?? 0) / 1000;
	}
	return costs;
}

/**
 * The same time by what it was spent on: each stretch counts for the innermost named work that it lies in.
 *
 * @returns milliseconds of each kind a frame, a mean over all frames
 */
export function frameSplit(events: readonly TraceEvent[]): Record<Kind, number> {
	const split = Object.fromEntries(KINDS.map((kind) => [kind, 0])) as Record<Kind, number>;
	const { tasks, begins, thread } = framesOf(events);
	const frames = begins.length - 1;
	if (frames < 1) return split;
	const counted = (ts: number) => ts >= begins[0] && ts < begins[frames];
	const named = events.filter(
		(event) => thread(event) && event.ph === 'X' && KIND_OF[event.name] && counted(event.ts)
	);
	const nested = [...tasks.filter(({ ts }) => counted(ts)), ...named].sort(
		(a, b) => a.ts - b.ts || (b.dur ?? 0) - (a.dur ?? 0)
	);
	const open: TraceEvent[] = [];
	const kindOf = ({ name }: TraceEvent) => KIND_OF[name] ?? 'other';
	for (const event of nested) {
		while (open.length && open[open.length - 1].ts + (open[open.length - 1].dur ?? 0) <= event.ts) open.pop();
		const holder = open.at(-1);
		const ms = (event.tdur ?? 0) / 1000 / frames;
		split[kindOf(event)] += ms;
		if (holder) split[kindOf(holder)] -= ms;
		open.push(event);
	}
	return split;
}

/** a task as the category "toplevel" names it, and as that of the developer tools does: a trace has one of them */
const TASKS: ReadonlySet<string> = new Set(['ThreadControllerImpl::RunTask', 'RunTask']);

/** The tasks of the page's main thread, and where each frame begins: with the task that holds its mark. */
function framesOf(events: readonly TraceEvent[]) {
	const marks = events.filter(({ name, ph }) => name === 'frame' && ph !== 'E').sort((a, b) => a.ts - b.ts);
	const thread = ({ pid, tid }: TraceEvent) => pid === marks[0]?.pid && tid === marks[0].tid;
	const tasks = events.filter((event) => TASKS.has(event.name) && event.ph === 'X' && thread(event));
	const begins = marks.map(({ ts }) =>
		tasks.reduce((latest, task) => (task.ts <= ts ? Math.max(latest, task.ts) : latest), -Infinity)
	);
	return { tasks, begins, thread };
}

/** @example quantile([1, 2, 3, 4], 0.5) // 2 */
export function quantile(values: readonly number[], share: number): number {
	const sorted = [...values].sort((a, b) => a - b);
	return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)];
}
