import type { DriveSignals } from '$lib/drivetrain/driveSignals';
import type { Baselines } from './baselines';

/** Seconds in which the crank turned further than the wheel explains; most are no slips. */
export interface Candidate {
	/** first and last second of the excess, inclusive */
	readonly from: number;
	readonly to: number;
	/** crank degrees beyond the engaged ratio that explains more of them (before or after) */
	readonly carefulDeg: number;
	/** crank degrees beyond the engaged ratio that explains fewer of them */
	readonly generousDeg: number;
	/** ln(crank turns per metre) of the higher side of a narrow peak, where it is measured against that (withPeaks) */
	readonly reference?: number;
}

const LONGEST_S = 3;
/** Below these nothing is looked at: far under what a 1 Hz recording can show. */
const LEAST_CAREFUL_DEG = 16;
const LEAST_GENEROUS_DEG = 50;
export const TURNING_RPM = 20;

/**
 * Finds the stretches of one to four seconds in which the crank gained on the wheel.
 *
 * @param signals the ride's signals
 * @param base engaged ratios around every second
 * @returns candidates in order of time; none overlaps a stronger one
 */
export function findCandidates(signals: DriveSignals, base: Baselines): Candidate[] {
	const { seconds, cadenceRpm } = signals.grid;
	const strength = new Float64Array(seconds);
	const found: (Candidate | undefined)[] = new Array(seconds);
	for (let from = 0; from < seconds; from++) {
		if (!(cadenceRpm[from] >= TURNING_RPM) || !(signals.speedMps[from] > 0.3)) continue;
		const before = base.justBefore[from];
		let best: Candidate | undefined;
		let bestStrength = 0;
		for (let to = from; to < Math.min(seconds, from + LONGEST_S); to++) {
			if (!(cadenceRpm[to] >= TURNING_RPM) || !(signals.speedMps[to] > 0.3)) break;
			const after = base.justAfter[to];
			const high = higherOf(before, after);
			const low = lowerOf(before, base.after3[to]);
			if (Number.isNaN(high)) continue;
			const carefulDeg = excessDeg(signals, from, to, high);
			const generousDeg = low === high ? carefulDeg : excessDeg(signals, from, to, low);
			const now = Math.max(carefulDeg, 0.25 * generousDeg);
			if (now > bestStrength) {
				bestStrength = now;
				best = { from, to, carefulDeg, generousDeg };
			}
		}
		if (!best) continue;
		if (best.carefulDeg < LEAST_CAREFUL_DEG && best.generousDeg < LEAST_GENEROUS_DEG) continue;
		strength[from] = bestStrength;
		found[from] = best;
	}
	return strongest(found, strength);
}

/** Integral of 6 (n - n_engaged) over whole seconds, crank degrees. */
export function excessDeg(signals: DriveSignals, from: number, to: number, logRatio: number): number {
	const turnsPerMetre = Math.exp(logRatio);
	let sum = 0;
	for (let t = from; t <= to; t++) {
		sum += 6 * (signals.grid.cadenceRpm[t] - 60 * signals.speedMps[t] * turnsPerMetre);
	}
	return sum;
}

/** The greater of two ratios, or the one that is known. */
export function higherOf(a: number, b: number): number {
	return a > b || Number.isNaN(b) ? a : b;
}

/** The smaller of two ratios, or the one that is known. */
export function lowerOf(a: number, b: number): number {
	return a < b || Number.isNaN(b) ? a : b;
}

/** Keeps a candidate when no stronger one begins beside it. */
function strongest(found: (Candidate | undefined)[], strength: Float64Array): Candidate[] {
	const kept: Candidate[] = [];
	for (let t = 0; t < found.length; t++) {
		const candidate = found[t];
		if (!candidate) continue;
		let beaten = false;
		for (let k = Math.max(0, t - 1); k <= Math.min(found.length - 1, t + 1) && !beaten; k++) {
			beaten = strength[k] > strength[t] || (k < t && strength[k] === strength[t]);
		}
		if (!beaten) kept.push(candidate);
	}
	return kept;
}
