import type { DriveTraces, RideAnalysis, SlipEvent } from './analysis';

/** Traces that a reviewer sees of an event. */
export const REVIEW_TRACES = [
	'cadenceRpm',
	'engagedCadenceRpm',
	'speedMps',
	'powerW',
	'hubTorqueNm',
	'gainedHubDeg',
	'state'
] as const satisfies readonly (keyof DriveTraces)[];
export type ReviewTrace = (typeof REVIEW_TRACES)[number];

/** seconds shown before the onset of an event and after it: fifteen, and some to zoom out to */
export const REVIEW_BEFORE_S = 12;
export const REVIEW_AFTER_S = 18;

/** A slip that was put into a ride and found: the event and the seconds around it, as of a real one. */
export interface ReviewProbe {
	readonly putCrankDeg: number;
	readonly event: SlipEvent;
	/** second of the ride at which the traces begin */
	readonly fromS: number;
	/** one value a second; null = not known */
	readonly traces: Readonly<Record<ReviewTrace, readonly (number | null)[]>>;
	/** metres for one turn of the crank in each gear of the ride */
	readonly developmentsM: readonly number[];
}

/** Cuts an event with its surroundings out of an analysis, rounded as the stored traces are. */
export function reviewProbe(analysis: RideAnalysis, event: SlipEvent, putCrankDeg: number): ReviewProbe {
	const fromS = Math.max(0, Math.floor(event.startS) - REVIEW_BEFORE_S);
	const toS = Math.floor(event.startS) + REVIEW_AFTER_S;
	const cut = (name: ReviewTrace) =>
		Array.from(analysis.traces[name].subarray(fromS, toS), (value) =>
			Number.isNaN(value) ? null : Math.round(value * 1000) / 1000
		);
	return {
		putCrankDeg,
		event,
		fromS,
		traces: Object.fromEntries(REVIEW_TRACES.map((name) => [name, cut(name)])) as Record<
			ReviewTrace,
			(number | null)[]
		>,
		developmentsM: analysis.gears.map(({ developmentM }) => developmentM)
	};
}
