import { checkHistories, isWatchedFromNew, withoutEndingEvent } from './watchedHistory';
import type { Ending, WatchedHistory } from './watchedHistory';

export interface GoodnessOfFit {
	readonly events: number;
	readonly statistic: number;
	/** the statistic exceeds these by chance with the probability given, if the power law is right */
	readonly critical: {
		readonly at20: number;
		readonly at10: number;
		readonly at5: number;
		readonly at1: number;
	};
	/** true: at 5 % the events speak against a power law */
	readonly speaksAgainst: boolean;
}

/** events, then critical values at 20, 10, 5 and 1 % */
const CRITICAL: readonly (readonly number[])[] = [
	[2, 0.137, 0.161, 0.175, 0.186],
	[4, 0.12, 0.154, 0.191, 0.28],
	[5, 0.12, 0.159, 0.198, 0.294],
	[6, 0.123, 0.163, 0.204, 0.31],
	[8, 0.124, 0.166, 0.209, 0.318],
	[10, 0.125, 0.168, 0.213, 0.323],
	[15, 0.127, 0.169, 0.216, 0.332],
	[20, 0.128, 0.172, 0.217, 0.331],
	[30, 0.128, 0.173, 0.219, 0.334],
	[60, 0.13, 0.174, 0.221, 0.337]
];

/**
 * Does a power law fit the events of systems watched from age 0? The squared distances between the events and
 * where the fitted law puts them (Cramer-von Mises, with the unbiased shape).
 *
 * @param histories one a system, each a single window from 0
 * @param ending whether ends were fixed apart from the events or are the last events
 * @returns statistic and critical values; null with fewer than two usable events, late entry or gaps
 * @throws RangeError for windows that overlap or events outside them
 * @example cramerVonMises(threeSystems, 'age') // statistic 0.0695, critical.at10 0.173: fits
 * Source: Crow 1975, AMSAA Technical Report 138, section 4 and table 2; critical values from 200,000 simulations
 * a row (R 4.2.2; the printed table rests on 15,000), between rows along a straight line.
 */
export function cramerVonMises(histories: readonly WatchedHistory[], ending: Ending): GoodnessOfFit | null {
	checkHistories(histories);
	if (!histories.every(isWatchedFromNew)) return null;
	const watched = ending === 'event' ? withoutEndingEvent(histories) : histories;
	const shares = watched.flatMap(({ events, windows }) => events.map((age) => age / windows[0].to));
	shares.sort((a, b) => a - b);
	const n = shares.length;
	const sum = shares.reduce((total, share) => total - Math.log(share), 0);
	if (n < 2 || !(sum > 0 && sum < Infinity)) return null;
	const shape = (n - 1) / sum;
	const statistic = shares.reduce(
		(total, share, i) => total + (share ** shape - (2 * i + 1) / (2 * n)) ** 2,
		1 / (12 * n)
	);
	const [at20, at10, at5, at1] = [1, 2, 3, 4].map((column) => criticalValue(n, column));
	return { events: n, statistic, critical: { at20, at10, at5, at1 }, speaksAgainst: statistic > at5 };
}

function criticalValue(events: number, column: number): number {
	const above = CRITICAL.findIndex((row) => row[0] >= events);
	if (above === -1) return CRITICAL[CRITICAL.length - 1][column];
	if (above === 0) return CRITICAL[0][column];
	const [low, high] = [CRITICAL[above - 1], CRITICAL[above]];
	return low[column] + ((events - low[0]) / (high[0] - low[0])) * (high[column] - low[column]);
}
