import type { TreeModel } from './treeModel';

/** The trees of a model laid out flat, because they are walked hundreds of thousands of times a ride. */
export interface FlatTrees {
	readonly roots: Int32Array;
	/** -1 = a leaf */
	readonly feature: Int16Array;
	/** cut of a branch, value of a leaf */
	readonly value: Float64Array;
	readonly left: Int32Array;
	readonly right: Int32Array;
	readonly missing: Int32Array;
	/** greatest leaf at or below a node */
	readonly most: Float64Array;
	/** the bias and the greatest leaf of every tree together: no row can get more */
	readonly ceiling: number;
	/** roots in the order in which a row can fall short of the ceiling by most, so that most rows are soon told apart */
	readonly widestFirst: Int32Array;
}

const flattened = new WeakMap<object, FlatTrees>();

/** The trees of a model laid out flat; done once a model. */
export function flatTrees(model: TreeModel): FlatTrees {
	let flat = flattened.get(model.trees);
	if (!flat) flattened.set(model.trees, (flat = flatten(model)));
	return flat;
}

function flatten({ trees, bias }: TreeModel): FlatTrees {
	const total = trees.reduce((sum, tree) => sum + tree.length, 0);
	const roots = new Int32Array(trees.length);
	const feature = new Int16Array(total).fill(-1);
	const value = new Float64Array(total);
	const left = new Int32Array(total);
	const right = new Int32Array(total);
	const missing = new Int32Array(total);
	let start = 0;
	trees.forEach((tree, k) => {
		roots[k] = start;
		tree.forEach((node, i) => {
			const at = start + i;
			value[at] = node.length === 1 ? node[0] : node[1];
			if (node.length === 1) return;
			feature[at] = node[0];
			left[at] = start + node[3];
			right[at] = start + node[4];
			missing[at] = node[2] === 1 ? left[at] : right[at];
		});
		start += tree.length;
	});
	const most = new Float64Array(total);
	const least = new Float64Array(total);
	const fill = (node: number): void => {
		most[node] = least[node] = value[node];
		if (feature[node] < 0) return;
		fill(left[node]);
		fill(right[node]);
		most[node] = Math.max(most[left[node]], most[right[node]]);
		least[node] = Math.min(least[left[node]], least[right[node]]);
	};
	roots.forEach(fill);
	const range = (root: number) => most[root] - least[root];
	return {
		roots,
		feature,
		value,
		left,
		right,
		missing,
		most,
		ceiling: roots.reduce((sum, root) => sum + most[root], bias),
		widestFirst: roots.slice().sort((a, b) => range(b) - range(a))
	};
}
