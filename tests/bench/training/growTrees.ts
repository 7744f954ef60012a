import type { Random } from '../../../sample-rides/generator/random';
import type { TreeModel } from '../../../src/lib/slip/model/treeModel';

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

const BINS = 64;
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
	const bins = new Uint8Array(count * features);
	for (let f = 0; f < features; f++) {
		for (let i = 0; i < count; i++) bins[f * count + i] = binOf(rows[i][f], cuts[f]);
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
		const nodes = growTree(Int32Array.from(chosenRows), columns, bins, count, gradient, hessian, options);
		for (let i = 0; i < count; i++) sum[i] += valueOf(nodes, bins, count, i);
		trees.push(compact(nodes, cuts));
	}
	return { names: [...options.names], bias, trees };
}

function growTree(
	rows: Int32Array,
	columns: readonly number[],
	bins: Uint8Array,
	count: number,
	gradient: Float64Array,
	hessian: Float64Array,
	options: GrowOptions
): Node[] {
	const nodes: Node[] = [leaf(-Infinity, Infinity)];
	for (const i of rows) {
		nodes[0].gradient += gradient[i];
		nodes[0].hessian += hessian[i];
	}
	let open = [0];
	const nodeOf = new Int32Array(rows.length);
	for (let level = 0; level < options.depth && open.length > 0; level++) {
		const slot = new Int32Array(nodes.length).fill(-1);
		open.forEach((node, k) => (slot[node] = k));
		const best = open.map(() => ({ gain: 1e-6, feature: -1, bin: 0, missingLeft: false, gl: 0, hl: 0 }));
		const histogram = new Float64Array(open.length * BINS * 2);
		for (const f of columns) {
			histogram.fill(0);
			const offset = f * count;
			for (let k = 0; k < rows.length; k++) {
				const at = slot[nodeOf[k]];
				if (at < 0) continue;
				const cell = (at * BINS + bins[offset + rows[k]]) * 2;
				histogram[cell] += gradient[rows[k]];
				histogram[cell + 1] += hessian[rows[k]];
			}
			open.forEach((node, k) => bestSplit(nodes[node], histogram, k * BINS * 2, f, options, best[k]));
		}
		const next: number[] = [];
		open.forEach((node, k) => {
			if (best[k].feature >= 0) next.push(...split(nodes, node, best[k], options));
		});
		for (let k = 0; k < rows.length; k++) {
			const node = nodes[nodeOf[k]];
			if (node.feature < 0) continue;
			nodeOf[k] = goesLeft(node, bins[node.feature * count + rows[k]]) ? node.left : node.right;
		}
		open = next;
	}
	for (const node of nodes) {
		const raw = node.gradient / (node.hessian + options.shrinkage);
		node.value = options.learningRate * Math.max(node.low, Math.min(node.high, raw));
	}
	return nodes;
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
		if (missingLeft && histogram[offset + 1] === 0) break;
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

function valueOf(nodes: readonly Node[], bins: Uint8Array, count: number, i: number): number {
	let node = nodes[0];
	while (node.feature >= 0)
		node = nodes[goesLeft(node, bins[node.feature * count + i]) ? node.left : node.right];
	return node.value;
}

/** Quantile cuts from a sample of the values. */
function cutPoints(rows: readonly Float64Array[], f: number, chance: Random): Float64Array {
	const sample: number[] = [];
	const share = Math.min(1, 40000 / rows.length);
	for (const row of rows) if (!Number.isNaN(row[f]) && chance.next() < share) sample.push(row[f]);
	sample.sort((a, b) => a - b);
	const cuts: number[] = [];
	for (let k = 1; k < BINS - 1; k++) {
		const cut = Number(sample[Math.floor((k * sample.length) / (BINS - 1))]?.toPrecision(4));
		if (cut > (cuts.at(-1) ?? -Infinity)) cuts.push(cut);
	}
	return Float64Array.from(cuts);
}

/** 0 = missing; else 1 + number of cuts below the value: bin <= b means value <= cuts[b - 1]. */
function binOf(value: number, cuts: Float64Array): number {
	if (Number.isNaN(value)) return 0;
	let low = 0;
	let high = cuts.length;
	while (low < high) {
		const middle = (low + high) >> 1;
		if (cuts[middle] < value) low = middle + 1;
		else high = middle;
	}
	return 1 + low;
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
