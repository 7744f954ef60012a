import { TURNING_LEAST_RPM } from './observationLimits';
import type { RideContext } from './rideContext';
import { relativeChange } from './rideResponse';
import { sideMean } from './sideMean';
import { whilePressing } from './whilePressing';

/**
 * What decides whether a slip in a second would be seen, by name. None looks at the second itself or the three on
 * each side of it, except for what the rider was doing before: so a slip does not decide whether it counts.
 */
export const OBSERVATION_FEATURES = [
	'ratio noise around',
	'power noise around',
	'cadence around rpm',
	'power around W',
	'power around of usual',
	'seconds pressing before',
	'share of pressing around',
	'step of ratio across',
	'scatter of ratio before',
	'shifts recorded around',
	'records missing around',
	'power follows slowly',
	'cadence follows slowly',
	'ratio scatter of the ride',
	'speed around mps',
	'distance of ratio from a gear',
	'power scatter of the ride'
] as const;

const REACH_S = 30;
const NEAR_S = 12;
const GAP_S = 3;
const RATIO_CUT = 0.08;
const POWER_CUT = 0.8;

/**
 * Observation features of every second, one array a feature.
 *
 * @param context what was learned of the ride
 * @returns arrays of the ride's length in the order of OBSERVATION_FEATURES
 */
export function observationFeatures(context: RideContext): Float64Array[] {
	const { signals, sinceRest, base, response } = context;
	const { grid, pressing, logRatio, speedMps } = signals;
	const { seconds, powerW, cadenceRpm } = grid;
	const usualPower = sideMean(whilePressing(powerW, pressing), REACH_S, GAP_S);
	const share = new Float64Array(seconds);
	const shifts = new Float64Array(seconds);
	for (const t of grid.shiftS) if (t < seconds) shifts[t] = 1;
	const missing = new Float64Array(seconds);
	const turning = new Float64Array(seconds);
	const acrossStep = new Float64Array(seconds);
	const scatterBefore = new Float64Array(seconds);
	const gearDistance = new Float64Array(seconds).fill(NaN);
	const before = new Float64Array(seconds);
	for (let t = 0; t < seconds; t++) {
		share[t] = usualPower[t] / context.usualPowerW;
		missing[t] = Number.isNaN(cadenceRpm[t]) ? 1 : 0;
		turning[t] = cadenceRpm[t] >= TURNING_LEAST_RPM && pressing[t] ? 1 : 0;
		const later = base.after3[Math.min(seconds - 1, t + GAP_S)];
		acrossStep[t] = Math.abs(later - base.before3[t]);
		scatterBefore[t] = Math.abs(base.before3[t] - base.before7[t]);
		const gear = context.ratios[context.path[t]];
		if (gear) gearDistance[t] = Math.min(0.2, Math.abs(base.before7[t] - gear.logRatio));
		before[t] = t > 0 ? sinceRest[t - 1] : 0;
	}
	return [
		sideMean(ratioSteps(logRatio, pressing), REACH_S, GAP_S),
		sideMean(powerSteps(powerW, pressing), REACH_S, GAP_S),
		sideMean(whilePressing(cadenceRpm, pressing), NEAR_S, GAP_S),
		usualPower,
		share,
		before,
		sideMean(turning, NEAR_S, GAP_S),
		acrossStep,
		scatterBefore,
		sideMean(shifts, 6, 0),
		sideMean(missing, NEAR_S, 0),
		new Float64Array(seconds).fill(response.power),
		new Float64Array(seconds).fill(response.cadence),
		new Float64Array(seconds).fill(signals.noise),
		sideMean(speedMps, NEAR_S, GAP_S),
		gearDistance,
		new Float64Array(seconds).fill(response.powerScatter)
	];
}

/** Change of the ratio from one pressing second to the next, cut. */
function ratioSteps(logRatio: Float64Array, pressing: Uint8Array): Float64Array {
	const out = new Float64Array(logRatio.length).fill(NaN);
	for (let t = 1; t < out.length; t++) {
		if (pressing[t] && pressing[t - 1]) out[t] = Math.min(RATIO_CUT, Math.abs(logRatio[t] - logRatio[t - 1]));
	}
	return out;
}

/** Change of power as a share of itself, cut. */
function powerSteps(powerW: Float64Array, pressing: Uint8Array): Float64Array {
	const out = new Float64Array(powerW.length).fill(NaN);
	for (let t = 1; t < out.length; t++) {
		if (!pressing[t] || !pressing[t - 1]) continue;
		out[t] = Math.min(POWER_CUT, relativeChange(powerW[t - 1], powerW[t]));
	}
	return out;
}
