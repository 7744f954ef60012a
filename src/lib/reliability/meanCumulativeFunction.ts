import { checkConfidence } from './checks';
import { normalQuantile } from './normalQuantile';
import { studentQuantile } from './studentQuantile';
import { checkHistories, sortedWindows, type WatchedHistory, type Window } from './watchedHistory';
import { windowAt } from './windowAt';

/** The curve just after the events at one age. */
export interface CumulativeStep {
	readonly age: number;
	/** systems watched at this age */
	readonly atRisk: number;
	readonly events: number;
	/** mean number of events of one system up to this age */
	readonly mean: number;
	/** between systems (robust); NaN with fewer than two systems: not certainty, but not available */
	readonly standardError: number;
	/** as if all events came singly at one rate for all: too small when systems differ */
	readonly standardErrorSingle: number;
	/** limits on the logarithm, the wider of both errors: never below 0 */
	readonly lower: number;
	readonly upper: number;
}

/** from so many systems the spread between them is estimated well enough to speak of others like them */
export const ENOUGH_SYSTEMS = 5;

export interface MeanCumulativeFunction {
	readonly systems: number;
	/** false, below five systems: the limits hold for these systems; how others would differ is not known */
	readonly speaksForOthers: boolean;
	readonly steps: readonly CumulativeStep[];
	/** ages at which no system was watched: there the curve is flat for want of watching, not of events */
	readonly unwatched: readonly Window[];
	/** the age up to which some system was watched */
	readonly end: number;
}

/**
 * How many events a system has had up to each age, on average, without any assumption of a rate: at each age
 * with an event the curve rises by events / systems watched. Late entry and gaps are allowed.
 *
 * @param histories one a system
 * @param confidence two-sided, 0 < confidence < 1
 * @returns the steps; none without events
 * @throws RangeError for windows that overlap, events outside them, a confidence outside (0, 1)
 * @example meanCumulativeFunction(fleet, 0.95).steps.at(-1)?.mean // 1.54 replacements per engine
 * Source: Nelson 1995, Technometrics 37:147; robust variance of Lawless and Nadeau 1995, Technometrics 37:158.
 * Student's quantile for few systems is ours: with 12 the normal one covered 91 % instead of 95 % (simulated).
 */
export function meanCumulativeFunction(
	histories: readonly WatchedHistory[],
	confidence: number
): MeanCumulativeFunction {
	checkHistories(histories);
	checkConfidence('confidence', confidence);
	const tail = 1 - (1 - confidence) / 2;
	const speaksForOthers = histories.length >= ENOUGH_SYSTEMS;
	const z = normalQuantile(tail);
	const t = speaksForOthers ? studentQuantile(tail, histories.length - 1) : z;
	const windows = histories.map((history) => sortedWindows(history.windows));
	const counts = histories.map((history) => countByAge(history.events));
	const ages = [...new Set(histories.flatMap((history) => [...history.events]))].sort((a, b) => a - b);
	const influence = new Float64Array(histories.length);
	const steps: CumulativeStep[] = [];
	let [mean, single] = [0, 0];
	for (const age of ages) {
		const own = counts.map((count) => count.get(age) ?? 0);
		const watched = windows.map((list, i) => own[i] > 0 || isWatchedAt(list, age));
		const atRisk = watched.filter(Boolean).length;
		const events = own.reduce((sum, n) => sum + n, 0);
		const rise = events / atRisk;
		mean += rise;
		single += events / atRisk ** 2;
		watched.forEach((here, i) => (influence[i] += here ? (own[i] - rise) / atRisk : 0));
		const robust = Math.sqrt(influence.reduce((sum, part) => sum + part * part, 0));
		const standardErrorSingle = Math.sqrt(single);
		const reach = Math.max(t * robust, z * standardErrorSingle) / mean;
		steps.push({
			age,
			atRisk,
			events,
			mean,
			standardError: histories.length < 2 ? NaN : robust,
			standardErrorSingle,
			lower: mean * Math.exp(-reach),
			upper: mean * Math.exp(reach)
		});
	}
	return { systems: histories.length, speaksForOthers, steps, ...extent(windows.flat()) };
}

function countByAge(ages: readonly number[]): Map<number, number> {
	const counts = new Map<number, number>();
	for (const age of ages) counts.set(age, (counts.get(age) ?? 0) + 1);
	return counts;
}

/** watched at an age: the window's start lies before it, its end not */
function isWatchedAt(sorted: readonly Window[], age: number): boolean {
	const last = windowAt(sorted, age);
	// where two windows meet, the age belongs to the earlier one
	const at = last > 0 && sorted[last].from === age ? last - 1 : last;
	return at >= 0 && sorted[at].from < age && age <= sorted[at].to;
}

function extent(windows: readonly Window[]): { unwatched: Window[]; end: number } {
	const unwatched: Window[] = [];
	let end = 0;
	for (const { from, to } of sortedWindows(windows)) {
		if (from > end) unwatched.push({ from: end, to: from });
		end = Math.max(end, to);
	}
	return { unwatched, end };
}
