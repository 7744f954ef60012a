import type { Random } from '../../../sample-rides/generator/random';
import type { TreeModel } from '../../../src/lib/slip/model/treeModel';
import { binOf, BINS, cutPoints } from './treeBins';

/**
 * Gradient-boosted trees on binned values with logistic loss (Friedman, Greedy function approximation, Annals of
 * Statistics 29, 2001; second-order gains with shrinkage of leaves). Missing values go to the side that fits
 * better. A feature may be held monotone: raising it never lowers (or raises) the result.
 */
export interface GrowOptions {
	readonly trees: number;
	readonly depth: number;
	readonly learningRate: number;
	/** weight that a leaf must hold at least, in units of the second derivative */
	readonly leastHessian: number;
	readonly shrinkage: number;
	readonly rowShare: number;
	readonly columnShare: number;
	/** by feature: 1 = rising, -1 = falling, 0 = free */
	readonly monotone: Int8Array;
	/** NaN counts as the lowest value where this is false */
	readonly names: readonly string[];
	/** log odds that each row has before the trees; 0 when left out */
	readonly offset?: Float64Array;
}

const UNEXPLAINED = 0.05;

interface Node {
	feature: number;
	bin: number;
	missingLeft: boolean;
	left: number;
	right: number;
	value: number;
	low: number;
	high: number;
	gradient: number;
	hessian: number;
}

export function growTrees(
	rows: readonly Float64Array[],
	target: Float64Array,
	weight: Float64Array,
	options: GrowOptions,
	chance: Random
): TreeModel {
	const count = rows.length;
	const features = options.names.length;
	const cuts = Array.from({ length: features }, (_, f) => cutPoints(rows, f, chance));
	// one row after the other, because a row's features are looked at together
	const bins = new Uint8Array(count * features);
	for (let i = 0; i < count; i++) {
		for (let f = 0; f < features; f++) bins[i * features + f] = binOf(rows[i][f], cuts[f]);
	}
	let positive = 0;
	let total = 0;
	for (let i = 0; i < count; i++) {
		positive += target[i] * weight[i];
		total += weight[i];
	}
	const bias = Math.log(positive / (total - positive));
	const sum = Float64Array.from({ length: count }, (_, i) => bias + (options.offset?.[i] ?? 0));
	const gradient = new Float64Array(count);
	const hessian = new Float64Array(count);
	const trees: TreeModel['trees'] = [];
	for (let n = 0; n < options.trees; n++) {
		for (let i = 0; i < count; i++) {
			const p = 1 / (1 + Math.exp(-sum[i]));
			gradient[i] = weight[i] * (target[i] - p);
			hessian[i] = weight[i] * Math.max(1e-6, p * (1 - p));
		}
		// rows that are well explained already are sampled and weighted up (gradient-based one-side sampling)
		const chosenRows: number[] = [];
		for (let i = 0; i < count; i++) {
			if (Math.abs(gradient[i]) > UNEXPLAINED) chosenRows.push(i);
			else if (chance.next() < options.rowShare) {
				gradient[i] /= options.rowShare;
				hessian[i] /= options.rowShare;
				chosenRows.push(i);
			}
		}
		const columns: number[] = [];
		for (let f = 0; f < features; f++) if (chance.next() < options.columnShare) columns.push(f);
		const nodes = growTree(Int32Array.from(chosenRows), columns, bins, gradient, hessian, options);
		for (let i = 0; i < count; i++) sum[i] += valueOf(nodes, bins, i * features);
		trees.push(compact(nodes, cuts));
	}
	return { names: [...options.names], bias, trees };
}

function growTree(
	rows: Int32Array,
	columns: readonly number[],
	bins: Uint8Array,
	gradient: Float64Array,
	hessian: Float64Array,
	options: GrowOptions
): Node[] {
	const features = options.names.length;
	const chosen = Int32Array.from(columns);
	const nodes: Node[] = [leaf(-Infinity, Infinity)];
	for (const i of rows) {
		nodes[0].gradient += gradient[i];
		nodes[0].hessian += hessian[i];
	}
	const sums = (part: Part) => addUp(rows, part, chosen, bins, features, gradient, hessian);
	const spare = new Int32Array(rows.length);
	let open: Part[] = [{ node: 0, from: 0, to: rows.length, histogram: null }];
	open[0].histogram = sums(open[0]);
	for (let level = 0; level < options.depth; level++) {
		const next: Part[] = [];
		for (const part of open) {
			const best: Best = { gain: 1e-6, feature: -1, bin: 0, missingLeft: false, gl: 0, hl: 0 };
			const node = nodes[part.node];
			chosen.forEach((f, c) => bestSplit(node, part.histogram!, c * BINS * 2, f, options, best));
			if (best.feature < 0) continue;
			const [left, right] = split(nodes, part.node, best, options);
			const middle = partition(rows, part, node, bins, features, spare);
			if (level + 1 === options.depth) continue;
			const one: Part = { node: left, from: part.from, to: middle, histogram: null };
			const other: Part = { node: right, from: middle, to: part.to, histogram: null };
			const [small, large] = one.to - one.from < other.to - other.from ? [one, other] : [other, one];
			// the larger side is what is left when the smaller is taken away
			small.histogram = sums(small);
			large.histogram = part.histogram!;
			for (let k = 0; k < large.histogram.length; k++) large.histogram[k] -= small.histogram[k];
			next.push(one, other);
		}
		open = next;
	}
	for (const node of nodes) {
		const raw = node.gradient / (node.hessian + options.shrinkage);
		node.value = options.learningRate * Math.max(node.low, Math.min(node.high, raw));
	}
	return nodes;
}

