import { flatTrees } from './flatTrees';

/**
 * A small set of regression trees whose values add up to a log odds. Written by
 * tests/bench/training/train.ts, which names its data and seed.
 */
export interface TreeModel {
	readonly names: string[];
	readonly bias: number;
	/** a node: [feature, cut, missing goes left, left node, right node], or [value] for a leaf */
	readonly trees: number[][][];
}

/**
 * Log odds that the trees give to one row of features.
 *
 * @param model trees that name the features they were grown on
 * @param row numbers in the order of model.names; NaN = cannot be said
 * @returns log odds; a row equal to or below a node's cut goes left
 * @example treeLogOdds({ names: ['a'], bias: -1, trees: [[[0, 5, 0, 1, 2], [0], [3]]] }, [6]) // 2
 */
export function treeLogOdds(model: TreeModel, row: ArrayLike<number>): number {
	const { roots, feature, value, left, right, missing } = flatTrees(model);
	let sum = model.bias;
	for (let k = 0; k < roots.length; k++) {
		let node = roots[k];
		while (feature[node] >= 0) {
			const x = row[feature[node]];
			node = x <= value[node] ? left[node] : x > value[node] ? right[node] : missing[node];
		}
		sum += value[node];
	}
	return sum;
}
