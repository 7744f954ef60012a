import type { Gear } from '$lib/drivetrain/bike';
import { engagedCadence } from '$lib/drivetrain/engagedCadence';
import { hubTorque } from '$lib/drivetrain/hubTorque';
import { DRIVE_STATES, type DriveTraces, type DriveState } from './analysis';
import type { Placed } from './candidateFeatures';
import type { RideContext } from './rideContext';

const code = (state: DriveState) => DRIVE_STATES.indexOf(state);
const NOT_OBSERVED = code('not observed');
const STOPPED = code('stopped');
const COASTING = code('coasting');
const PICKING_UP = code('picking up');
const DRIVING = code('driving');
const SHIFTING = code('shifting');
const SLIP = code('slip');

/** State of the drive at every second, events marked as slips. */
export function driveStates(context: RideContext, events: readonly Placed[]): Uint8Array {
	const { signals, path, sinceRest } = context;
	const { grid, pressing, speedMps } = signals;
	const states = new Uint8Array(grid.seconds);
	for (let t = 0; t < grid.seconds; t++) {
		let state = DRIVING;
		if (Number.isNaN(grid.cadenceRpm[t]) || Number.isNaN(speedMps[t])) state = NOT_OBSERVED;
		else if (speedMps[t] < 0.5) state = STOPPED;
		else if (!pressing[t]) state = COASTING;
		else if (sinceRest[t] <= 2) state = PICKING_UP;
		else if (t > 0 && path[t] !== path[t - 1]) state = SHIFTING;
		states[t] = state;
	}
	for (const event of events) states.fill(SLIP, event.from, event.to + 1);
	return states;
}

/** The lines that a page draws under a ride. */
export function driveTraces(
	context: RideContext,
	gears: readonly Gear[],
	states: Uint8Array,
	detectionLimitCrankDeg: Float64Array,
	powerAt: 'crank' | 'hub'
): DriveTraces {
	const { grid, speedMps } = context.signals;
	const engagedCadenceRpm = new Float64Array(grid.seconds).fill(NaN);
	const gainedHubDeg = new Float64Array(grid.seconds);
	const hubTorqueNm = new Float64Array(grid.seconds).fill(NaN);
	let gained = 0;
	let inGear = context.path[0];
	for (let t = 0; t < grid.seconds; t++) {
		// in a slip the crank runs away from its gear and the path would follow it: the gear before is still in
		if (states[t] !== SLIP) inGear = context.path[t];
		const gear = gears[inGear];
		if (gear) {
			engagedCadenceRpm[t] = engagedCadence(speedMps[t], gear.developmentM);
			hubTorqueNm[t] = hubTorque(grid.powerW[t], grid.cadenceRpm[t], gear.ratio, powerAt);
			const gain = 6 * (grid.cadenceRpm[t] - engagedCadenceRpm[t]) * gear.ratio;
			const state = states[t];
			// engaged, crank and wheel turn together: what is left is the sensors' rounding
			if ((state === SLIP || state === COASTING || state === PICKING_UP) && gain === gain) {
				gained += state === SLIP ? Math.max(0, gain) : Math.min(0, gain);
			}
		}
		gainedHubDeg[t] = gained;
	}
	return {
		speedMps: grid.speedMps,
		cadenceRpm: grid.cadenceRpm,
		powerW: grid.powerW,
		distanceM: grid.distanceM,
		engagedCadenceRpm,
		gainedHubDeg,
		hubTorqueNm,
		state: states,
		detectionLimitCrankDeg
	};
}
