import type { TrendTest } from './laplaceTrendTest';
import { poissonAtLeast, poissonAtMost } from './poissonProbability';
import { checkHistories, sortedWindows, watchedExposure, withoutEndingEvent } from './watchedHistory';
import type { Ending, WatchedHistory } from './watchedHistory';
import { windowAt } from './windowAt';

/**
 * The trend test that is best against a rate rising or falling like a power of age: twice the sum of
 * log(watched in all / watched before the event). LARGE means that the events came early: the rate falls.
 * Exact for any number of events, late entry and gaps included, because only what was watched counts.
 *
 * @param histories one a system; systems may have rates of their own
 * @param ending `event` when watching stopped WITH the last event, which then does not count
 * @returns statistic (chi-square with 2 x events degrees of freedom under a constant rate) and p-values; null
 *   without events, or with one at the very start of what was watched, which has no logarithm
 * @throws RangeError for windows that overlap or events outside them
 * @example chiSquareTrendTest([watchedFromNew([5, 40, 43, 175, 389, 712, 747, 795, 1299, 1478], 1500)])
 *   // statistic 37.23, pFalling 0.011
 * Source: MIL-HDBK-189C (2011), trend test of the power-law process; NIST/SEMATECH e-Handbook 8.2.3.4.
 */
export function chiSquareTrendTest(
	histories: readonly WatchedHistory[],
	ending: Ending = 'age'
): TrendTest | null {
	checkHistories(histories);
	const watched = ending === 'event' ? withoutEndingEvent(histories) : histories;
	let [events, statistic] = [0, 0];
	for (const history of watched) {
		const before = watchedBefore(history);
		const all = watchedExposure(history);
		for (const age of history.events) {
			if (before(age) === 0) return null;
			events++;
			statistic += 2 * Math.log(all / before(age));
		}
	}
	if (events === 0) return null;
	// chi-square with an even number of degrees of freedom is a Poisson sum: no digits are lost in either tail
	const pFalling = poissonAtMost(events - 1, statistic / 2);
	const pRising = poissonAtLeast(events, statistic / 2);
	return { events, statistic, pRising, pFalling, pTwoSided: Math.min(1, 2 * Math.min(pRising, pFalling)) };
}

/** how much of a history was watched before an age inside its windows */
function watchedBefore(history: WatchedHistory): (age: number) => number {
	const sorted = sortedWindows(history.windows);
	let total = 0;
	const reached = sorted.map(({ from, to }) => (total += to - from) - (to - from));
	return (age) => {
		const last = windowAt(sorted, age);
		return reached[last] + age - sorted[last].from;
	};
}
