import type { Ride } from '$lib/ride/ride';
import stored from './workedRide.json';

/** Half an hour of a ride of the example workshop, one value a second; -1 = not recorded. */
export interface StoredRide {
	/** what it is and how it is made anew */
	readonly about: string;
	readonly file: string;
	readonly bike: {
		readonly chainrings: readonly number[];
		readonly cassette: readonly number[];
		readonly circumferenceM: number;
		readonly speedSensor: 'rear';
	};
	/** what the simulator did to the hub there */
	readonly truth: {
		readonly t0: number;
		readonly t1: number;
		readonly crankDeg: number;
		readonly hubDeg: number;
		readonly hubTorqueNm: number;
		readonly gear: string;
	};
	readonly speedMmps: readonly number[];
	readonly cadenceRpm: readonly number[];
	readonly powerW: readonly number[];
}

export const workedRide = stored as StoredRide;

/** The stored half hour as a ride, as a decoder would give it. */
export function rideOf({ speedMmps, cadenceRpm, powerW }: StoredRide): Ride {
	const timeS = Float64Array.from(speedMmps, (_, second) => second);
	const channel = (values: readonly number[], scale = 1) => ({
		timeS,
		value: Float64Array.from(values, (value) => (value < 0 ? NaN : value * scale))
	});
	return {
		format: 'fit',
		startedAtMs: 0,
		localOffsetS: null,
		durationS: timeS.length - 1,
		channels: {
			speedMps: channel(speedMmps, 0.001),
			cadenceRpm: channel(cadenceRpm),
			powerW: channel(powerW)
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
		warnings: []
	};
}
