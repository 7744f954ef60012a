import { flatTrees, type FlatTrees } from './flatTrees';
import { rowSets, type RowSets } from './rowSets';
import type { TreeModel } from './treeModel';

/** The sets of so many rows stay in a processor's memory of the second level. */
const ROWS_AT_ONCE = 512;

/**
 * The bias and one leaf of every tree added up for many rows at once. Which rows lie at or below a cut is a set of bits,
 * so a branch parts 32 rows by two operations instead of asking each where it goes. Where a feature is not known, rows go
 * both ways, and the greatest leaf that they come to counts: no values of the unknown features give a row more.
 *
 * @param model trees that name the features they were grown on
 * @param columns one array of values a feature, as many as are known, in the order of model.names; NaN = cannot be said
 * @param rows how many rows
 * @returns one sum a row; with all features known that of `treeLogOdds`, to the last bit, because trees are added in order
 */
export function treeSums(model: TreeModel, columns: readonly Float64Array[], rows: number): Float64Array {
	const flat = flatTrees(model);
	const sums = new Float64Array(rows).fill(model.bias);
	for (let from = 0; from < rows; from += ROWS_AT_ONCE) {
		const count = Math.min(ROWS_AT_ONCE, rows - from);
		const sets = rowSets(flat, columns, from, count);
		for (let tree = 0; tree + 1 < flat.starts.length; tree++) {
			partRows(flat, tree, columns.length, count, sets);
			addGreatest(flat, tree, sets.words, sums, from);
		}
	}
	return sums;
}

/** The rows that come to each node of a tree, from its root on. */
let open = new Int32Array(0);

/** Lets the rows of a tree's root go down to its leaves. */
function partRows(flat: FlatTrees, tree: number, known: number, count: number, sets: RowSets): void {
	const { starts, feature, below, missingBelow, cutAt } = flat;
	const { words, bits, missing, atOrBelow, none } = sets;
	const start = starts[tree];
	const end = starts[tree + 1];
	if (open.length < (end - start) * words) open = new Int32Array(2 * (end - start) * words);
	open.fill(-1, 0, words);
	if (count & 31) open[words - 1] = (1 << (count & 31)) - 1;
	for (let node = start; node < end; node++) {
		const asked = feature[node];
		if (asked < 0) continue;
		const here = (node - start) * words;
		const there = (below[node] - start) * words;
		if (asked >= known) {
			for (let w = 0; w < words; w++) open[there + w] = open[there + words + w] = open[here + w];
			continue;
		}
		const low = atOrBelow[cutAt[node]];
		const lost = missingBelow[node] === 1 ? missing[asked] : none;
		for (let w = 0; w < words; w++) {
			const goesBelow = bits[low + w] | bits[lost + w];
			open[there + w] = open[here + w] & goesBelow;
			open[there + words + w] = open[here + w] & ~goesBelow;
		}
	}
}

/** Adds to each row the greatest leaf that it came to. */
function addGreatest(
	{ starts, leaves, leafStarts, value }: FlatTrees,
	tree: number,
	words: number,
	sums: Float64Array,
	from: number
): void {
	// rows that wait for their leaf stand at the root
	for (let k = leafStarts[tree]; k < leafStarts[tree + 1]; k++) {
		const at = (leaves[k] - starts[tree]) * words;
		const leaf = value[leaves[k]];
		for (let w = 0; w < words; w++) {
			let came = open[w] & open[at + w];
			if (at > 0) open[w] ^= came;
			while (came !== 0) {
				const bit = 31 - Math.clz32(came);
				sums[from + 32 * w + bit] += leaf;
				came ^= 1 << bit;
			}
		}
	}
}
