import { at, type Placed } from './candidateFeatures';
import type { RideContext } from './rideContext';

/** A tyre lets go at high drive and low speed. */
const LEAST_HUB_TORQUE_NM = 30;
/** Faster than this no rider has the torque (estimate). */
const FASTEST_MPS = 6;
/** A spinning tyre still takes part of the drive; a freehub that lets go takes none. */
const KEPT_SHARE = 0.65;

/**
 * Signs that the tyre spun, where the speed is not that of the driven wheel (front wheel, satellites): an excess at
 * high hub torque and low speed in which most of the power went on. A speed sensor at the driven wheel would show
 * such a spin as speed, not as an excess.
 *
 * @param context what was learned of the ride
 * @param placed the excess in its place
 * @param hubTorqueNm mean hub torque just before it; null = not known
 * @returns false wherever a sign is missing: what may be a slip stays one
 */
export function isTyreSpin(context: RideContext, placed: Placed, hubTorqueNm: number | null): boolean {
	if (hubTorqueNm === null || !(hubTorqueNm >= LEAST_HUB_TORQUE_NM)) return false;
	const { grid, speedMps } = context.signals;
	if (!(speedMps[placed.peak] <= FASTEST_MPS)) return false;
	let before = 0;
	for (let k = 2; k <= 4; k++) before += at(grid.powerW, placed.from - k) / 3;
	for (let t = placed.from - 1; t <= placed.to + 2; t++) {
		if (!(at(grid.powerW, t) >= KEPT_SHARE * before)) return false;
	}
	return true;
}
