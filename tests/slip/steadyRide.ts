import { random } from '../../sample-rides/generator/random';
import type { Ride } from '$lib/ride/ride';

/** Channels of a made-up ride, one record a second, to be changed by a test before they become a ride. */
export interface Records {
	rpm: Float64Array;
	mps: Float64Array;
	watts: Float64Array;
}

export const CIRCUMFERENCE_M = 2.15;
const SPROCKETS = [13, 15, 17, 19, 21];
const CHAINRING = 46;

export const developmentOf = (sprocket: number, chainring = CHAINRING) =>
	(chainring / sprocket) * CIRCUMFERENCE_M;

/**
 * Twenty minutes in five gears, four minutes each: cadence 80 to 90 rpm swinging slowly, 200 W with 6 % scatter,
 * speed as the gear gives it with 0.4 % scatter, cadence in whole rpm. Nothing slips.
 */
export function steadyRecords(seed = 1, seconds = 1200): Records {
	const chance = random(seed);
	const rpm = new Float64Array(seconds);
	const mps = new Float64Array(seconds);
	const watts = new Float64Array(seconds);
	for (let t = 0; t < seconds; t++) {
		const turning = 85 + 4 * Math.sin(t / 23) + chance.normal(0, 0.3);
		rpm[t] = Math.round(turning);
		mps[t] = ((turning * developmentOf(gearAt(t))) / 60) * (1 + chance.normal(0, 0.004));
		watts[t] = Math.round(200 * (1 + chance.normal(0, 0.06)));
	}
	return { rpm, mps, watts };
}

/** Sprocket that is in: a change every four minutes. */
export const gearAt = (t: number) => SPROCKETS[Math.floor(t / 240) % SPROCKETS.length];

export function toRide({ rpm, mps, watts }: Records, more: Partial<Ride> = {}): Ride {
	const timeS = Float64Array.from(rpm, (_, t) => t);
	let sum = 0;
	const distanceM = mps.map((speed) => (sum += speed));
	return {
		format: 'fit',
		startedAtMs: 1_790_000_000_000,
		localOffsetS: 0,
		durationS: rpm.length - 1,
		channels: {
			cadenceRpm: { timeS, value: rpm },
			speedMps: { timeS, value: mps },
			powerW: { timeS, value: watts },
			distanceM: { timeS, value: distanceM }
		},
		gaps: [],
		pauses: [],
		irregular: false,
		marks: [],
		gearEvents: [],
		sensors: [],
		speedSource: 'wheel',
		trainer: null,
		motorAssisted: null,
		warnings: [],
		...more
	};
}

/** The crank gains an angle within one second, three quarters of the power are lost, the wheel sags by 1 %. */
export function putSlip(records: Records, at: number, crankDeg: number): void {
	records.rpm[at] += Math.round((0.7 * crankDeg) / 6);
	records.rpm[at + 1] += Math.round((0.3 * crankDeg) / 6);
	records.watts[at] *= 0.3;
	records.watts[at + 1] *= 0.55;
	for (let k = 0; k < 4; k++) records.mps[at + k] *= 0.99 + 0.0025 * k;
}
