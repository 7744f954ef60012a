import type { FlatTrees } from './flatTrees';

/** Sets of rows as bits, 32 rows a word. */
export interface RowSets {
	/** words a set */
	readonly words: number;
	readonly bits: Int32Array;
	/** where the set of a feature's missing values begins in `bits`, by feature */
	readonly missing: Int32Array;
	/** where the set of the rows at or below a cut begins, by place of the cut */
	readonly atOrBelow: Int32Array;
	/** where the set that holds no row begins */
	readonly none: number;
}

/**
 * Which of some rows lie at or below each cut of the features, and in which a feature is missing.
 *
 * @param flat the trees whose cuts they are
 * @param columns one array of values a feature; those behind them are not known
 * @param from first of the rows
 * @param count how many rows
 */
export function rowSets(
	flat: FlatTrees,
	columns: readonly Float64Array[],
	from: number,
	count: number
): RowSets {
	const words = (count + 31) >> 5;
	const sets = emptySets(flat, words);
	for (let f = 0; f < columns.length; f++) {
		putRows(flat, f, columns[f], from, count, sets);
		// what lies at or below a cut lies below the next
		for (let cut = flat.cutStarts[f] + 1; cut < flat.cutStarts[f + 1]; cut++) {
			const at = sets.atOrBelow[cut];
			for (let w = at; w < at + words; w++) sets.bits[w] |= sets.bits[w - words];
		}
	}
	return sets;
}

/** Each row into the set of the lowest cut that it does not exceed, or of missing values; above all cuts into none. */
function putRows(
	{ cuts, cutStarts }: FlatTrees,
	feature: number,
	column: Float64Array,
	from: number,
	count: number,
	{ bits, missing, atOrBelow }: RowSets
): void {
	const first = cutStarts[feature];
	const end = cutStarts[feature + 1];
	let cut = first;
	for (let i = 0; i < count; i++) {
		const x = column[from + i];
		if (x !== x) bits[missing[feature] + (i >> 5)] |= 1 << (i & 31);
		else {
			cut = lowestCut(cuts, first, end, cut, x);
			if (cut < end) bits[atOrBelow[cut] + (i >> 5)] |= 1 << (i & 31);
		}
	}
}

/** Place of the lowest cut that a value does not exceed, `end` if it exceeds all; mostly that of the value before. */
function lowestCut(cuts: Float64Array, first: number, end: number, before: number, x: number): number {
	if ((before === first || x > cuts[before - 1]) && (before === end || x <= cuts[before])) return before;
	let low = first;
	for (let left = end - first; left > 0;) {
		const half = left >> 1;
		if (x > cuts[low + half]) {
			low += half + 1;
			left -= half + 1;
		} else left = half;
	}
	return low;
}

let scratch = new Int32Array(0);
const places = new WeakMap<FlatTrees, Map<number, Omit<RowSets, 'bits'>>>();

/** The same memory for all rows; where each set lies is reckoned once a width. */
function emptySets(flat: FlatTrees, words: number): RowSets {
	const features = flat.cutStarts.length - 1;
	const size = (1 + features + flat.cuts.length) * words;
	if (scratch.length < size) scratch = new Int32Array(size);
	scratch.fill(0, 0, size);
	let byWidth = places.get(flat);
	if (!byWidth) places.set(flat, (byWidth = new Map()));
	let place = byWidth.get(words);
	if (!place) {
		place = {
			words,
			none: 0,
			missing: Int32Array.from({ length: features }, (_, f) => (1 + f) * words),
			atOrBelow: Int32Array.from(flat.cuts, (_, cut) => (1 + features + cut) * words)
		};
		byWidth.set(words, place);
	}
	return { ...place, bits: scratch };
}
