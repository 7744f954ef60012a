import type { Bike, Gear } from '$lib/drivetrain/bike';
import { hubTorque } from '$lib/drivetrain/hubTorque';
import type { Ride } from '$lib/ride/ride';
import type { SlipEvent, WithLimits } from './analysis';
import { findLoggerSlips, type LoggerSlip } from './findLoggerSlips';
import { onCrankClock } from './onCrankClock';
import type { RideContext } from './rideContext';

/** Mean power of a second in which a rider presses, W: below it a slip at a logger's clock leaves little loss. */
const PRESSING_W = 30;
/** One step of a fine ratchet and the scatter of the ratio together; measured on simulated rides at 50 Hz. */
const SMALLEST_SEEN_DEG = 12;
/** 90 % limits of one crank turn's mean torque against that of the moment it let go (measured on generated tables). */
const TORQUE_LIMITS = 0.17;

/** True where crank and wheel were recorded together, fast enough for the logger's own way of finding slips. */
export function isLoggerRide(ride: Ride): boolean {
	const { cadenceRpm, wheelRpm } = ride.channels;
	const fast = 5 * ride.durationS;
	return (
		cadenceRpm !== undefined &&
		wheelRpm !== undefined &&
		cadenceRpm.timeS.length > fast &&
		wheelRpm.timeS.length > fast
	);
}

/** Slips of a logger's ride as events; torque is the mean over the last crank turn, never the instantaneous one. */
export function loggerEvents(
	ride: Ride,
	context: RideContext,
	gears: readonly Gear[],
	bike: Bike
): SlipEvent[] {
	return findLoggerSlips(onCrankClock(ride)).map((slip): SlipEvent => {
		const gear = nearestGear(gears, slip.ratio);
		const ratio = gear?.ratio ?? slip.ratio;
		const second = Math.min(context.signals.grid.seconds - 1, Math.floor(slip.startS));
		return {
			startS: slip.startS,
			endS: slip.endS,
			kind: 'slip',
			overrunCrankDeg: overrunOf(slip),
			overrunHubDeg: slip.overrunCrankDeg * slip.ratio,
			gear,
			hubTorqueNm: meanTorque(slip, ratio, bike.powerAt ?? 'crank'),
			powerLost: Number.isFinite(slip.torqueBeforeNm) ? strengthOf(slip) : null,
			// too few logger rides to calibrate on: the share of torque that was lost stands for it
			strength: strengthOf(slip),
			atM: context.signals.grid.distanceM[second],
			observed: true,
			reasons: reasonsFor(slip)
		};
	});
}

/** Share of the instantaneous torque that broke off, 0 to 1; a half where no torque was recorded. */
function strengthOf(slip: LoggerSlip): number {
	if (!Number.isFinite(slip.torqueBeforeNm)) return 0.5;
	return Math.max(0, Math.min(1, 1 - slip.torqueDuringNm / slip.torqueBeforeNm));
}

function overrunOf(slip: LoggerSlip): WithLimits {
	return {
		value: slip.overrunCrankDeg,
		lower: slip.lowerDeg,
		upper: slip.upperDeg
	};
}

/** Where a logger would have shown a slip of the reference size: wherever the rider presses. */
export function loggerDetectionLimit(context: RideContext): Float64Array {
	const { grid } = context.signals;
	return grid.cadenceRpm.map((rpm, t) =>
		rpm >= 30 && grid.powerW[t] >= PRESSING_W && grid.speedMps[t] > 1 ? SMALLEST_SEEN_DEG : NaN
	);
}

function nearestGear(gears: readonly Gear[], ratio: number): Gear | null {
	let best: Gear | null = null;
	for (const gear of gears) {
		if (!best || Math.abs(Math.log(gear.ratio / ratio)) < Math.abs(Math.log(best.ratio / ratio))) best = gear;
	}
	return best && Math.abs(Math.log(best.ratio / ratio)) < 0.04 ? best : null;
}

/** Mean over the last crank turn, with the accuracy of a torque sensor; null where none was recorded. */
function meanTorque(slip: LoggerSlip, ratio: number, powerAt: 'crank' | 'hub'): WithLimits | null {
	const { meanTorqueNm } = slip;
	if (!(meanTorqueNm >= 0)) return null;
	// hubTorque works from power: at 60 rpm a torque of T is a power of 2 pi T
	const value = hubTorque(2 * Math.PI * meanTorqueNm, 60, ratio, powerAt);
	return { value, lower: (1 - TORQUE_LIMITS) * value, upper: (1 + TORQUE_LIMITS) * value };
}

function reasonsFor(slip: LoggerSlip): string[] {
	const lasted = ((slip.endS - slip.startS) * 1000).toFixed(0);
	const reasons = [
		`For: the crank gained ${slip.overrunCrankDeg.toFixed(0)} degrees on the wheel within ${lasted} ms, and the same ratio was back after it.`
	];
	if (Number.isFinite(slip.torqueBeforeNm)) {
		reasons.push(
			`For: instantaneous crank torque broke off from ${slip.torqueBeforeNm.toFixed(0)} to ${slip.torqueDuringNm.toFixed(0)} Nm.`
		);
	} else reasons.push('Against: no torque was recorded.');
	return reasons;
}
