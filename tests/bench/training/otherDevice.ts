import type { Random } from '../../../sample-rides/generator/random';
import { FACT, READ_S, type SlipWindow } from '../../../src/lib/slip/slipWindow';

/**
 * The same seconds as another device might have recorded them, in place: power or speed late or early by a part of a
 * second, power averaged, more noise, cadence rounded, another scale of each. What follows from the engaged ratio moves
 * with it. Sizes of these are common practice, no source.
 */
export function otherDevice(window: SlipWindow, chance: Random): void {
	const { cadenceRpm, speedMps, powerW, facts } = window;
	if (chance.chance(0.35)) late(powerW, chance.between(-0.6, 0.6));
	if (chance.chance(0.25)) late(speedMps, chance.between(-0.3, 0.3));
	if (chance.chance(0.15)) meanOver(powerW, 2);
	if (chance.chance(0.06)) meanOver(powerW, 3);
	noisy(powerW, chance.chance(0.3) ? 0.06 : 0, Math.exp(chance.between(-0.25, 0.25)), chance);
	const cadenceScale = chance.between(-0.12, 0.12);
	const speedScale = chance.between(-0.1, 0.1);
	facts[FACT['engaged ratio']] += cadenceScale - speedScale;
	const addedRpm = chance.chance(0.3) ? 0.7 : 0;
	const whole = chance.chance(0.8);
	for (let k = 0; k < READ_S; k++) {
		const rpm = cadenceRpm[k] * Math.exp(cadenceScale) + (addedRpm > 0 ? chance.normal(0, addedRpm) : 0);
		cadenceRpm[k] = whole ? Math.round(rpm) : rpm;
	}
	noisy(speedMps, chance.chance(0.3) ? 0.006 : 0, Math.exp(speedScale), chance);
}

function late(values: Float32Array, byS: number): void {
	const share = Math.abs(byS);
	const step = byS >= 0 ? -1 : 1;
	const first = step < 0 ? READ_S - 1 : 0;
	for (let n = 0; n < READ_S; n++) {
		const k = first + n * step;
		const other = values[Math.min(READ_S - 1, Math.max(0, k + step))];
		const moved = (1 - share) * values[k] + share * other;
		if (moved === moved) values[k] = moved;
	}
}

function meanOver(values: Float32Array, seconds: number): void {
	for (let k = READ_S - 1; k >= seconds - 1; k--) {
		let sum = 0;
		for (let back = 0; back < seconds; back++) sum += values[k - back];
		if (sum === sum) values[k] = sum / seconds;
	}
}

function noisy(values: Float32Array, share: number, scale: number, chance: Random): void {
	for (let k = 0; k < READ_S; k++) values[k] *= scale * (share > 0 ? 1 + chance.normal(0, share) : 1);
}
