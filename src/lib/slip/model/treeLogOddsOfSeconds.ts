import { leafTables, type LeafTables } from './leafTables';
import { treeLogOdds, type TreeModel } from './treeModel';

/**
 * Log odds that the trees give to many seconds. From one second to the next most features stay between the same two
 * cuts, so nothing is walked: tables say which leaves an interval leaves open, and where no interval changes the
 * value stays. Each value is that of `treeLogOdds` to the last bit.
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
	const out = new Float64Array(seconds.length);
	const tables = leafTables(model);
	if (!tables) {
		for (let i = 0; i < seconds.length; i++) {
			out[i] = treeLogOdds(
				model,
				columns.map((column) => column[seconds[i]])
			);
		}
		return out;
	}
	const { features } = tables;
	const within = new Int32Array(features.length).fill(-1);
	let last = NaN;
	for (let i = 0; i < seconds.length; i++) {
		const t = seconds[i];
		let changed = false;
		for (let f = 0; f < features.length; f++) {
			const { feature, cuts } = features[f];
			const interval = intervalOf(cuts, columns[feature][t], within[f]);
			if (interval === within[f]) continue;
			within[f] = interval;
			changed = true;
		}
		if (changed) last = logOddsWithin(tables, within, model.bias);
		out[i] = last;
	}
	return out;
}

/** The interval of the cuts in which a value lies, looked for from where the last one lay. */
function intervalOf(cuts: Float64Array, value: number, before: number): number {
	const count = cuts.length;
	if (value !== value) return count + 1;
	let interval = before < 0 || before > count ? 0 : before;
	while (interval < count && value > cuts[interval]) interval++;
	while (interval > 0 && value <= cuts[interval - 1]) interval--;
	return interval;
}

function logOddsWithin(tables: LeafTables, within: Int32Array, bias: number): number {
	const { words, bits, features, all, leaves, trees } = tables;
	const mask = bits === 32 ? -1 : (1 << bits) - 1;
	const treesAWord = 32 / bits;
	let sum = bias;
	for (let w = 0, tree = 0; w < words; w++) {
		let open = all[w];
		for (let f = 0; f < features.length; f++) open &= features[f].open[within[f] * words + w];
		for (let k = 0; k < treesAWord && tree < trees; k++, tree++) {
			// of each tree one leaf is left
			const leaf = 31 - Math.clz32((open >>> (k * bits)) & mask);
			sum += leaves[tree * bits + leaf];
		}
	}
	return sum;
}
