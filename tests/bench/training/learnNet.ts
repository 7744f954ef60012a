import { random, type Random } from '../../../sample-rides/generator/random';
import { extrasOf, netLayout, netMemory, PAD, type NetLayout } from '../../../src/lib/slip/model/convNet';
import { netReader, SLIP_NET } from '../../../src/lib/slip/model/netModel';
import { emptyWindow } from '../../../src/lib/slip/slipWindow';
import { windowInputs } from '../../../src/lib/slip/windowInputs';
import { addGradient, backMemory } from './netGradients';
import { otherDevice } from './otherDevice';

/** What a net learns from: windows (SlipWindow.flat), 1 for a slip, weight. */
export interface NetRows {
	readonly windows: readonly Float32Array[];
	readonly target: ArrayLike<number>;
	readonly weight: ArrayLike<number>;
}

const EPOCHS = 7;
const BATCH = 256;
const RATE = 2e-3;
const DECAY = 1e-3;
const LEFT_OUT = 0.2;
const STEEPEST = 5;
/** Rows without a slip that the net is this sure of (weight times chance) are drawn now and then only, and weigh more. */
const WELL_KNOWN = 0.03;
const DRAWN = 0.12;
const DRAWN_AT_FIRST = 0.3;
/** After these rounds every row without a slip is looked at anew. */
const LOOKS_AFTER = [0, 3];

/**
 * Learns one net: gradient steps with moments (Kingma and Ba 2015, Adam; decay apart from them, Loshchilov and Hutter
 * 2019), in batches, the rate falling as a cosine; each window as another device might have recorded it.
 *
 * @returns parameters in the order of netLayout
 */
export function learnNet(
	rows: NetRows,
	seed: number,
	say: (line: string) => void = () => {},
	batchRows = BATCH
): Float32Array {
	const chance = random(seed);
	const layout = netLayout(SLIP_NET);
	const parameters = firstParameters(layout, chance);
	const learner = gradientLearner(layout, parameters, chance);
	const asTold = new Float32Array(rows.windows.length).fill(0.5);
	const slips: number[] = [];
	const others: number[] = [];
	rows.windows.forEach((_, i) => {
		if (rows.weight[i] > 0) (rows.target[i] === 1 ? slips : others).push(i);
	});
	for (let epoch = 0; epoch < EPOCHS; epoch++) {
		const drawn = epoch === 0 ? DRAWN_AT_FIRST : DRAWN;
		const order = [...slips];
		const more = new Float32Array(rows.windows.length).fill(1);
		for (const i of others) {
			const clear = epoch === 0 || asTold[i] * rows.weight[i] <= WELL_KNOWN;
			if (clear && chance.next() >= drawn) continue;
			if (clear) more[i] = 1 / drawn;
			order.push(i);
		}
		shuffle(order, chance);
		let loss = 0;
		for (let from = 0; from < order.length; from += batchRows) {
			const batch = order.slice(from, from + batchRows);
			const done = (epoch + from / order.length) / EPOCHS;
			const warm = Math.min(1, (epoch * order.length + from) / (100 * batchRows));
			loss += learner(rows, batch, more, RATE * warm * 0.5 * (1 + Math.cos(Math.PI * done)) + 1e-5, asTold);
		}
		if (LOOKS_AFTER.includes(epoch)) {
			const asked = netReader([parameters]);
			for (const i of others) asTold[i] = 1 / (1 + Math.exp(-asked(emptyWindow(rows.windows[i]))));
		}
		say(`round ${epoch + 1}: ${order.length} rows, loss ${(loss / order.length).toFixed(4)}`);
	}
	return parameters;
}

/** Uniform around 0, narrower the more a number adds up (as in LeCun and others 1998, Efficient BackProp). */
function firstParameters(layout: NetLayout, chance: Random): Float32Array {
	const out = new Float32Array(layout.length);
	const fill = (from: number, end: number, inputs: number) => {
		for (let i = from; i < end; i++) out[i] = chance.between(-1, 1) / Math.sqrt(inputs);
	};
	for (const { weights, biases, inputs, width } of layout.convolutions)
		fill(weights, biases + SLIP_NET.filters, inputs * width);
	fill(layout.denseWeights, layout.outWeights, layout.joined);
	fill(layout.outWeights, layout.length, SLIP_NET.dense);
	return out;
}

function gradientLearner(layout: NetLayout, parameters: Float32Array, chance: Random) {
	const memory = netMemory(SLIP_NET);
	const back = backMemory(memory);
	const extras = extrasOf(memory, SLIP_NET);
	const window = emptyWindow();
	const gradient = new Float32Array(layout.length);
	const first = new Float32Array(layout.length);
	const second = new Float32Array(layout.length);
	let steps = 0;
	return (
		{ windows, target, weight }: NetRows,
		batch: readonly number[],
		more: Float32Array,
		rate: number,
		asTold: Float32Array
	): number => {
		gradient.fill(0);
		let loss = 0;
		for (const i of batch) {
			window.flat.set(windows[i]);
			otherDevice(window, chance);
			windowInputs(window, memory.rows[0], memory.stride, PAD, extras);
			for (let k = 0; k < back.kept.length; k++)
				back.kept[k] = chance.next() < LEFT_OUT ? 0 : 1 / (1 - LEFT_OUT);
			const counts = weight[i] * more[i];
			const logOdds = addGradient(
				SLIP_NET,
				layout,
				parameters,
				memory,
				back,
				target[i],
				counts / batch.length,
				gradient
			);
			asTold[i] = 1 / (1 + Math.exp(-logOdds));
			loss += counts * Math.log1p(Math.exp(target[i] === 1 ? -logOdds : logOdds));
		}
		let steepness = 0;
		for (const g of gradient) steepness += g * g;
		const shorter = Math.min(1, STEEPEST / Math.sqrt(steepness));
		steps++;
		const firstShare = 1 - 0.9 ** steps;
		const secondShare = 1 - 0.999 ** steps;
		for (let i = 0; i < parameters.length; i++) {
			const g = gradient[i] * shorter;
			first[i] = 0.9 * first[i] + 0.1 * g;
			second[i] = 0.999 * second[i] + 0.001 * g * g;
			const step = first[i] / firstShare / (Math.sqrt(second[i] / secondShare) + 1e-8);
			parameters[i] -= rate * (step + DECAY * parameters[i]);
		}
		return loss;
	};
}

function shuffle(order: number[], chance: Random): void {
	for (let i = order.length - 1; i > 0; i--) {
		const k = Math.floor(chance.next() * (i + 1));
		[order[i], order[k]] = [order[k], order[i]];
	}
}
