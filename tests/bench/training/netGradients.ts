import {
	joinSeconds,
	lastLayers,
	NEAR_S,
	PAD,
	type NetLayout,
	type NetMemory,
	type NetShape
} from '../../../src/lib/slip/model/convNet';

/** Memory for the way back through a net. */
export interface BackMemory {
	readonly rows: readonly Float64Array[];
	readonly joined: Float64Array;
	/** 0 where what the last layers read is left out this time, else what makes up for the rest */
	readonly kept: Float64Array;
}

export function backMemory(memory: NetMemory): BackMemory {
	return {
		rows: memory.rows.map((row) => new Float64Array(row.length)),
		joined: new Float64Array(memory.joined.length),
		kept: new Float64Array(memory.joined.length).fill(1)
	};
}

/**
 * One pass there and one back over what lies in `memory` (the chain rule backwards, as in Rumelhart, Hinton and Williams
 * 1986, Nature 323): adds the gradient of the weighted logistic loss to `gradient`.
 *
 * @param target 1 for a slip, 0 for none
 * @returns log odds before the step
 */
export function addGradient(
	shape: NetShape,
	layout: NetLayout,
	parameters: Float32Array,
	memory: NetMemory,
	back: BackMemory,
	target: number,
	weight: number,
	gradient: Float32Array
): number {
	joinSeconds(shape, layout, parameters, memory);
	for (let i = 0; i < back.kept.length; i++) memory.joined[i] *= back.kept[i];
	const logOdds = lastLayers(shape, layout, parameters, memory);
	const off = weight * (1 / (1 + Math.exp(-logOdds)) - target);
	backLast(shape, layout, parameters, memory, back, off, gradient);
	backJoined(shape, memory, back);
	for (let l = 2; l >= 0; l--) {
		if (l === 1) {
			// the second layer adds to the first: its own part stops where it was cut off at 0
			const [, first, second] = memory.rows;
			const [, backFirst, backSecond] = back.rows;
			for (let t = 0; t < second.length; t++) {
				backFirst[t] = backSecond[t];
				if (!(second[t] > first[t])) backSecond[t] = 0;
			}
		} else {
			const out = memory.rows[l + 1];
			for (let t = 0; t < out.length; t++) if (!(out[t] > 0)) back.rows[l + 1][t] = 0;
		}
		if (l === 2) back.rows[2].fill(0);
		backConvolution(shape, layout.convolutions[l], parameters, memory, back, l, gradient);
	}
	return logOdds;
}

function backLast(
	shape: NetShape,
	layout: NetLayout,
	parameters: Float32Array,
	{ joined, dense }: NetMemory,
	back: BackMemory,
	off: number,
	gradient: Float32Array
): void {
	back.joined.fill(0);
	gradient[layout.outBias] += off;
	for (let d = 0; d < shape.dense; d++) {
		gradient[layout.outWeights + d] += off * dense[d];
		if (!(dense[d] > 0)) continue;
		const here = off * parameters[layout.outWeights + d];
		gradient[layout.denseBiases + d] += here;
		const row = layout.denseWeights + d * joined.length;
		for (let i = 0; i < joined.length; i++) {
			gradient[row + i] += here * joined[i];
			back.joined[i] += here * parameters[row + i];
		}
	}
}

/** From what the last layers read to the seconds that it was taken from. */
function backJoined(
	{ filters, seconds, peak }: NetShape,
	{ stride, greatest }: NetMemory,
	back: BackMemory
): void {
	const near = 2 * NEAR_S + 1;
	const out = back.rows[3];
	for (let i = 0; i < back.joined.length; i++) back.joined[i] *= back.kept[i];
	for (let f = 0; f < filters; f++) {
		const from = f * stride + PAD;
		out.fill(back.joined[filters * near + f] / seconds, from, from + seconds);
		for (let k = 0; k < near; k++) out[from + peak - NEAR_S + k] += back.joined[f * near + k];
		out[greatest[f]] += back.joined[filters * (near + 1) + f];
	}
}

function backConvolution(
	{ filters, seconds }: NetShape,
	{ weights, biases, inputs, width }: NetLayout['convolutions'][number],
	parameters: Float32Array,
	memory: NetMemory,
	back: BackMemory,
	l: number,
	gradient: Float32Array
): void {
	const { stride } = memory;
	const narrow = width === 3;
	const from = memory.rows[l];
	const backFrom = back.rows[l];
	const backTo = back.rows[l + 1];
	for (let f = 0; f < filters; f++) {
		const out = f * stride + PAD;
		const end = out + seconds;
		let sum = 0;
		let any = false;
		for (let t = out; t < end; t++) {
			sum += backTo[t];
			any ||= backTo[t] !== 0;
		}
		if (!any) continue;
		gradient[biases + f] += sum;
		for (let i = 0; i < inputs; i++) {
			const weight = weights + (f * inputs + i) * width - (narrow ? 1 : 0);
			let g0 = 0;
			let g1 = 0;
			let g2 = 0;
			let g3 = 0;
			let g4 = 0;
			let source = i * stride;
			let x0 = from[source++];
			let x1 = from[source++];
			let x2 = from[source++];
			let x3 = from[source++];
			for (let t = out; t < end; t++) {
				const x4 = from[source++];
				const b = backTo[t];
				g0 += b * x0;
				g1 += b * x1;
				g2 += b * x2;
				g3 += b * x3;
				g4 += b * x4;
				x0 = x1;
				x1 = x2;
				x2 = x3;
				x3 = x4;
			}
			if (!narrow) {
				gradient[weight] += g0;
				gradient[weight + 4] += g4;
			}
			gradient[weight + 1] += g1;
			gradient[weight + 2] += g2;
			gradient[weight + 3] += g3;
			if (l === 0) continue;
			const w0 = narrow ? 0 : parameters[weight];
			const w1 = parameters[weight + 1];
			const w2 = parameters[weight + 2];
			const w3 = parameters[weight + 3];
			const w4 = narrow ? 0 : parameters[weight + 4];
			// backTo is 0 beside the window
			let k = out + PAD;
			let b4 = backTo[k - 4];
			let b3 = backTo[k - 3];
			let b2 = backTo[k - 2];
			let b1 = backTo[k - 1];
			for (let to = i * stride + PAD; to < i * stride + PAD + seconds; to++) {
				const b0 = backTo[k++];
				backFrom[to] += w0 * b0 + w1 * b1 + w2 * b2 + w3 * b3 + w4 * b4;
				b4 = b3;
				b3 = b2;
				b2 = b1;
				b1 = b0;
			}
		}
	}
}
