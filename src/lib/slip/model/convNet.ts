/**
 * A small net that reads the seconds around a candidate: three layers of convolution over time, the second of which adds
 * to what it reads; the seconds around the peak, the mean and the maximum of all seconds and some facts go through one
 * layer more. All layers but the last cut off at 0. Written by tests/bench/training, which names its data and seed.
 */
export interface NetShape {
	/** rows that it reads, one number a second each */
	readonly channels: number;
	readonly seconds: number;
	/** index of the peak's second */
	readonly peak: number;
	/** numbers that it reads once */
	readonly extras: number;
	/** rows of each layer of convolution */
	readonly filters: number;
	/** width of the last layer but one */
	readonly dense: number;
}

/** Widths of the layers of convolution, s. */
export const WIDTHS = [5, 5, 3] as const;
/** Zeros on both sides of each row, so that convolution needs no bounds. */
export const PAD = 2;
/** The last layers see so many seconds on each side of the peak as they are. */
export const NEAR_S = 3;

/** Where each layer's numbers begin in the list of parameters. */
export function netLayout({ channels, extras, filters, dense }: NetShape) {
	const joined = filters * (2 * NEAR_S + 1) + 2 * filters + extras;
	let length = 0;
	const take = (count: number) => {
		const from = length;
		length += count;
		return from;
	};
	const layer = (inputs: number, width: number) => ({
		weights: take(filters * inputs * width),
		biases: take(filters),
		inputs,
		width
	});
	const convolutions = [layer(channels, WIDTHS[0]), layer(filters, WIDTHS[1]), layer(filters, WIDTHS[2])];
	const denseWeights = take(dense * joined);
	const denseBiases = take(dense);
	const outWeights = take(dense);
	const outBias = take(1);
	return { convolutions, joined, denseWeights, denseBiases, outWeights, outBias, length };
}
export type NetLayout = ReturnType<typeof netLayout>;

/** Memory for one pass of a net. */
export interface NetMemory {
	/** inputs and the outputs of each layer of convolution, rows of `stride` with PAD zeros on both sides */
	readonly rows: readonly Float64Array[];
	readonly stride: number;
	/** what the last layers read; its end holds the extras */
	readonly joined: Float64Array;
	/** where each filter is greatest, for learning */
	readonly greatest: Int32Array;
	readonly dense: Float64Array;
}

export function netMemory(shape: NetShape): NetMemory {
	const stride = shape.seconds + 2 * PAD;
	const rows = [shape.channels, shape.filters, shape.filters, shape.filters].map(
		(count) => new Float64Array(count * stride)
	);
	return {
		rows,
		stride,
		joined: new Float64Array(netLayout(shape).joined),
		greatest: new Int32Array(shape.filters),
		dense: new Float64Array(shape.dense)
	};
}

/** The part of `joined` into which the extras are written. */
export function extrasOf({ joined }: NetMemory, shape: NetShape): Float64Array {
	return joined.subarray(joined.length - shape.extras);
}

/**
 * One pass through the net over what lies in `memory.rows[0]` and at the end of `memory.joined`.
 *
 * @param parameters in the order of netLayout
 * @returns log odds
 */
export function netLogOdds(
	shape: NetShape,
	layout: NetLayout,
	parameters: Float32Array,
	memory: NetMemory
): number {
	joinSeconds(shape, layout, parameters, memory);
	return lastLayers(shape, layout, parameters, memory);
}

/** Convolutions, and what the last layers read of them, which goes into `memory.joined` before the extras. */
export function joinSeconds(
	{ filters, seconds, peak }: NetShape,
	layout: NetLayout,
	parameters: Float32Array,
	{ rows, stride, joined, greatest }: NetMemory
): void {
	layout.convolutions.forEach((layer, l) => {
		convolve(rows[l], rows[l + 1], layer, parameters, filters, seconds, stride);
		if (l === 1) addRows(rows[1], rows[2]);
	});
	const last = rows[3];
	const near = 2 * NEAR_S + 1;
	for (let f = 0; f < filters; f++) {
		const from = f * stride + PAD;
		let sum = 0;
		let most = -1;
		for (let t = from; t < from + seconds; t++) {
			sum += last[t];
			if (last[t] > most) {
				most = last[t];
				greatest[f] = t;
			}
		}
		for (let k = 0; k < near; k++) joined[f * near + k] = last[from + peak - NEAR_S + k];
		joined[filters * near + f] = sum / seconds;
		joined[filters * (near + 1) + f] = most;
	}
}

/** The last two layers over `memory.joined`; returns log odds. */
export function lastLayers(
	shape: NetShape,
	layout: NetLayout,
	parameters: Float32Array,
	{ joined, dense }: NetMemory
): number {
	let logOdds = parameters[layout.outBias];
	for (let d = 0; d < shape.dense; d++) {
		let sum = parameters[layout.denseBiases + d];
		const row = layout.denseWeights + d * joined.length;
		for (let i = 0; i < joined.length; i++) sum += parameters[row + i] * joined[i];
		dense[d] = sum > 0 ? sum : 0;
		logOdds += parameters[layout.outWeights + d] * dense[d];
	}
	return logOdds;
}

function convolve(
	from: Float64Array,
	to: Float64Array,
	{ weights, biases, inputs, width }: NetLayout['convolutions'][number],
	parameters: Float32Array,
	filters: number,
	seconds: number,
	stride: number
): void {
	const narrow = width === 3;
	for (let f = 0; f < filters; f++) {
		const out = f * stride + PAD;
		const end = out + seconds;
		to.fill(parameters[biases + f], out, end);
		for (let i = 0; i < inputs; i++) {
			// five taps at once, the outer two of a narrow layer being 0: much quicker than one after the other
			const weight = weights + (f * inputs + i) * width - (narrow ? 1 : 0);
			const w0 = narrow ? 0 : parameters[weight];
			const w1 = parameters[weight + 1];
			const w2 = parameters[weight + 2];
			const w3 = parameters[weight + 3];
			const w4 = narrow ? 0 : parameters[weight + 4];
			let k = i * stride;
			let x0 = from[k++];
			let x1 = from[k++];
			let x2 = from[k++];
			let x3 = from[k++];
			for (let t = out; t < end; t++) {
				const x4 = from[k++];
				to[t] += w0 * x0 + w1 * x1 + w2 * x2 + w3 * x3 + w4 * x4;
				x0 = x1;
				x1 = x2;
				x2 = x3;
				x3 = x4;
			}
		}
		for (let t = out; t < end; t++) if (to[t] < 0) to[t] = 0;
	}
}

function addRows(from: Float64Array, to: Float64Array): void {
	for (let t = 0; t < to.length; t++) to[t] += from[t];
}
