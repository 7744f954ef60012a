import { flatTrees, type FlatTrees } from './flatTrees';

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
 * @param row numbers in the order of model.names; NaN = cannot be said. Of the first ones alone comes the most that the
 *   row can get, whatever the others are
 * @returns log odds; a row equal to or below a node's cut goes left
 * @example treeLogOdds({ names: ['a'], bias: -1, trees: [[[0, 5, 0, 1, 2], [0], [3]]] }, [6]) // 2
 */
export function treeLogOdds(model: TreeModel, row: ArrayLike<number>): number {
	const flat = flatTrees(model);
	let sum = model.bias;
	for (let k = 0; k + 1 < flat.starts.length; k++) sum += leafOf(flat, flat.starts[k], row);
	return sum;
}

/** The leaf at or below a node that a row falls into; the greater one where it may fall into two. */
function leafOf(flat: FlatTrees, from: number, row: ArrayLike<number>): number {
	const { feature, value, below, missingBelow } = flat;
	let node = from;
	while (feature[node] >= 0) {
		if (feature[node] >= row.length)
			return Math.max(leafOf(flat, below[node], row), leafOf(flat, below[node] + 1, row));
		const x = row[feature[node]];
		const goesBelow = x <= value[node] || (!(x > value[node]) && missingBelow[node] === 1);
		node = goesBelow ? below[node] : below[node] + 1;
	}
	return value[node];
}
