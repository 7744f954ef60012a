import scorer from './model/scorer.json';
import { treeLogOdds, type TreeModel } from './model/treeModel';

/**
 * How clearly a candidate speaks for a slip: log odds of the learned trees (tests/bench/training).
 *
 * @param features numbers in the order of FEATURE_NAMES
 * @returns log odds at the prevalence of the training set, not the chance that it is a slip
 */
export function scoreCandidate(features: Float64Array): number {
	return treeLogOdds(scorer as TreeModel, features);
}
