import { median, medianBetween } from '$lib/drivetrain/median';
import { at, type Placed } from './candidateFeatures';
import type { RideContext } from './rideContext';

const FROM = -3;
const TO = 5;
export const POWER_FEATURES = [
	'power before W',
	'power before of usual',
	'power after of before',
	...Array.from({ length: TO - FROM + 1 }, (_, i) => `power of before at ${i + FROM} s`),
	'least power of before',
	'second least power of before',
	'power lost in seconds',
	'power before scatter',
	'least power against after',
	'power two before of before',
	'torque kept at peak',
	'power at peak against seconds beside',
	'power after peak against seconds beside',
	'power noise',
	'power lost in power noise',
	'power lost at peak in power noise'
];

/** The same memory for every candidate. */
const early = new Float64Array(5);

/** Power around a candidate against the power before it: in a slip it collapses together with the jump. */
export function powerFeatures(context: RideContext, placed: Placed, out: number[]): void {
	const { powerW, cadenceRpm } = context.signals.grid;
	const { from, to, peak } = placed;
	const before = medianBetween(powerW, from - 6, from - 1);
	const after = medianBetween(powerW, to + 3, to + 8);
	const reference = Math.max(25, before);
	out.push(before, before / context.usualPowerW, ratio(after, reference));
	for (let k = FROM; k <= TO; k++) out.push(ratio(at(powerW, peak + k), reference));
	let least = Infinity;
	let second = Infinity;
	let lost = 0;
	for (let t = from - 1; t <= to + 3; t++) {
		const share = ratio(at(powerW, t), reference);
		if (share < least) {
			second = least;
			least = share;
		} else if (share < second) second = share;
		if (share < 1) lost += 1 - share;
	}
	out.push(finite(least), finite(second), lost);
	for (let k = 0; k < early.length; k++) early[k] = Math.abs(at(powerW, from - 2 - k) - before);
	out.push(median(early) / reference);
	out.push(ratio(least * reference, Math.max(25, after)));
	out.push(ratio(at(powerW, from - 2), reference));
	const torqueBefore = before / medianBetween(cadenceRpm, from - 6, from - 1);
	out.push(ratio(at(powerW, peak) / at(cadenceRpm, peak), torqueBefore));
	const beside = (t: number) => Math.max(25, (at(powerW, t - 1) + at(powerW, t + 1)) / 2);
	out.push(ratio(at(powerW, peak), beside(peak)), ratio(at(powerW, peak + 1), beside(peak + 1)));
	const powerNoise = context.powerNoise[peak];
	out.push(
		powerNoise,
		(1 - finite(least)) / powerNoise,
		(1 - ratio(at(powerW, peak), reference)) / powerNoise
	);
}

function ratio(value: number, reference: number): number {
	return Math.min(4, value / reference);
}

function finite(value: number): number {
	return Number.isFinite(value) ? value : NaN;
}
