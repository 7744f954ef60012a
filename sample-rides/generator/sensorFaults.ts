import type { Random } from './random';

/** Missed pulses: single samples of speed fall by 14 to 30 % while nothing happened. */
export function addDips(speed: Float64Array, perHour: number, chance: Random): number {
	return strike(speed, perHour, chance, (v) => v * (1 - chance.between(0.14, 0.3)));
}

/** Single samples of cadence that are far too high. */
export function addSpikes(cadence: Float64Array, perHour: number, chance: Random): number {
	return strike(cadence, perHour, chance, (n) => Math.min(250, n * chance.between(1.2, 2)));
}

function strike(
	values: Float64Array,
	perHour: number,
	chance: Random,
	change: (v: number) => number
): number {
	if (perHour <= 0) return 0;
	let count = 0;
	for (
		let t = chance.exponential(3600 / perHour);
		t < values.length;
		t += chance.exponential(3600 / perHour)
	) {
		const i = Math.floor(t);
		if (!(values[i] > 1)) continue;
		values[i] = change(values[i]);
		count++;
	}
	return count;
}

/** Devices that renew a value only every few seconds hold it in between. */
export function hold(values: Float64Array, updateS: number): void {
	if (updateS <= 1) return;
	let renewed = 0;
	for (let t = 1; t < values.length; t++) {
		if (t - renewed >= updateS) renewed = updateS * Math.floor(t / updateS);
		values[t] = values[Math.floor(renewed)];
	}
}

export function quantise(values: Float64Array, step: number): void {
	const perUnit = 1 / step;
	for (let t = 0; t < values.length; t++) values[t] = Math.round(values[t] * perUnit) / perUnit;
}

/** A sensor out of reach: stretches without values. */
export function lose(values: Float64Array, perHour: number, chance: Random): void {
	if (perHour <= 0) return;
	for (
		let t = chance.exponential(3600 / perHour);
		t < values.length;
		t += chance.exponential(3600 / perHour)
	) {
		const to = t + 5 + chance.exponential(25);
		for (let i = Math.ceil(t); i < Math.min(values.length, to); i++) values[i] = NaN;
		t = to;
	}
}

/**
 * A recorder that saves space: keeps a second only when something changed noticeably since the last kept
 * one, or after six seconds.
 */
export function thin(
	ticks: number[],
	speed: Float64Array,
	cadence: Float64Array,
	power: Float64Array
): number[] {
	const kept = [ticks[0]];
	for (let i = 1; i < ticks.length; i++) {
		const t = ticks[i];
		const last = kept[kept.length - 1];
		const changed =
			Math.abs(speed[t] - speed[last]) > 0.6 ||
			Math.abs(cadence[t] - cadence[last]) > 6 ||
			Math.abs(power[t] - power[last]) > 60;
		if (changed || t - last >= 6 || i === ticks.length - 1) kept.push(t);
	}
	return kept;
}
