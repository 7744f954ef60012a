import type { Gear } from '$lib/drivetrain/bike';
import type { RideLearning } from '$lib/drivetrain/rideLearning';
import type { RideWarning, Span } from '$lib/ride/ride';
import type { RideExposure } from './exposure';

/** The reference slip: what a rider clearly feels and a 1 Hz recording can show, in crank degrees. */
export const REFERENCE_SLIP_CRANK_DEG = 90;

export const EVENT_KINDS = [
	/** the driver gains on the shell while the rider is pressing */
	'slip',
	/** pedalling resumes and the crank runs past the wheel by more than one step plus slack */
	'failed pick-up',
	/** the chain jumps on a tooth: steps of chain pitch, one sprocket */
	'possible chain skip',
	/** a huge overrun without drive until a stop */
	'possible dropped chain',
	/** the wheel, not the driver, runs away */
	'possible tyre spin'
] as const;
export type EventKind = (typeof EVENT_KINDS)[number];

/** States of the drive, one a second; the number is the index in this list. */
export const DRIVE_STATES = [
	'not observed',
	'stopped',
	'coasting',
	'picking up',
	'driving',
	'shifting',
	'slip'
] as const;
export type DriveState = (typeof DRIVE_STATES)[number];

/** A value with the limits within which it lies with 90 % probability. */
export interface WithLimits {
	readonly value: number;
	readonly lower: number;
	readonly upper: number;
}

export interface SlipEvent {
	/** seconds from the first record */
	readonly startS: number;
	readonly endS: number;
	readonly kind: EventKind;
	/** degrees that the crank gained on the engaged cadence; on the ground, for a tyre that spun */
	readonly overrunCrankDeg: WithLimits;
	/** the same in hub degrees (crank degrees x ratio); its limits are those of the crank degrees x the same ratio */
	readonly overrunHubDeg: number;
	readonly gear: Gear | null;
	/** mean hub torque in the last engaged seconds before onset, Nm; null = not known */
	readonly hubTorqueNm: WithLimits | null;
	/** share of the power before onset that was lost, 0 to 1; null without power */
	readonly powerLost: number | null;
	/** strength of signs, 0 to 1, calibrated at the stated prevalence; not the chance that it is a slip */
	readonly strength: number;
	/** distance of the ride at onset, metres */
	readonly atM: number;
	/** true when it begins on an observed stretch */
	readonly observed: boolean;
	/** what speaks for it and against it, sentences in plain words */
	readonly reasons: readonly string[];
}

/** A stretch that could have shown a slip: nine in ten of the reference size and more are to be found on all of them together. */
export interface ObservedStretch {
	readonly startS: number;
	readonly endS: number;
	readonly startM: number;
	readonly endM: number;
}

/** One value a second from the first record on (index = whole seconds); NaN = not known. */
export interface DriveTraces {
	readonly speedMps: Float64Array;
	readonly cadenceRpm: Float64Array;
	readonly powerW: Float64Array;
	readonly distanceM: Float64Array;
	/** cadence that the wheel would need in the gear that is in */
	readonly engagedCadenceRpm: Float64Array;
	/** running sum of crank angle gained on the wheel, hub degrees: up in a slip, down in coasting, flat engaged */
	readonly gainedHubDeg: Float64Array;
	/** mean hub torque at the driver; NaN at very low cadence */
	readonly hubTorqueNm: Float64Array;
	/** index in DRIVE_STATES */
	readonly state: Uint8Array;
	/** smallest overrun in crank degrees that counts as visible here (detectionLimit.ts); NaN = none does */
	readonly detectionLimitCrankDeg: Float64Array;
}

export interface RideAnalysis {
	readonly analysisVersion: number;
	readonly totalM: number;
	readonly observedM: number;
	readonly drivenM: number;
	readonly observed: readonly ObservedStretch[];
	readonly events: readonly SlipEvent[];
	readonly gears: readonly Gear[];
	readonly warnings: readonly RideWarning[];
	/** what the ride tells of its bike and sensors, beside what was stated */
	readonly learning: RideLearning;
	/** rider's laps, seconds from the first record */
	readonly marksS: readonly number[];
	readonly gaps: readonly Span[];
	/** what was driven and observed, by hub torque and gear and by hour */
	readonly exposure: RideExposure;
	readonly traces: DriveTraces;
}
