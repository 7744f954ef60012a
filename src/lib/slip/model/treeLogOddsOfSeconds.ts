import { flatTrees } from './flatTrees';
import type { TreeModel } from './treeModel';

/**
 * Log odds that the trees give to many seconds, tree by tree: what is asked of one second is mostly answered as it
 * was for the second before, which a processor foresees. Each sum is that of `treeLogOdds` to the last bit.
 *
 * @param model trees that name the features they were grown on
 * @param columns one array of values a feature, in the order of model.names; NaN = cannot be said
 * @param seconds which of them are wanted, ascending
 * @returns one log odds a wanted second, in their order
 */
export function treeLogOddsOfSeconds(
	model: TreeModel,
	columns: readonly Float64Array[],
	seconds: Int32Array
): Float64Array {
	const { roots, feature, value, left, right, missing } = flatTrees(model);
	const out = new Float64Array(seconds.length).fill(model.bias);
	for (let k = 0; k < roots.length; k++) {
		const root = roots[k];
		for (let i = 0; i < seconds.length; i++) {
			const t = seconds[i];
			let node = root;
			while (feature[node] >= 0) {
				const x = columns[feature[node]][t];
				node = x <= value[node] ? left[node] : x > value[node] ? right[node] : missing[node];
			}
			out[i] += value[node];
		}
	}
	return out;
}
