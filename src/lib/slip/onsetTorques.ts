import type { Gear } from '$lib/drivetrain/bike';
import { hubTorque } from '$lib/drivetrain/hubTorque';
import { at } from './candidateFeatures';
import type { RideContext } from './rideContext';

/** How far back "the last engaged seconds" reach, s. */
const ENGAGED_S = 3;

/** Gear that is in just before a second; null = no gear is known there. */
export function onsetGear(context: RideContext, second: number): Gear | null {
	return context.named.gears[at(context.path, Math.max(0, second - 1))] ?? null;
}

/**
 * Mean hub torques of the last engaged seconds before a second, the nearest first. The one function that
 * says at which torque a slip begins AND at which torque a second without one was ridden: only so do
 * slips and kilometres fall into the same bins.
 *
 * @param context what was learned of the ride
 * @param second whole second at which a slip begins or could have begun
 * @param powerAt where power is measured
 * @returns up to three values in Nm; empty where the torque is not known: right after a rest, in no known
 *   gear, below 30 rpm, without power
 */
export function onsetTorques(context: RideContext, second: number, powerAt: 'crank' | 'hub'): number[] {
	const values: number[] = [];
	const gear = onsetGear(context, second);
	// the power that is lost with a slip is no rest: only the second before it says whether the rider pressed
	if (!gear || !(at(context.sinceRest, second - 1) >= 1)) return values;
	const { grid, pressing } = context.signals;
	for (let t = second - 1; t >= 0 && t >= second - ENGAGED_S && pressing[t]; t--) {
		const torque = hubTorque(grid.powerW[t], grid.cadenceRpm[t], gear.ratio, powerAt);
		if (torque >= 0) values.push(torque);
	}
	return values;
}

/**
 * Mean of the torques before a second, Nm; NaN = not known. The same as the mean of `onsetTorques`, which a test holds:
 * it is asked of every second of a ride, so it makes no list.
 */
export function onsetTorque(context: RideContext, second: number, powerAt: 'crank' | 'hub'): number {
	const gear = onsetGear(context, second);
	if (!gear || !(at(context.sinceRest, second - 1) >= 1)) return NaN;
	const { grid, pressing } = context.signals;
	let sum = 0;
	let count = 0;
	for (let t = second - 1; t >= 0 && t >= second - ENGAGED_S && pressing[t]; t--) {
		const torque = hubTorque(grid.powerW[t], grid.cadenceRpm[t], gear.ratio, powerAt);
		if (!(torque >= 0)) continue;
		sum += torque;
		count++;
	}
	return sum / count;
}
