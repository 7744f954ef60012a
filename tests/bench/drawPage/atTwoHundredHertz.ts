import { minMaxLevels } from '$lib/charts/minMaxLevels';
import type { StripData, StripName } from '$lib/charts/rideStripData';

const RATE = 200;

/**
 * The same ride with every line at 200 values a second: straight between the seconds, with a ripple of two a
 * crank turn, as a logger sees it.
 */
export function atTwoHundredHertz(data: StripData): StripData {
	const levels = Object.fromEntries(
		(Object.keys(data.raw) as StripName[]).map((name) => [
			name,
			minMaxLevels(dense(data.raw[name]), 1 / RATE)
		])
	) as StripData['levels'];
	return { ...data, levels };
}

function dense(values: Float32Array): Float32Array {
	const out = new Float32Array(values.length * RATE);
	for (let i = 0; i < values.length; i++) {
		const [from, to] = [values[i], values[Math.min(values.length - 1, i + 1)]];
		for (let k = 0; k < RATE; k++) {
			const at = k / RATE;
			out[i * RATE + k] = (from + (to - from) * at) * (1 + 0.08 * Math.sin(2 * Math.PI * 2.8 * (i + at)));
		}
	}
	return out;
}