/** Rows of one node lie side by side. */
interface Part {
	readonly node: number;
	readonly from: number;
	readonly to: number;
	/** sums of gradient and hessian by column and bin */
	histogram: Float64Array | null;
}

function addUp(
	rows: Int32Array,
	{ from, to }: Part,
	columns: Int32Array,
	bins: Uint8Array,
	features: number,
	gradient: Float64Array,
	hessian: Float64Array
): Float64Array {
	const histogram = new Float64Array(columns.length * BINS * 2);
	for (let k = from; k < to; k++) {
		const i = rows[k];
		const g = gradient[i];
		const h = hessian[i];
		const start = i * features;
		for (let c = 0; c < columns.length; c++) {
			const cell = (c * BINS + bins[start + columns[c]]) * 2;
			histogram[cell] += g;
			histogram[cell + 1] += h;
		}
	}
	return histogram;
}

/** Moves a node's rows so that those that go left come first; returns where the others begin. */
function partition(
	rows: Int32Array,
	{ from, to }: Part,
	node: Node,
	bins: Uint8Array,
	features: number,
	spare: Int32Array
): number {
	let left = from;
	let right = 0;
	for (let k = from; k < to; k++) {
		if (goesLeft(node, bins[rows[k] * features + node.feature])) rows[left++] = rows[k];
		else spare[right++] = rows[k];
	}
	rows.set(spare.subarray(0, right), left);
	return left;
}

const leaf = (low: number, high: number): Node => ({
	feature: -1,
	bin: 0,
	missingLeft: false,
	left: -1,
	right: -1,
	value: 0,
	low,
	high,
	gradient: 0,
	hessian: 0
});

type Best = { gain: number; feature: number; bin: number; missingLeft: boolean; gl: number; hl: number };

/** Tries every cut of one feature in one node; bin 0 holds the missing values. */
function bestSplit(
	node: Node,
	histogram: Float64Array,
	offset: number,
	f: number,
	options: GrowOptions,
	best: Best
) {
	const { shrinkage, leastHessian } = options;
	const g = node.gradient;
	const h = node.hessian;
	const whole = (g * g) / (h + shrinkage);
	const direction = options.monotone[f];
	for (const missingLeft of [false, true]) {
		if (missingLeft && histogram[offset + 1] < 1e-9) break;
		let gl = missingLeft ? histogram[offset] : 0;
		let hl = missingLeft ? histogram[offset + 1] : 0;
		for (let b = 1; b < BINS - 1; b++) {
			gl += histogram[offset + 2 * b];
			hl += histogram[offset + 2 * b + 1];
			const hr = h - hl;
			if (hl < leastHessian) continue;
			if (hr < leastHessian) break;
			const gr = g - gl;
			const gain = (gl * gl) / (hl + shrinkage) + (gr * gr) / (hr + shrinkage) - whole;
			if (gain <= best.gain) continue;
			if (direction !== 0 && direction * (gr / (hr + shrinkage) - gl / (hl + shrinkage)) < 0) continue;
			best.gain = gain;
			best.feature = f;
			best.bin = b;
			best.missingLeft = missingLeft;
			best.gl = gl;
			best.hl = hl;
		}
	}
}

function split(nodes: Node[], at: number, best: Best, options: GrowOptions): [number, number] {
	const node = nodes[at];
	const left = leaf(node.low, node.high);
	const right = leaf(node.low, node.high);
	left.gradient = best.gl;
	left.hessian = best.hl;
	right.gradient = node.gradient - best.gl;
	right.hessian = node.hessian - best.hl;
	const direction = options.monotone[best.feature];
	if (direction !== 0) {
		const value = (n: Node) =>
			Math.max(node.low, Math.min(node.high, n.gradient / (n.hessian + options.shrinkage)));
		const middle = (value(left) + value(right)) / 2;
		if (direction > 0) left.high = right.low = middle;
		else left.low = right.high = middle;
	}
	node.feature = best.feature;
	node.bin = best.bin;
	node.missingLeft = best.missingLeft;
	node.left = nodes.push(left) - 1;
	node.right = nodes.push(right) - 1;
	return [node.left, node.right];
}

function goesLeft(node: Node, bin: number): boolean {
	return bin === 0 ? node.missingLeft : bin <= node.bin;
}

/** `start` is where the row begins in `bins`. */
function valueOf(nodes: readonly Node[], bins: Uint8Array, start: number): number {
	let node = nodes[0];
	while (node.feature >= 0) node = nodes[goesLeft(node, bins[start + node.feature]) ? node.left : node.right];
	return node.value;
}

/** [feature, cut, missing goes left, left, right] for a branch; [value] for a leaf. */
function compact(nodes: readonly Node[], cuts: readonly Float64Array[]): TreeModel['trees'][number] {
	return nodes.map((node) =>
		node.feature < 0
			? [Number(node.value.toPrecision(4))]
			: [
					node.feature,
					cuts[node.feature][node.bin - 1] ?? 1e9,
					node.missingLeft ? 1 : 0,
					node.left,
					node.right
				]
	);
}
