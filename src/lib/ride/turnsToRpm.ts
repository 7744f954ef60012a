import type { MotionColumn } from './columnMapping';

/** An angle of whole degrees at 500 Hz says nothing of speed from row to row: over so long it does (common practice). */
const LEAST_SPAN_S = 0.04;
/** no pulse for so many of the last intervals: the wheel's speed is not known any more */
const SILENT_INTERVALS = 3;

/**
 * Speed of rotation on the clock of the table, from whatever its column holds. Between pulses it is the mean over
 * their interval; an angle is taken over at least 0.04 s around each row.
 *
 * @param timeS rising, one for each row
 * @param values of the column; NaN = missing
 * @param pulseTimesToS factor from a column of pulse times to seconds
 * @returns rpm; NaN = not known
 */
export function turnsToRpm(
	timeS: Float64Array,
	values: Float64Array,
	motion: MotionColumn,
	pulseTimesToS: number
): Float64Array {
	switch (motion.as) {
		case 'rpm':
			return values;
		case 'rad/s':
			return values.map((value) => (value * 60) / (2 * Math.PI));
		case 'degrees':
			return fromAngle(timeS, values, 360);
		case 'radians':
			return fromAngle(timeS, values, 2 * Math.PI);
		case 'turns':
			return fromAngle(timeS, values, 1);
		case 'pulse times':
			return fromPulses(timeS, pulseTimes(values, pulseTimesToS), motion.pulsesPerTurn ?? 1);
		case 'pulse count':
			return fromPulses(timeS, countedPulses(timeS, values), motion.pulsesPerTurn ?? 1);
	}
}

function fromAngle(timeS: Float64Array, angle: Float64Array, turn: number): Float64Array {
	const turns = unwrapped(angle, turn);
	const rpm = new Float64Array(timeS.length).fill(NaN);
	let from = 0;
	let to = 0;
	for (let i = 0; i < timeS.length; i++) {
		while (from + 1 <= i && timeS[i] - timeS[from + 1] >= LEAST_SPAN_S / 2) from++;
		if (to < i) to = i;
		while (to + 1 < timeS.length && timeS[to] - timeS[i] < LEAST_SPAN_S / 2) to++;
		const spanS = timeS[to] - timeS[from];
		if (spanS > 0) rpm[i] = ((turns[to] - turns[from]) / spanS) * 60;
	}
	return rpm;
}

/** Turns that run on. An angle that stays within a turn and a half begins again after each; a small step back is noise. */
function unwrapped(angle: Float64Array, turn: number): Float64Array {
	let [least, most] = [Infinity, -Infinity];
	for (const value of angle) {
		if (value < least) least = value;
		if (value > most) most = value;
	}
	const runsOn = most - least > 1.5 * turn;
	const turns = new Float64Array(angle.length).fill(NaN);
	let added = 0;
	let last = NaN;
	for (let i = 0; i < angle.length; i++) {
		if (Number.isNaN(angle[i])) continue;
		if (!runsOn && !Number.isNaN(last)) {
			if (angle[i] - last < -turn / 2) added++;
			else if (angle[i] - last > (turn * 9) / 10) added--;
		}
		last = angle[i];
		turns[i] = angle[i] / turn + added;
	}
	return turns;
}

interface Pulse {
	readonly atS: number;
	/** pulses up to and with this one */
	readonly count: number;
}

/** Each instant once: a column holds the last pulse until the next one comes. */
function pulseTimes(values: Float64Array, toS: number): Pulse[] {
	const pulses: Pulse[] = [];
	for (const value of values) {
		const atS = value * toS;
		if (atS > (pulses.at(-1)?.atS ?? -Infinity)) pulses.push({ atS, count: pulses.length });
	}
	return pulses;
}

/** The rows at which a counter went up. */
function countedPulses(timeS: Float64Array, values: Float64Array): Pulse[] {
	const pulses: Pulse[] = [];
	for (let i = 0; i < values.length; i++) {
		const last = pulses.at(-1);
		if (!Number.isNaN(values[i]) && !(last && values[i] <= last.count))
			pulses.push({ atS: timeS[i], count: values[i] });
	}
	return pulses;
}

function fromPulses(timeS: Float64Array, pulses: readonly Pulse[], pulsesPerTurn: number): Float64Array {
	const rpm = new Float64Array(timeS.length).fill(NaN);
	let at = 0;
	for (let i = 0; i < timeS.length; i++) {
		while (at + 1 < pulses.length && pulses[at + 1].atS <= timeS[i]) at++;
		if (pulses.length < 2 || timeS[i] < pulses[0].atS) continue;
		const next = Math.min(at + 1, pulses.length - 1);
		const [from, to] = [pulses[next - 1], pulses[next]];
		const intervalS = to.atS - from.atS;
		if (timeS[i] - to.atS > SILENT_INTERVALS * intervalS) continue;
		rpm[i] = ((to.count - from.count) / pulsesPerTurn / intervalS) * 60;
	}
	return rpm;
}
