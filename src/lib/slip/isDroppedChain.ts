import { at, type Placed } from './candidateFeatures';
import type { RideContext } from './rideContext';

/** A crank turn and more: a clutch that lets go catches again before, nearly always. */
const LEAST_DEG = 400;
/** The seconds after the overrun that are looked at ... */
const LOOKED_AT_S = 5;
/** ... of which so many must show a crank that turns ... */
const LEAST_IDLE_S = 2;
/** ... at least this fast ... */
const TURNS_RPM = 30;
/** ... without load. */
const NO_LOAD_W = 15;
/** Slower than this the wheel stands. */
const STANDS_MPS = 0.5;
/** Nobody rides on for long with the chain off. */
const STANDS_WITHIN_S = 120;

/**
 * Signs of a chain that is off or broken: the crank runs on for more than a turn, keeps turning without any load,
 * and nobody drives again before the wheel stands. A clutch that let go takes up again, and a rider who only stops
 * in fright stops the cranks. (The limits are estimates: no ride with a dropped chain was at hand.)
 *
 * @param context what was learned of the ride
 * @param placed the excess in its place
 * @param overrunDeg its size, crank degrees
 */
export function isDroppedChain(context: RideContext, placed: Placed, overrunDeg: number): boolean {
	if (!(overrunDeg >= LEAST_DEG)) return false;
	const { pressing, grid } = context.signals;
	let idle = 0;
	for (let t = placed.to + 1; t <= placed.to + LOOKED_AT_S; t++) {
		if (at(grid.cadenceRpm, t) >= TURNS_RPM && at(grid.powerW, t) <= NO_LOAD_W) idle++;
	}
	if (idle < LEAST_IDLE_S) return false;
	for (let t = placed.to + 1; t <= placed.to + STANDS_WITHIN_S && t < grid.seconds; t++) {
		if (pressing[t]) return false;
		if (grid.speedMps[t] < STANDS_MPS) return true;
	}
	return false;
}
