import type { FeatureColumns } from './model/featureColumns';
import { ASKED_FROM, firstSetOf, type ScorerModel } from './model/firstSet';
import net from './model/net.json';
import { netReader, unpackNets, type NetModel } from './model/netModel';
import scorer from './model/scorer.json';
import { treeLogOdds, type TreeModel } from './model/treeModel';
import { treesMayReach } from './model/treesMayReach';
import type { SlipWindow } from './slipWindow';

const SCORER = scorer as ScorerModel;
let firstSet: TreeModel | undefined;

/**
 * How clearly a candidate speaks for a slip: log odds of the learned trees (tests/bench/training).
 *
 * @param features numbers in the order of FEATURE_NAMES; of the first ones alone comes the most that it can get
 * @returns log odds at the prevalence of the training set, not the chance that it is a slip
 */
export function scoreCandidate(features: ArrayLike<number>): number {
	return treeLogOdds(SCORER, features);
}

/** Whether the first set of trees leaves it open that a candidate is a slip; if not, nothing else is asked. */
export function firstSetAsks(features: ArrayLike<number>): boolean {
	firstSet ??= firstSetOf(SCORER);
	return treeLogOdds(firstSet, features) >= ASKED_FROM;
}

/**
 * Which candidates can reach these log odds by the features that are known so far.
 *
 * @param known the first numbers of each in the order of FEATURE_NAMES
 * @returns their numbers
 */
export function mayScore(known: FeatureColumns, logOdds: number): number[] {
	firstSet ??= firstSetOf(SCORER);
	const asked = treesMayReach(firstSet, known, ASKED_FROM);
	return treesMayReach(SCORER, known.some(asked), logOdds).map((i) => asked[i]);
}

let reader: ReturnType<typeof netReader> | undefined;

/**
 * How clearly the seconds around a candidate speak for a slip: mean log odds of the learned nets (tests/bench/training).
 *
 * @param window seconds around the candidate as they were recorded
 * @returns log odds at the prevalence of the training set, not the chance that it is a slip
 */
export function scoreWindow(window: SlipWindow): number {
	reader ??= netReader(unpackNets(net as NetModel));
	return reader(window);
}
