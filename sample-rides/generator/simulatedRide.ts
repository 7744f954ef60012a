import type { Ride } from '../../src/lib/ride/ride';
import type { RideSpec } from './rideSpec';

export type TruthKind = 'slip' | 'failed pick-up' | 'chain skip';

/** What really happened at the hub. Times in seconds from the first record. */
export interface TruthEvent {
	readonly t0: number;
	readonly t1: number;
	readonly kind: TruthKind;
	/** degrees that the crank gained on the engaged crank speed, from t0 to t1 */
	readonly crankDeg: number;
	readonly hubDeg: number;
	/** mean torque at the driver over the last half second before onset, Nm; a failed pick-up has none */
	readonly hubTorqueNm: number;
	readonly crankTorqueNm: number;
	/** teeth */
	readonly front: number;
	readonly rear: number;
	/** cadence at onset */
	readonly rpm: number;
	/** distance of the ride at onset */
	readonly km: number;
}

/** One entry of truth.json. */
export interface RideTruth {
	readonly file: string;
	readonly km: number;
	readonly drivenKm: number;
	/** seconds since 1970 */
	readonly startUtc: number;
	readonly chainrings: readonly number[];
	readonly cassette: readonly number[];
	readonly circumferenceSetting: number;
	readonly speedSource: 'rear' | 'front' | 'gps' | 'virtual' | 'none';
	/** laps, seconds from the first record */
	readonly riderMarksAt: readonly number[];
	/** how often something that looks like a slip was put in: dips, spikes, overshoots, regretted shifts, spins */
	readonly confounders: number;
	readonly events: readonly TruthEvent[];
}

/** The motion itself, 50 times a second; running totals so that any mean can be taken exactly. */
export interface Motion {
	readonly stepS: number;
	readonly length: number;
	/** crank angle, radians */
	readonly crankRad: Float64Array;
	/** way of the driven wheel's rim, metres */
	readonly wheelM: Float64Array;
	/** way over the ground, metres */
	readonly groundM: Float64Array;
	/** work at the crank, joules */
	readonly workJ: Float64Array;
	/** way that a trainer computes from power, metres */
	readonly virtualM: Float64Array;
	/** seconds at which the rider pressed a lap */
	readonly marksS: number[];
	readonly shifts: Shift[];
	readonly events: TruthEvent[];
	readonly drivenM: number;
	readonly confounders: number;
}

/** A shift as the chain made it. */
export interface Shift {
	/** when the ratio began to change */
	readonly timeS: number;
	/** positions, 0 = first of the list in BikeSpec */
	readonly front: number;
	readonly rear: number;
}

export interface SimulatedRide {
	readonly spec: RideSpec;
	readonly seed: number;
	/** as a ride computer would have stored it */
	readonly ride: Ride;
	readonly truth: RideTruth;
	readonly motion: Motion;
}
