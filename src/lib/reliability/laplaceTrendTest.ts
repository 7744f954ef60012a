import { normalAbove } from './normalAbove';
import { checkHistories, withoutEndingEvent, type Ending, type WatchedHistory } from './watchedHistory';

/** Whether events came at a constant rate, or later or earlier than that. */
export interface TrendTest {
	/** events that entered the statistic */
	readonly events: number;
	readonly statistic: number;
	/** one-sided, for a direction fixed beforehand: "the rate rises with age" */
	readonly pRising: number;
	/** one-sided: "the rate falls with age" */
	readonly pFalling: number;
	readonly pTwoSided: number;
}

/**
 * Laplace's trend test: do the events lie later (statistic above 0) or earlier (below 0) in what was watched
 * than a constant rate would put them? Several systems may have rates of their own; late entry and gaps are
 * allowed, as ages are set against the windows in which they could fall.
 *
 * @param histories one a system
 * @param ending `event` when watching stopped WITH the last event, which then does not count
 * @returns statistic (standard normal under a constant rate) and p-values; null without events
 * @throws RangeError for windows that overlap or events outside them
 * @example laplaceTrendTest([watchedFromNew([5, 40, 43, 175, 389, 712, 747, 795, 1299, 1478], 1500)])
 *   // statistic -1.327, pTwoSided 0.185
 * Source: Cox and Lewis 1966, The Statistical Analysis of Series of Events, section 3.3; NIST/SEMATECH
 * e-Handbook 8.2.3.4. The normal approximation is fair from four events at 5 % (NIST).
 */
export function laplaceTrendTest(
	histories: readonly WatchedHistory[],
	ending: Ending = 'age'
): TrendTest | null {
	checkHistories(histories);
	const watched = ending === 'event' ? withoutEndingEvent(histories) : histories;
	let [events, excess, variance] = [0, 0, 0];
	for (const history of watched) {
		const n = history.events.length;
		if (n === 0) continue;
		const uniform = ageIfConstant(history);
		events += n;
		excess += history.events.reduce((sum, age) => sum + age, 0) - n * uniform.mean;
		variance += n * uniform.variance;
	}
	if (events === 0 || !(variance > 0)) return null;
	const statistic = excess / Math.sqrt(variance);
	const pRising = normalAbove(statistic);
	const pFalling = normalAbove(-statistic);
	return { events, statistic, pRising, pFalling, pTwoSided: Math.min(1, 2 * Math.min(pRising, pFalling)) };
}

/** mean and variance of the age of an event that may fall anywhere in the windows with equal chance */
function ageIfConstant({ windows }: WatchedHistory): { mean: number; variance: number } {
	let [total, first] = [0, 0];
	for (const { from, to } of windows) {
		total += to - from;
		first += ((to - from) * (to + from)) / 2;
	}
	const mean = first / total;
	let second = 0;
	for (const { from, to } of windows) second += ((to - mean) ** 3 - (from - mean) ** 3) / 3;
	return { mean, variance: second / total };
}
