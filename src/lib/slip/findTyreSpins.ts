import type { RideContext } from './rideContext';
import { onsetTorque } from './onsetTorques';

/** The driven wheel ran ahead of the bicycle from `from` to `to` (seconds), by `gainMps` at most. */
export interface TyreSpin {
	readonly from: number;
	readonly to: number;
	readonly gainMps: number;
}

/** Less is within what speed sensors scatter. */
const LEAST_GAIN_MPS = 0.7;
/** Share of the speed before, for the same reason. */
const LEAST_GAIN = 0.14;
/** The lightest bicycle with rider, kg, and the radius of its wheel, m: more gain than the drive gives them is spin. */
const LEAST_MASS_KG = 60;
/** Radius of the wheel, m (a tyre of 40-622 is 0.34). */
const RADIUS_M = 0.33;
/** Within a second torque may be higher than its mean over the last ones by this factor. */
const PEAK = 1.3;
/** Slower than this a wheel sensor shows mostly its own rhythm. */
const SLOWEST_MPS = 1.5;
/** Faster than this no rider has the torque (estimate). */
const FASTEST_MPS = 6;
/** A tyre lets go at high drive (estimate). */
const LEAST_HUB_TORQUE_NM = 30;
/** Crank and wheel stay together within this while the tyre spins: the clutch holds. */
const TOGETHER = 0.05;
/** A spin is over within this time (estimate). */
const BACK_WITHIN_S = 3;
/** Speed before and after differ by no more than this share of the gain. */
const BACK_SHARE = 0.4;

/**
 * Stretches in which the tyre, not the freehub, ran away: with a sensor at the driven wheel speed and cadence jump
 * up together in the same ratio, faster than the drive can have moved bicycle and rider, and fall back. Short spins
 * hardly show in values of one second. (Limits are estimates; none of the labelled real rides shows one.)
 *
 * @param context what was learned of the ride
 * @param powerAt where power is measured
 * @returns spins in order
 */
export function findTyreSpins(context: RideContext, powerAt: 'crank' | 'hub'): TyreSpin[] {
	const { signals } = context;
	const { speedMps, logRatio, pressing, grid } = signals;
	const spins: TyreSpin[] = [];
	for (let t = 3; t + BACK_WITHIN_S + 1 < grid.seconds; t++) {
		const before = speedMps[t - 1];
		const gainMps = speedMps[t] - before;
		if (!(gainMps >= Math.max(LEAST_GAIN_MPS, LEAST_GAIN * before))) continue;
		if (!(before >= SLOWEST_MPS && before <= FASTEST_MPS) || !pressing[t - 1] || !pressing[t - 2]) continue;
		if (!(Math.abs(speedMps[t - 2] - before) < BACK_SHARE * gainMps)) continue;
		if (!(Math.abs(logRatio[t] - logRatio[t - 1]) < TOGETHER)) continue;
		const torqueNm = onsetTorque(context, t, powerAt);
		if (!(torqueNm >= LEAST_HUB_TORQUE_NM)) continue;
		if (gainMps < (PEAK * torqueNm) / (RADIUS_M * LEAST_MASS_KG)) continue;
		let to = t;
		while (to <= t + BACK_WITHIN_S && speedMps[to] - before > BACK_SHARE * gainMps) to++;
		if (to > t + BACK_WITHIN_S || !(Math.abs(logRatio[to] - logRatio[t - 1]) < TOGETHER)) continue;
		spins.push({ from: t, to: to - 1, gainMps });
		t = to;
	}
	return spins;
}
