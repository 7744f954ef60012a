import scorer from './model/scorer.json';
import { treeLogOdds, type TreeModel } from './model/treeModel';
import { treesMayReach } from './model/treesMayReach';

/**
 * How clearly a candidate speaks for a slip: log odds of the learned trees (tests/bench/training).
 *
 * @param features numbers in the order of FEATURE_NAMES
 * @returns log odds at the prevalence of the training set, not the chance that it is a slip
 */
export function scoreCandidate(features: ArrayLike<number>): number {
	return treeLogOdds(scorer as TreeModel, features);
}

/**
 * Which candidates can reach these log odds by the features that are known so far.
 *
 * @param rows the first numbers of each in the order of FEATURE_NAMES, as many of each
 * @returns 1 where a candidate can
 */
export function mayScore(rows: readonly (readonly number[])[], logOdds: number): Uint8Array {
	return treesMayReach(scorer as TreeModel, rows, logOdds);
}
