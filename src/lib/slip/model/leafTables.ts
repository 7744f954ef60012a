import type { TreeModel } from './treeModel';

/**
 * The trees of a small model as tables: which leaves of every tree are still open when the value of one feature lies
 * between two of its cuts. What all features leave open together is the one leaf that a row falls into.
 */
export interface LeafTables {
	/** 32-bit words that hold the open leaves of all trees, some trees a word */
	readonly words: number;
	/** 8, 16 or 32 bits a tree */
	readonly bits: number;
	readonly features: readonly FeatureTable[];
	/** words in which every leaf that there is is open */
	readonly all: Int32Array;
	/** values of the leaves, `bits` places a tree */
	readonly leaves: Float64Array;
	readonly trees: number;
}

export interface FeatureTable {
	/** index of the feature */
	readonly feature: number;
	/** the values at which some branch cuts, ascending */
	readonly cuts: Float64Array;
	/** `words` words for each interval of the cuts, and at the end those for a missing value */
	readonly open: Int32Array;
}

const made = new WeakMap<object, { tables: LeafTables | null }>();

/** The tables of a model, made once; null where a tree has more than 32 leaves. */
export function leafTables(model: TreeModel): LeafTables | null {
	let kept = made.get(model.trees);
	if (!kept) made.set(model.trees, (kept = { tables: tablesOf(model) }));
	return kept.tables;
}

/** A branch and the leaves on its two sides, as bits. */
interface Branch {
	readonly tree: number;
	readonly feature: number;
	readonly cut: number;
	readonly missingLeft: boolean;
	readonly left: number;
	readonly right: number;
}

function tablesOf({ trees, names }: TreeModel): LeafTables | null {
	const branches: Branch[] = [];
	const leavesOf = trees.map((tree, k) => {
		const leaves: number[] = [];
		const gather = (at: number): number => {
			const node = tree[at];
			if (node.length === 1) return 1 << (leaves.push(node[0]) - 1);
			const left = gather(node[3]);
			const right = gather(node[4]);
			const [feature, cut, missing] = node;
			branches.push({ tree: k, feature, cut, missingLeft: missing === 1, left, right });
			return left | right;
		};
		gather(0);
		return leaves;
	});
	const largest = Math.max(1, ...leavesOf.map(({ length }) => length));
	if (largest > 32) return null;
	const bits = largest <= 8 ? 8 : largest <= 16 ? 16 : 32;
	const words = Math.ceil((trees.length * bits) / 32);
	const leaves = new Float64Array(trees.length * bits);
	const all = new Int32Array(words);
	leavesOf.forEach((values, k) => {
		leaves.set(values, k * bits);
		const there = values.length === 32 ? -1 : (1 << values.length) - 1;
		all[(k * bits) >> 5] |= there << ((k * bits) & 31);
	});
	const features = names.flatMap((_, feature) => {
		const own = branches.filter((branch) => branch.feature === feature);
		return own.length > 0 ? [tableOf(feature, own, words, bits)] : [];
	});
	return { words, bits, features, all, leaves, trees: trees.length };
}

function tableOf(feature: number, branches: readonly Branch[], words: number, bits: number): FeatureTable {
	const cuts = Float64Array.from(new Set(branches.map(({ cut }) => cut))).sort();
	const open = new Int32Array((cuts.length + 2) * words).fill(-1);
	const close = (interval: number, { tree }: Branch, leaves: number) => {
		const bit = tree * bits;
		open[interval * words + (bit >> 5)] &= ~(leaves << (bit & 31));
	};
	for (const branch of branches) {
		for (let interval = 0; interval <= cuts.length; interval++) {
			// interval i holds the values above cut i - 1 and up to cut i
			const goesLeft = interval < cuts.length && cuts[interval] <= branch.cut;
			close(interval, branch, goesLeft ? branch.right : branch.left);
		}
		close(cuts.length + 1, branch, branch.missingLeft ? branch.right : branch.left);
	}
	return { feature, cuts, open };
}
