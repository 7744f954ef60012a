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

/** The same trees laid out flat, because they are walked hundreds of thousands of times a ride. */
interface FlatTrees {
	readonly roots: Int32Array;
	/** -1 = a leaf */
	readonly feature: Int16Array;
	/** cut of a branch, value of a leaf */
	readonly value: Float64Array;
	readonly left: Int32Array;
	readonly right: Int32Array;
	readonly missing: Int32Array;
}

const flattened = new WeakMap<object, FlatTrees>();

/**
 * Log odds that the trees give to one row of features.
 *
 * @param model trees that name the features they were grown on
 * @param row numbers in the order of model.names; NaN = cannot be said
 * @returns log odds; a row equal to or below a node's cut goes left
 * @example treeLogOdds({ names: ['a'], bias: -1, trees: [[[0, 5, 0, 1, 2], [0], [3]]] }, [6]) // 2
 */
export function treeLogOdds(model: TreeModel, row: ArrayLike<number>): number {
	let flat = flattened.get(model.trees);
	if (!flat) flattened.set(model.trees, (flat = flatten(model.trees)));
	const { roots, feature, value, left, right, missing } = flat;
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

function flatten(trees: number[][][]): FlatTrees {
	const total = trees.reduce((sum, tree) => sum + tree.length, 0);
	const flat: FlatTrees = {
		roots: new Int32Array(trees.length),
		feature: new Int16Array(total).fill(-1),
		value: new Float64Array(total),
		left: new Int32Array(total),
		right: new Int32Array(total),
		missing: new Int32Array(total)
	};
	let start = 0;
	trees.forEach((tree, k) => {
		flat.roots[k] = start;
		tree.forEach((node, i) => {
			const at = start + i;
			if (node.length === 1) {
				flat.value[at] = node[0];
				return;
			}
			flat.feature[at] = node[0];
			flat.value[at] = node[1];
			flat.left[at] = start + node[3];
			flat.right[at] = start + node[4];
			flat.missing[at] = node[2] === 1 ? flat.left[at] : flat.right[at];
		});
		start += tree.length;
	});
	return flat;
}
