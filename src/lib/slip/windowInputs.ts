import { medianBetween } from '$lib/drivetrain/median';
import { FACT, WINDOW_BEFORE_S, WINDOW_S, type SlipWindow } from './slipWindow';

/** What the net reads of each second, in order. */
export const WINDOW_CHANNELS = [
	'ratio against engaged',
	'ratio against engaged in local noise',
	'cadence',
	'change of cadence',
	'deg against engaged',
	'power of before',
	'power',
	'torque of before',
	'change of speed',
	'dip of speed in ratio noise',
	'speed',
	'recorded shift',
	'recorded gear against engaged',
	'recorded gear known',
	'ratio against the nearest gear in noise',
	'nearest gear against engaged',
	'followed gear against engaged',
	'followed gear known',
	'cadence held',
	'power held',
	'cadence or speed missing',
	'crank turns',
	'power against its sides in noise',
	'power missing'
] as const;
export const CHANNELS = WINDOW_CHANNELS.length;
/** What it reads besides, once a candidate. */
export const WINDOW_EXTRAS = 18;

const TURNING_RPM = 25;
const ROLLING_MPS = 1.1;
const PEAK = WINDOW_BEFORE_S + 1;

/** Cut to a range; what is not known counts as 0. */
function within(value: number, least: number, most: number): number {
	return value > most ? most : value < least ? least : value === value ? value : 0;
}

/**
 * The numbers that the net reads of a window: each size once in its own unit and once against the noise of this ride,
 * scaled to about one.
 *
 * @param window seconds around a candidate
 * @param inputs is filled: CHANNELS rows of WINDOW_S seconds, each row `stride` long and beginning at `offset`
 * @param extras is filled with WINDOW_EXTRAS numbers
 */
export function windowInputs(
	window: SlipWindow,
	inputs: Float64Array,
	stride: number,
	offset: number,
	extras: Float64Array
): void {
	const { cadenceRpm, speedMps, powerW, recorded, followed, nearest, shift, facts } = window;
	const high = facts[FACT['engaged ratio']];
	const noise = within(facts[FACT['ratio noise']], 0.006, 0.08) || 0.006;
	const powerNoise = within(facts[FACT['power noise']] || 0.2, 0.03, 0.6);
	const before = medianBetween(powerW, PEAK - 8, PEAK - 2);
	const referenceW = Math.max(40, before === before ? before : 100);
	const referenceTorque = referenceW / 80;
	const turnsPerMetre = Math.exp(high);
	const known = (value: number) => (value === value ? value : 0);
	for (let s = 0; s < WINDOW_S; s++) {
		const k = s + 1;
		const rpm = known(cadenceRpm[k]);
		const mps = known(speedMps[k]);
		const watts = known(powerW[k]);
		const turning = rpm >= TURNING_RPM && mps >= ROLLING_MPS;
		const ratio = turning ? Math.log(rpm / (60 * mps)) - high : NaN;
		const mpsSides = (known(speedMps[k - 1]) + known(speedMps[k + 1])) / 2;
		const wattsSides = Math.max(40, Math.min(known(powerW[k - 1]), known(powerW[k + 1])));
		let at = offset + s;
		const put = (value: number) => {
			inputs[at] = value;
			at += stride;
		};
		put(6 * within(ratio, -1.2, 1.2));
		put(within(ratio / noise / 4, -4, 4));
		put((rpm - 80) / 30);
		put(within(rpm - known(cadenceRpm[k - 1]), -60, 60) / 15);
		put(turning ? within((6 * (rpm - 60 * mps * turnsPerMetre)) / 60, -4, 4) : 0);
		put(within(watts / referenceW, 0, 3) - 1);
		put(within((watts - 150) / 150, -1, 4));
		put(within(watts / Math.max(20, rpm) / referenceTorque, 0, 3) - 1);
		put(within(mps - known(speedMps[k - 1]), -2, 2));
		put(within((mps - mpsSides) / Math.max(1, mpsSides) / noise / 3, -3, 3));
		put((mps - 7) / 4);
		put(shift[k]);
		put(within(6 * recorded[k], -4, 4));
		put(recorded[k] === recorded[k] ? 1 : 0);
		put(within((ratio - nearest[k]) / noise / 2, -3, 3));
		put(within(6 * nearest[k], -4, 4));
		put(within(6 * followed[k], -4, 4));
		put(followed[k] === followed[k] ? 1 : 0);
		put(rpm === known(cadenceRpm[k - 1]) ? 1 : 0);
		put(watts === known(powerW[k - 1]) ? 1 : 0);
		put(cadenceRpm[k] + speedMps[k] === cadenceRpm[k] + speedMps[k] ? 0 : 1);
		put(turning ? 1 : 0);
		put(within((watts / wattsSides - 1) / powerNoise / 2, -3, 3));
		put(powerW[k] === powerW[k] ? 0 : 1);
	}
	const fact = (name: keyof typeof FACT) => facts[FACT[name]];
	extras[0] = Math.log(noise) + 4;
	extras[1] = Math.log(powerNoise) + 2;
	extras[2] = 6 * within(fact('lower ratio against engaged'), -1, 1);
	extras[3] = known(fact('power around W')) / 150 - 1;
	extras[4] = (fact('usual power W') || 150) / 150 - 1;
	extras[5] = fact('first second against peak');
	extras[6] = fact('last second against peak');
	extras[7] = within(fact('size deg') / 90, 0, 4);
	extras[8] = fact('irregular recording');
	extras[9] = fact('cadence by the turn');
	extras[10] = within(fact('power follows slowly'), -2, 2);
	extras[11] = within(fact('cadence follows slowly'), -2, 2);
	extras[12] = Math.log(within(fact('ratio scatter of the ride'), 0.003, 0.1)) + 4;
	extras[13] = within(fact('careful deg') / 90, -1, 4);
	extras[14] = within(fact('generous deg') / 90, -1, 4);
	extras[15] = 10 * known(fact('cadence dips of the ride'));
	extras[16] = 10 * known(fact('ratio dips of the ride'));
	extras[17] = fact('recorded shifts known');
}
