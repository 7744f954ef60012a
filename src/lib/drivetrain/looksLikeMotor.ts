import type { SecondGrid } from './secondGrid';

/** A light rider with a light bicycle, kg: whoever weighs more needs more power, so the sign errs towards no motor. */
const LEAST_MASS_KG = 60;
/** Standard gravity, m/s2. */
const GRAVITY = 9.81;
/** A start begins below this speed ... */
const STARTS_BELOW_MPS = 2;
/** ... and has been made at this one ... */
const STARTED_FROM_MPS = 5.5;
/** ... within this time (common practice, no source). */
const START_WITHIN_S = 12;
/** Climbs are looked at by the minute. */
const CLIMB_S = 60;
/** Of height in a minute; less is within what barometers drift. */
const LEAST_CLIMB_M = 6;
/** Less than this share of the power that mass alone needs. */
const SHARE = 0.6;
/** Fewer starts and climbs say nothing (common practice, no source). */
const LEAST_CASES = 6;
/** Starts downhill exist: most of the cases must show it (common practice, no source). */
const MOST_OF_THEM = 0.7;

/**
 * Whether the bicycle gains speed and height with less power than its mass needs: a motor helps. Counted are starts
 * (kinetic energy) and climbs of a minute (height); downhill starts exist, so most of many must show it. A person
 * decides; this only asks.
 *
 * @param grid the ride on whole seconds
 * @param altitudeM height a second, NaN = not recorded; null = nowhere
 * @returns false without power, or with too few starts and climbs
 */
export function looksLikeMotor(grid: SecondGrid, altitudeM: Float64Array | null): boolean {
	const { speedMps, powerW, seconds } = grid;
	let cases = 0;
	let short = 0;
	const judge = (givenJ: number, neededJ: number) => {
		if (!(givenJ >= 0) || !(neededJ > 0)) return;
		cases++;
		if (givenJ < SHARE * neededJ) short++;
	};
	for (let t = 1; t + START_WITHIN_S < seconds; t++) {
		if (!(speedMps[t - 1] < STARTS_BELOW_MPS) || !(speedMps[t] >= STARTS_BELOW_MPS)) continue;
		let to = t;
		while (to < t + START_WITHIN_S && speedMps[to] < STARTED_FROM_MPS) to++;
		if (!(speedMps[to] >= STARTED_FROM_MPS)) continue;
		const fallM = altitudeM ? Math.max(0, altitudeM[t - 1] - altitudeM[to]) || 0 : 0;
		const gainJ = 0.5 * LEAST_MASS_KG * (speedMps[to] ** 2 - speedMps[t - 1] ** 2);
		judge(workJ(powerW, t, to), gainJ - LEAST_MASS_KG * GRAVITY * fallM);
		t = to;
	}
	for (let t = 0; altitudeM && t + CLIMB_S < seconds; t += CLIMB_S) {
		const climbM = altitudeM[t + CLIMB_S] - altitudeM[t];
		if (climbM < LEAST_CLIMB_M || !(speedMps[t + CLIMB_S] > STARTS_BELOW_MPS)) continue;
		const slowedJ = 0.5 * LEAST_MASS_KG * Math.max(0, speedMps[t] ** 2 - speedMps[t + CLIMB_S] ** 2);
		judge(workJ(powerW, t, t + CLIMB_S), LEAST_MASS_KG * GRAVITY * climbM - slowedJ);
	}
	return cases >= LEAST_CASES && short >= MOST_OF_THEM * cases;
}

/** Power over whole seconds as work; NaN where one is missing. */
function workJ(powerW: Float64Array, from: number, to: number): number {
	let sum = 0;
	for (let t = from; t <= to; t++) sum += powerW[t];
	return sum;
}
