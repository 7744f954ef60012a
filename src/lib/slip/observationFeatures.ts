import { TURNING_LEAST_RPM } from './observationLimits';
import type { RideContext } from './rideContext';
import { sideMean } from './sideMean';

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
	'distance of ratio from a gear'
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
	const { signals, sinceRest, base } = context;
	const { grid, pressing, logRatio, speedMps } = signals;
	const { seconds, powerW, cadenceRpm } = grid;
	const pressed = (values: Float64Array) => values.map((value, t) => (pressing[t] ? value : NaN));
	const step = (values: Float64Array, cut: number, relative: boolean) =>
		values.map((value, t) => {
			if (t === 0 || !pressing[t] || !pressing[t - 1]) return NaN;
			const change = Math.abs(value - values[t - 1]);
			return Math.min(cut, relative ? change / Math.max(40, value, values[t - 1]) : change);
		});
	const usualPower = sideMean(pressed(powerW), REACH_S, GAP_S);
	const { response } = context;
	const shifts = new Float64Array(seconds);
	for (const t of grid.shiftS) if (t < seconds) shifts[t] = 1;
	const missing = cadenceRpm.map((rpm) => (Number.isNaN(rpm) ? 1 : 0));
	const turning = cadenceRpm.map((rpm, t) => (rpm >= TURNING_LEAST_RPM && pressing[t] ? 1 : 0));
	const acrossStep = new Float64Array(seconds).fill(NaN);
	const scatterBefore = new Float64Array(seconds).fill(NaN);
	const gearDistance = new Float64Array(seconds).fill(NaN);
	const before = new Float64Array(seconds);
	for (let t = 0; t < seconds; t++) {
		const later = base.after3[Math.min(seconds - 1, t + GAP_S)];
		acrossStep[t] = Math.abs(later - base.before3[t]);
		scatterBefore[t] = Math.abs(base.before3[t] - base.before7[t]);
		const gear = context.ratios[context.path[t]];
		if (gear) gearDistance[t] = Math.min(0.2, Math.abs(base.before7[t] - gear.logRatio));
		before[t] = t > 0 ? sinceRest[t - 1] : 0;
	}
	return [
		sideMean(step(logRatio, RATIO_CUT, false), REACH_S, GAP_S),
		sideMean(step(powerW, POWER_CUT, true), REACH_S, GAP_S),
		sideMean(pressed(cadenceRpm), NEAR_S, GAP_S),
		usualPower,
		usualPower.map((watts) => watts / context.usualPowerW),
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
		gearDistance
	];
}
