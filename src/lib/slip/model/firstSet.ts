import type { TreeModel } from './treeModel';

/** The mean of several sets of trees, one after the other, each with the same number of trees. */
export interface ScorerModel extends TreeModel {
	readonly sets: number;
}

/**
 * Log odds of the first set of trees from which on the other sets and the nets are asked. On rides left out nothing that
 * is reported changes by it, and the other sets are asked about four candidates in ten.
 */
export const ASKED_FROM = 0;

/**
 * The first set by itself.
 *
 * @example firstSetOf({ names: ['a'], bias: -1, sets: 2, trees: [[[1]], [[3]]] }).trees // [[[2]]]: it had half a voice
 */
export function firstSetOf({ names, bias, trees, sets }: ScorerModel): TreeModel {
	const own = trees.slice(0, trees.length / sets);
	const alone = (node: number[]) => (node.length === 1 ? [sets * node[0]] : node);
	return { names, bias, trees: own.map((tree) => tree.map(alone)) };
}
