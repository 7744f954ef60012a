import { FEATURE_NAMES } from '../../../src/lib/slip/candidateFeatures';
import { LEAST_REPORTED_DEG } from '../../../src/lib/slip/reportLimits';
import type { TrueEvent } from './labelledRides';
import { near } from './scoreEvents';

/** Why a slip was not found, or in what surroundings a false alarm lies; the first that fits. */
export const CAUSES = [
	'told as one with a neighbour',
	'no candidate',
	'too small to be reported',
	'records missing',
	'change of gear',
	'pick-up',
	'power kept',
	'none of these'
] as const;
export type Cause = (typeof CAUSES)[number];

/** Candidates as the training sees them. */
export interface Seen {
	readonly rows: readonly ArrayLike<number>[];
	readonly startS: readonly number[];
	readonly sizeDeg: readonly number[];
}

/** Ratios before and after that differ by more are two gears (common practice, no source). */
const STEP = 0.035;
const PICK_UP_S = 4;
const POWER_KEPT = 0.75;

/**
 * Why a detector missed a slip.
 *
 * @param slip the slip that was missed
 * @param logOdds what the detector gave to each candidate
 * @param least log odds from which on it reports
 * @returns the first cause that fits; where several candidates lie near, that of the one with most log odds
 */
export function missCause(slip: TrueEvent, seen: Seen, logOdds: readonly number[], least: number): Cause {
	const beside = seen.startS.map((_, i) => i).filter((i) => near(seen.startS[i], slip));
	if (beside.length === 0) return 'no candidate';
	const large = beside.filter((i) => seen.sizeDeg[i] >= LEAST_REPORTED_DEG);
	if (large.length === 0) return 'too small to be reported';
	// what was strong enough answers for another slip, or gave way to a stronger excess beside it
	if (large.some((i) => logOdds[i] >= least)) return 'told as one with a neighbour';
	const best = large.reduce((a, b) => (logOdds[b] > logOdds[a] ? b : a));
	return surroundings(seen.rows[best]);
}

/** What lies around a candidate, from its features. */
export function surroundings(row: ArrayLike<number>): Cause {
	const feature = (name: string) => row[FEATURE_NAMES.indexOf(name)];
	if (feature('missing records near') > 0) return 'records missing';
	if (feature('size of step') > STEP) return 'change of gear';
	if (feature('seconds since rest') <= PICK_UP_S) return 'pick-up';
	if (feature('least power of before') > POWER_KEPT) return 'power kept';
	return 'none of these';
}
