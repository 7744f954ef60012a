import type { TreeModel } from './treeModel';

/** How large a set of trees is and what it asks. */
export interface TreeFacts {
	readonly trees: number;
	readonly branches: number;
	/** features by how often a branch asks for them, most often first; those never asked are left out */
	readonly asked: readonly { readonly name: string; readonly branches: number }[];
}

/**
 * Counts what the trees of a model ask for, for the page that explains it.
 *
 * @param model trees that name their features
 * @example treeFacts({ names: ['a', 'b'], bias: 0, trees: [[[1, 5, 0, 1, 2], [0], [3]]] })
 *   // { trees: 1, branches: 1, asked: [{ name: 'b', branches: 1 }] }
 */
export function treeFacts(model: TreeModel): TreeFacts {
	const counts = new Array<number>(model.names.length).fill(0);
	for (const tree of model.trees) {
		for (const node of tree) if (node.length > 1) counts[node[0]]++;
	}
	return {
		trees: model.trees.length,
		branches: counts.reduce((sum, count) => sum + count, 0),
		asked: counts
			.map((branches, i) => ({ name: model.names[i], branches }))
			.filter(({ branches }) => branches > 0)
			.sort((a, b) => b.branches - a.branches)
	};
}
