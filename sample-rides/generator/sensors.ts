import type { Random } from './random';
import type { RecorderSpec } from './rideSpec';
import type { Motion } from './simulatedRide';

/** Value of a running total at an instant, straight between the samples, held at both ends. */
export function totalAt(total: Float64Array, motion: Motion, timeS: number): number {
	const x = timeS / motion.stepS;
	if (x <= 0) return total[0];
	const last = motion.length - 1;
	if (x >= last) return total[last];
	const i = Math.floor(x);
	return total[i] + (total[i + 1] - total[i]) * (x - i);
}

/** Instants at which a running total passes whole multiples of a step, as a magnet passes its sensor. */
export function pulseTimes(total: Float64Array, motion: Motion, step: number): Float64Array {
	const times = new Float64Array(Math.floor(total[motion.length - 1] / step) + 1);
	let n = 0;
	let next = Math.floor(total[0] / step + 1) * step;
	for (let i = 1; i < motion.length; i++) {
		while (total[i] >= next) {
			times[n++] = (i - 1 + (next - total[i - 1]) / (total[i] - total[i - 1])) * motion.stepS;
			next += step;
		}
	}
	return times.subarray(0, n);
}

/**
 * Turns a second as a one-pulse sensor shows them once a second: pulses since the last look over the
 * time between them; held while no pulse comes, zero after the time-out.
 */
export function rateFromPulses(
	times: Float64Array,
	ticks: number,
	lagS: number,
	timeOutS: number
): Float64Array {
	const rate = new Float64Array(ticks);
	let seen = -1;
	let used = -1;
	let value = 0;
	for (let t = 0; t < ticks; t++) {
		const now = t - lagS;
		while (seen + 1 < times.length && times[seen + 1] <= now) seen++;
		if (seen > used) {
			if (used >= 0 && times[seen] - times[used] < 6) value = (seen - used) / (times[seen] - times[used]);
			used = seen;
		}
		if (seen < 0 || now - times[seen] > timeOutS) value = 0;
		rate[t] = value;
	}
	return rate;
}

/** Mean rate of change of a running total over the window that ends at each second. */
export function rateOfTotal(
	total: Float64Array,
	motion: Motion,
	ticks: number,
	lagS: number,
	windowS: number
): Float64Array {
	const rate = new Float64Array(ticks);
	for (let t = 0; t < ticks; t++) {
		const to = t - lagS;
		rate[t] = (totalAt(total, motion, to) - totalAt(total, motion, to - windowS)) / windowS;
	}
	return rate;
}

/** Speed as the device stored it, m/s, one value a second; NaN all through without a sensor. */
export function senseSpeed(
	spec: RecorderSpec['speed'],
	motion: Motion,
	trueCircumferenceM: number,
	ticks: number,
	chance: Random
): Float64Array {
	const way = spec.kind.startsWith('rear')
		? motion.wheelM
		: spec.kind === 'virtual'
			? motion.virtualM
			: motion.groundM;
	const scale = spec.kind === 'gps' || spec.kind === 'virtual' ? 1 : spec.circumferenceM / trueCircumferenceM;
	if (spec.kind === 'none') return new Float64Array(ticks).fill(NaN);
	let speed: Float64Array;
	if (spec.kind.endsWith('pulse')) {
		const times = pulseTimes(way, motion, trueCircumferenceM);
		speed = rateFromPulses(times, ticks, spec.lagS, 2.5).map((perS) => perS * trueCircumferenceM);
	} else speed = rateOfTotal(way, motion, ticks, spec.lagS, 1);
	if (spec.kind === 'gps') return senseSatellites(speed, spec.noise, chance);
	return addNoise(speed, spec.noise, chance).map((v) => v * scale);
}

/** Satellite speed is smoothed and its error wanders. */
function senseSatellites(speed: Float64Array, noise: number, chance: Random): Float64Array {
	let smooth = speed[0];
	let error = 0;
	return speed.map((v) => {
		smooth += 0.45 * (v - smooth);
		error = 0.7 * error + 0.7 * chance.normal(0, noise * 8);
		return smooth < 0.3 ? 0 : Math.max(0, smooth + error);
	});
}

