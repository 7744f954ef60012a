import type { TreeModel } from './treeModel';
import { treeSums } from './treeSums';

/**
 * Log odds that the trees give to many seconds: each is that of `treeLogOdds`, to the last bit.
 *
 * @param model trees that name the features they were grown on
 * @param columns one array of values a feature, in the order of model.names; NaN = cannot be said
 * @param seconds which of them are wanted
 * @returns one log odds a wanted second, in their order
 */
export function treeLogOddsOfSeconds(
	model: TreeModel,
	columns: readonly Float64Array[],
	seconds: Int32Array
): Float64Array {
	const wanted = columns.map((column) => {
		const values = new Float64Array(seconds.length);
		for (let i = 0; i < seconds.length; i++) values[i] = column[seconds[i]];
		return values;
	});
	return treeSums(model, wanted, seconds.length);
}
