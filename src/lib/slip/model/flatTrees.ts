import type { TreeModel } from './treeModel';

/** The trees of a model laid out flat, because they are walked hundreds of thousands of times a ride. */
export interface FlatTrees {
	/** first node of each tree, its root, and at the end the number of all nodes */
	readonly starts: Int32Array;
	/** feature that a branch asks; -1 = a leaf */
	readonly feature: Int16Array;
	/** cut of a branch, value of a leaf */
	readonly value: Float64Array;
	/** child for values up to the cut; the one for greater values lies behind it */
	readonly below: Int32Array;
	/** 1 where a missing value goes the way of those up to the cut */
	readonly missingBelow: Uint8Array;
	/** different cuts of every feature, ascending, feature after feature */
	readonly cuts: Float64Array;
	/** first cut of each feature, and at the end the number of all cuts */
	readonly cutStarts: Int32Array;
	/** place of a branch's cut among the cuts */
	readonly cutAt: Int32Array;
	/** leaves of each tree from the greatest down, tree after tree */
	readonly leaves: Int32Array;
	/** first leaf of each tree in `leaves`, and at the end the number of all leaves */
	readonly leafStarts: Int32Array;
}

const flattened = new WeakMap<object, FlatTrees>();

/** The trees of a model laid out flat; done once a model. */
export function flatTrees(model: TreeModel): FlatTrees {
	let flat = flattened.get(model.trees);
	if (!flat) flattened.set(model.trees, (flat = flatten(model)));
	return flat;
}

function flatten({ trees, names }: TreeModel): FlatTrees {
	const total = trees.reduce((sum, tree) => sum + tree.length, 0);
	const starts = new Int32Array(trees.length + 1).fill(total);
	const feature = new Int16Array(total).fill(-1);
	const value = new Float64Array(total);
	const below = new Int32Array(total);
	const missingBelow = new Uint8Array(total);
	let free = 0;
	const lay = (tree: TreeModel['trees'][number], from: number, at: number): void => {
		const node = tree[from];
		if (node.length === 1) {
			value[at] = node[0];
			return;
		}
		const child = free;
		free += 2;
		[feature[at], value[at], missingBelow[at]] = node;
		below[at] = child;
		lay(tree, node[3], child);
		lay(tree, node[4], child + 1);
	};
	trees.forEach((tree, k) => {
		starts[k] = free++;
		lay(tree, 0, starts[k]);
	});
	return {
		starts,
		feature,
		value,
		below,
		missingBelow,
		...cutsOf(feature, value, names.length),
		...leavesOf(starts, feature, value)
	};
}

/** The cuts of every feature in order, and where each branch's cut is among them. */
function cutsOf(feature: Int16Array, value: Float64Array, features: number) {
	const asked: Set<number>[] = Array.from({ length: features }, () => new Set());
	feature.forEach((f, node) => f >= 0 && asked[f].add(value[node]));
	const cutStarts = new Int32Array(features + 1);
	const cuts: number[] = [];
	const places = asked.map((own, f) => {
		const inOrder = [...own].sort((a, b) => a - b);
		cuts.push(...inOrder);
		cutStarts[f + 1] = cuts.length;
		return new Map(inOrder.map((cut, i) => [cut, cutStarts[f] + i]));
	});
	const cutAt = new Int32Array(feature.length);
	feature.forEach((f, node) => f >= 0 && (cutAt[node] = places[f].get(value[node])!));
	return { cuts: Float64Array.from(cuts), cutStarts, cutAt };
}

function leavesOf(starts: Int32Array, feature: Int16Array, value: Float64Array) {
	const leaves: number[] = [];
	const leafStarts = new Int32Array(starts.length);
	for (let k = 0; k + 1 < starts.length; k++) {
		const own: number[] = [];
		for (let node = starts[k]; node < starts[k + 1]; node++) if (feature[node] < 0) own.push(node);
		leaves.push(...own.sort((a, b) => value[b] - value[a]));
		leafStarts[k + 1] = leaves.length;
	}
	return { leaves: Int32Array.from(leaves), leafStarts };
}
