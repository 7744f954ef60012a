import type { ChannelName } from './ride';

/**
 * What a bicycle can do. A value outside was damaged on its way and becomes missing. Common practice,
 * no source; wide enough for a descent at 140 km/h and a track sprint.
 */
export const PLAUSIBLE: Readonly<Record<ChannelName, readonly [low: number, high: number]>> = {
	speedMps: [0, 40],
	distanceM: [0, 5_000_000],
	cadenceRpm: [0, 250],
	powerW: [0, 3000],
	altitudeM: [-500, 9000],
	temperatureC: [-50, 70],
	latitudeDeg: [-90, 90],
	longitudeDeg: [-180, 180],
	// an instantaneous logger sees the crank turned back and the wheel pushed
	wheelRpm: [-200, 1500],
	crankTorqueNm: [-500, 1000]
};

/** a longer step between two records is no pause but a wrong clock: one day */
export const MAX_STEP_MS = 86_400_000;

/**
 * Replaces values that no bicycle can have by NaN.
 * @param name the channel, which fixes unit and range
 * @param values changed in place
 * @returns how many were replaced
 */
export function dropImplausible(name: ChannelName, values: Float64Array): number {
	const [low, high] = PLAUSIBLE[name];
	let dropped = 0;
	for (let i = 0; i < values.length; i++) {
		if (values[i] >= low && values[i] <= high) continue;
		if (!Number.isNaN(values[i])) dropped++;
		values[i] = NaN;
	}
	return dropped;
}
