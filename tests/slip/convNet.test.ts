import { describe, expect, it } from 'vitest';
import { extrasOf, netLayout, netLogOdds, netMemory, PAD, type NetShape } from '$lib/slip/model/convNet';
import { random } from '../../sample-rides/generator/random';
import { addGradient, backMemory } from '../bench/training/netGradients';

const shape: NetShape = { channels: 3, seconds: 12, peak: 5, extras: 2, filters: 4, dense: 6 };
const layout = netLayout(shape);

function drawn(seed: number) {
	const chance = random(seed);
	const parameters = Float32Array.from({ length: layout.length }, () => chance.normal(0, 0.4));
	const memory = netMemory(shape);
	for (let c = 0; c < shape.channels; c++) {
		for (let t = 0; t < shape.seconds; t++) memory.rows[0][c * memory.stride + PAD + t] = chance.normal(0, 1);
	}
	extrasOf(memory, shape).set([0.3, -0.7]);
	return { parameters, memory };
}

/** The same net written down once more, without padding or memory. */
function plainLogOdds(
	parameters: Float32Array,
	read: (c: number, t: number) => number,
	extras: number[]
): number {
	const { filters, seconds, peak } = shape;
	const value = (rows: number[][], i: number, t: number) => (t < 0 || t >= seconds ? 0 : rows[i][t]);
	let rows = Array.from({ length: shape.channels }, (_, c) =>
		Array.from({ length: seconds }, (_, t) => read(c, t))
	);
	layout.convolutions.forEach(({ weights, biases, inputs, width }, l) => {
		const next = Array.from({ length: filters }, (_, f) =>
			Array.from({ length: seconds }, (_, t) => {
				let sum = parameters[biases + f];
				for (let i = 0; i < inputs; i++)
					for (let k = 0; k < width; k++)
						sum +=
							parameters[weights + (f * inputs + i) * width + k] * value(rows, i, t + k - (width - 1) / 2);
				return Math.max(0, sum) + (l === 1 ? rows[f][t] : 0);
			})
		);
		rows = next;
	});
	const joined = [
		...rows.flatMap((row) => row.slice(peak - 3, peak + 4)),
		...rows.map((row) => row.reduce((sum, v) => sum + v, 0) / seconds),
		...rows.map((row) => Math.max(...row)),
		...extras
	];
	let logOdds = parameters[layout.outBias];
	for (let d = 0; d < shape.dense; d++) {
		const sum = joined.reduce(
			(total, v, i) => total + v * parameters[layout.denseWeights + d * joined.length + i],
			parameters[layout.denseBiases + d]
		);
		logOdds += Math.max(0, sum) * parameters[layout.outWeights + d];
	}
	return logOdds;
}

describe('netLogOdds', () => {
	it('gives what the net gives when it is written down plainly', () => {
		for (const seed of [1, 2, 3]) {
			const { parameters, memory } = drawn(seed);
			const read = (c: number, t: number) => memory.rows[0][c * memory.stride + PAD + t];
			const plain = plainLogOdds(parameters, read, [...extrasOf(memory, shape)]);
			expect(Math.abs(plain)).toBeGreaterThan(0.01);
			expect(netLogOdds(shape, layout, parameters, memory)).toBeCloseTo(plain, 4);
		}
	});
});

describe('addGradient', () => {
	it('is the slope of the loss by each parameter, as found by moving it a little', () => {
		const { parameters, memory } = drawn(4);
		const extras = [...extrasOf(memory, shape)];
		const back = backMemory(memory);
		const gradient = new Float32Array(layout.length);
		addGradient(shape, layout, parameters, memory, back, 1, 2, gradient);
		const read = (c: number, t: number) => memory.rows[0][c * memory.stride + PAD + t];
		const loss = () => 2 * Math.log1p(Math.exp(-plainLogOdds(parameters, read, extras)));
		let greatest = 0;
		let tried = 0;
		let otherwise = 0;
		for (let i = 0; i < layout.length; i += 3) {
			const was = parameters[i];
			const step = 2 ** -10;
			parameters[i] = was + step;
			const above = loss();
			parameters[i] = was - step;
			const below = loss();
			parameters[i] = was;
			const slope = (above - below) / (2 * step);
			greatest = Math.max(greatest, Math.abs(slope));
			tried++;
			if (Math.abs(gradient[i] - slope) > 0.003 + 0.01 * Math.abs(slope)) otherwise++;
		}
		expect(greatest).toBeGreaterThan(0.1);
		// where a layer is just cut off at 0 the loss has a bend, and no slope
		expect(tried).toBeGreaterThan(100);
		expect(otherwise / tried).toBeLessThan(0.02);
	});
});
