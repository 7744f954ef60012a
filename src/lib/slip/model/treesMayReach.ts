import type { FeatureColumns } from './featureColumns';
import type { TreeModel } from './treeModel';
import { treeSums } from './treeSums';

/**
 * Which rows the trees can give a log odds while only their first features are known, the others being anything.
 * Where they cannot, the rest need not be computed: the answer is the same, rounding included, because leaves are added
 * in the same order and a greater one never makes a rounded sum smaller.
 *
 * @param model trees that name the features they were grown on
 * @param known the first features of the rows, in the order of model.names; NaN = cannot be said
 * @param logOdds the log odds asked about
 * @returns the rows, by number, that some values of the unknown features may bring to that log odds
 * @example // with { names: ['a', 'b'], bias: 0, trees: [[[1, 5, 0, 1, 2], [0], [3]]] } and one row [6] of 'a' alone
 *   // treesMayReach(model, known, 2) is [0]: with a 'b' above 5 it gets 3
 */
export function treesMayReach(model: TreeModel, known: FeatureColumns, logOdds: number): number[] {
	const most = treeSums(model, known.columns, known.rows);
	const open: number[] = [];
	for (let row = 0; row < most.length; row++) if (most[row] >= logOdds) open.push(row);
	return open;
}
