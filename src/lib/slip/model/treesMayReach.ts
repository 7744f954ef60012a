import { flatTrees, type FlatTrees } from './flatTrees';
import type { TreeModel } from './treeModel';

/** Far more than the rounding of a sum of some hundred leaves, far less than any limit is known to. */
const ROUNDING = 1e-9;

/**
 * Which rows the trees can give a log odds while only their first features are known, the others being anything.
 * Where they cannot, the rest need not be computed: the answer is the same. Tree by tree over all rows, so that a
 * tree is fetched from memory once.
 *
 * @param model trees that name the features they were grown on
 * @param rows numbers in the order of model.names, the first ones alone, as many in each; NaN = cannot be said
 * @param logOdds the log odds asked about
 * @returns 1 a row, 0 only where no values of the unknown features bring it to that log odds
 * @example treesMayReach({ names: ['a', 'b'], bias: 0, trees: [[[1, 5, 0, 1, 2], [0], [3]]] }, [[6]], 2) // [1]
 */
export function treesMayReach(
	model: TreeModel,
	rows: readonly (readonly number[])[],
	logOdds: number
): Uint8Array {
	const flat = flatTrees(model);
	const { widestFirst, most } = flat;
	const enough = logOdds - ROUNDING;
	const known = rows.length > 0 ? rows[0].length : 0;
	const table = new Float64Array(rows.length * known);
	rows.forEach((row, i) => table.set(row, i * known));
	const left = new Float64Array(rows.length).fill(flat.ceiling);
	const open = Int32Array.from(rows.keys());
	let count = flat.ceiling < enough ? 0 : open.length;
	for (let k = 0; k < widestFirst.length && count > 0; k++) {
		const root = widestFirst[k];
		const top = most[root];
		let kept = 0;
		for (let i = 0; i < count; i++) {
			const row = open[i];
			left[row] -= top - mostWithin(flat, root, table, row * known, known);
			if (left[row] >= enough) open[kept++] = row;
		}
		count = kept;
	}
	const may = new Uint8Array(rows.length);
	for (let i = 0; i < count; i++) may[open[i]] = 1;
	return may;
}

/** Greatest leaf that the row which begins at `start` can still fall into. */
function mostWithin(
	flat: FlatTrees,
	from: number,
	table: Float64Array,
	start: number,
	known: number
): number {
	const { feature, value, left, right, missing, most } = flat;
	let node = from;
	let asked = feature[node];
	while (asked >= 0) {
		if (asked >= known) {
			// the side that holds more first: mostly it leaves nothing to find on the other
			const leftFirst = most[left[node]] >= most[right[node]];
			const first = leftFirst ? left[node] : right[node];
			const other = leftFirst ? right[node] : left[node];
			const found = mostWithin(flat, first, table, start, known);
			if (found >= most[other]) return found;
			return Math.max(found, mostWithin(flat, other, table, start, known));
		}
		const x = table[start + asked];
		const cut = value[node];
		node = x <= cut ? left[node] : x > cut ? right[node] : missing[node];
		asked = feature[node];
	}
	return most[node];
}
