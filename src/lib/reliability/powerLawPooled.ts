import { checkConfidence } from './checks';
import { chiSquareQuantile } from './chiSquareQuantile';
import { checkHistories, isWatchedFromNew, withoutEndingEvent } from './watchedHistory';
import type { Ending, WatchedHistory } from './watchedHistory';

/** The shape that several systems have in common, while each may have a rate level of its own. */
export interface PooledShape {
	/** events that entered: with `event` endings the last of each system does not */
	readonly events: number;
	/** given the number of events of each system */
	readonly shape: number;
	readonly shapeUnbiased: number;
	readonly shapeLower: number;
	readonly shapeUpper: number;
	/** large when the systems' shapes differ: about chi-square with `differenceDegrees` degrees of freedom */
	readonly difference: number;
	readonly differenceDegrees: number;
}

/**
 * The common shape of the power-law processes of several systems watched from age 0, in closed form, given how
 * many events each had. Systems without events say nothing here (in `powerLawInWindows` they do).
 *
 * @param histories one a system, each a single window from 0; ends may differ
 * @param ending whether ends were fixed apart from the events or are the last events
 * @param confidence two-sided, 0 < confidence < 1
 * @returns shape with exact limits and a test of "one shape for all"; null without usable events or with one at age 0
 * @throws RangeError for late entry, gaps, events outside, a confidence outside (0, 1)
 * @example powerLawPooled(threeSystems, 'age', 0.9) // shape 0.615, unbiased 0.598, limits 0.457 to 0.793
 * Source: Crow 1975, AMSAA Technical Report 138, sections 3.1 to 3.3; the comparison of shapes is Bartlett's.
 */
export function powerLawPooled(
	histories: readonly WatchedHistory[],
	ending: Ending,
	confidence: number
): PooledShape | null {
	checkHistories(histories);
	checkConfidence('confidence', confidence);
	if (!histories.every(isWatchedFromNew)) throw new RangeError('pooling needs one window from age 0 each');
	const watched = ending === 'event' ? withoutEndingEvent(histories) : histories;
	const groups = watched
		.filter((history) => history.events.length > 0)
		.map(({ events, windows }) => ({ n: events.length, sum: logSum(events, windows[0].to) }));
	const n = groups.reduce((total, group) => total + group.n, 0);
	const sum = groups.reduce((total, group) => total + group.sum, 0);
	if (n === 0 || !(sum > 0 && sum < Infinity)) return null;
	const tail = (1 - confidence) / 2;
	const likelihood = groups.reduce((total, g) => total + g.n * Math.log(g.n / g.sum), 0);
	const excess = 2 * (likelihood - n * Math.log(n / sum));
	const degrees = groups.length - 1;
	const bartlett = 1 + (groups.reduce((total, g) => total + 1 / g.n, 0) - 1 / n) / (6 * (degrees || 1));
	return {
		events: n,
		shape: n / sum,
		shapeUnbiased: (n - 1) / sum,
		shapeLower: chiSquareQuantile(tail, 2 * n) / (2 * sum),
		shapeUpper: chiSquareQuantile(1 - tail, 2 * n) / (2 * sum),
		difference: degrees > 0 ? excess / bartlett : 0,
		differenceDegrees: degrees
	};
}

function logSum(events: readonly number[], end: number): number {
	return events.reduce((total, age) => total + Math.log(end / age), 0);
}