/** Cadence as the device stored it, rpm. */
export function senseCadence(
	spec: RecorderSpec['cadence'],
	motion: Motion,
	ticks: number,
	chance: Random
): Float64Array {
	if (spec.kind === 'none') return new Float64Array(ticks).fill(NaN);
	const turn = 2 * Math.PI;
	const pulsed = spec.kind === 'pulse';
	const perS = pulsed
		? rateFromPulses(pulseTimes(motion.crankRad, motion, turn), ticks, spec.lagS, Math.max(1.5, spec.freezeS))
		: rateOfTotal(motion.crankRad, motion, ticks, spec.lagS, 1).map((radS) => radS / turn);
	const rpm = addNoise(perS, spec.noise, chance).map((n) => (n * 60 < 12 ? 0 : n * 60));
	if (!pulsed) freeze(rpm, spec.freezeS);
	return rpm;
}

/** Noise in proportion, drawn anew with each new value: a value that is held stays exactly the same. */
function addNoise(values: Float64Array, noise: number, chance: Random): Float64Array {
	let raw = NaN;
	let shown = 0;
	return values.map((value) => {
		if (value !== raw) {
			raw = value;
			shown = Math.max(0, value * (1 + chance.normal(0, noise)));
		}
		return shown;
	});
}

/** After pedalling stops, the old value stays for a while. */
function freeze(rpm: Float64Array, freezeS: number): void {
	for (let t = 1; t < rpm.length; t++) {
		if (rpm[t] >= 15 || rpm[t - 1] < 30) continue;
		const stayS = Math.round(freezeS);
		for (let i = t; i < Math.min(rpm.length, t + stayS) && rpm[i] < 15; i++) rpm[i] = rpm[t - 1];
		t += stayS;
	}
}

/** Power as the device stored it, W. */
export function sensePower(
	spec: RecorderSpec['power'],
	motion: Motion,
	ticks: number,
	chance: Random
): Float64Array {
	if (spec.kind === 'none') return new Float64Array(ticks).fill(NaN);
	const watts =
		spec.kind === 'second'
			? rateOfTotal(motion.workJ, motion, ticks, spec.lagS, spec.averageS)
			: powerByTurn(motion, ticks, spec.lagS);
	if (spec.kind === 'turn' && spec.averageS > 1) average(watts, Math.round(spec.averageS));
	return watts.map((w) => Math.max(0, w * spec.scale * (1 + chance.normal(0, spec.noise))));
}

/**
 * Mean power over the last whole crank turn. Once a turn is overdue, what was done since the last pulse
 * over the time since then: it fades and, after three seconds without a pulse, is nothing.
 */
function powerByTurn(motion: Motion, ticks: number, lagS: number): Float64Array {
	const times = pulseTimes(motion.crankRad, motion, 2 * Math.PI);
	const watts = new Float64Array(ticks);
	let seen = -1;
	const work = (fromS: number, toS: number) =>
		totalAt(motion.workJ, motion, toS) - totalAt(motion.workJ, motion, fromS);
	for (let t = 0; t < ticks; t++) {
		const now = t - lagS;
		while (seen + 1 < times.length && times[seen + 1] <= now) seen++;
		if (seen < 1) continue;
		const turnS = times[seen] - times[seen - 1];
		const sinceS = now - times[seen];
		if (sinceS > Math.max(0.9, 1.3 * turnS)) watts[t] = sinceS > 3 ? 0 : work(times[seen], now) / sinceS;
		else if (turnS < 4) watts[t] = work(times[seen - 1], times[seen]) / turnS;
	}
	return watts;
}

function average(values: Float64Array, window: number): void {
	const raw = values.slice();
	for (let t = 0; t < values.length; t++) {
		let sum = 0;
		const from = Math.max(0, t - window + 1);
		for (let i = from; i <= t; i++) sum += raw[i];
		values[t] = sum / (t - from + 1);
	}
}
