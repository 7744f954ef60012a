import { extrasOf, netLayout, netLogOdds, netMemory, PAD, type NetShape } from './convNet';
import { WINDOW_BEFORE_S, WINDOW_S, type SlipWindow } from '../slipWindow';
import { CHANNELS, WINDOW_EXTRAS, windowInputs } from '../windowInputs';

/** Nets of one shape whose mean is told. Written by tests/bench/training/train.ts, which names its data and seed. */
export interface NetModel {
	readonly nets: readonly {
		/** value of one step */
		readonly step: number;
		/** parameters in steps, whole numbers of 16 bits, lower byte first, as base64 */
		readonly steps: string;
	}[];
}

export const SLIP_NET: NetShape = {
	channels: CHANNELS,
	seconds: WINDOW_S,
	peak: WINDOW_BEFORE_S,
	extras: WINDOW_EXTRAS,
	filters: 20,
	dense: 48
};
const LARGEST_STEP = 32767;

/** Parameters of nets as they are kept, rounded to 16 bits. */
export function packNets(nets: readonly Float32Array[]): NetModel {
	return {
		nets: nets.map((parameters) => {
			const largest = parameters.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
			const step = Number((largest / LARGEST_STEP).toPrecision(6)) || 1;
			let bytes = '';
			for (const value of parameters) {
				const whole = Math.max(-LARGEST_STEP, Math.min(LARGEST_STEP, Math.round(value / step))) & 0xffff;
				bytes += String.fromCharCode(whole & 0xff, whole >> 8);
			}
			return { step, steps: btoa(bytes) };
		})
	};
}

/** The parameters of each net. */
export function unpackNets(model: NetModel): Float32Array[] {
	return model.nets.map(({ step, steps }) => {
		const bytes = atob(steps);
		return Float32Array.from({ length: bytes.length / 2 }, (_, i) => {
			const whole = bytes.charCodeAt(2 * i) | (bytes.charCodeAt(2 * i + 1) << 8);
			return step * (whole < 0x8000 ? whole : whole - 0x10000);
		});
	});
}

/**
 * Gives windows the mean log odds of nets.
 *
 * @param nets parameters of each, in the order of netLayout(SLIP_NET)
 * @returns log odds at the prevalence of the training set
 */
export function netReader(nets: readonly Float32Array[]): (window: SlipWindow) => number {
	const layout = netLayout(SLIP_NET);
	const memory = netMemory(SLIP_NET);
	const extras = extrasOf(memory, SLIP_NET);
	return (window) => {
		let sum = 0;
		windowInputs(window, memory.rows[0], memory.stride, PAD, extras);
		for (const parameters of nets) sum += netLogOdds(SLIP_NET, layout, parameters, memory);
		return sum / nets.length;
	};
}
