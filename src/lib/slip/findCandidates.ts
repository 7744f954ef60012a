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
	const { seconds } = signals.grid;
	const strength = new Float64Array(seconds);
	const found: (Candidate | undefined)[] = new Array(seconds);
	for (let from = 0; from < seconds; from++) {
		if (!turns(signals, from) || gainsTooLittle(signals, base, from)) continue;
		const best = strongestFrom(signals, base, from);
		if (!best) continue;
		if (best.carefulDeg < LEAST_CAREFUL_DEG && best.generousDeg < LEAST_GENEROUS_DEG) continue;
		strength[from] = strengthOf(best.carefulDeg, best.generousDeg);
		found[from] = best;
	}
	return strongest(found, strength);
}

/** Crank and wheel turn. */
function turns({ grid, speedMps }: DriveSignals, t: number): boolean {
	return grid.cadenceRpm[t] >= TURNING_RPM && speedMps[t] > 0.3;
}

function strengthOf(carefulDeg: number, generousDeg: number): number {
	return Math.max(carefulDeg, 0.25 * generousDeg);
}

/** The strongest of the excesses that begin in a second. */
function strongestFrom(signals: DriveSignals, base: Baselines, from: number): Candidate | undefined {
	const before = base.justBefore[from];
	let best: Candidate | undefined;
	let bestStrength = 0;
	for (let to = from; to < Math.min(signals.grid.seconds, from + LONGEST_S) && turns(signals, to); to++) {
		const high = higherOf(before, base.justAfter[to]);
		const low = lowerOf(before, base.after3[to]);
		if (Number.isNaN(high)) continue;
		const carefulDeg = excessDeg(signals, from, to, high);
		const generousDeg = low === high ? carefulDeg : excessDeg(signals, from, to, low);
		const now = strengthOf(carefulDeg, generousDeg);
		if (now > bestStrength) {
			bestStrength = now;
			best = { from, to, carefulDeg, generousDeg };
		}
	}
	return best;
}

/** Far more than the rounding of a sum of degrees. */
const ROUNDING_DEG = 1e-6;

/**
 * Whether the crank, even against the lowest ratio that may be taken, gains less than the least that is looked at: so it
 * is in nine of ten seconds, which are told here by a few products. With x = ln(ratio / engaged ratio) a second's
 * excess is 6 n (1 - exp(-x)), which is never more than 6 n x.
 */
function gainsTooLittle({ grid, logRatio }: DriveSignals, base: Baselines, from: number): boolean {
	const before = base.justBefore[from];
	// without a ratio before, the careful one may be the lower
	if (before !== before) return false;
	const end = Math.min(grid.seconds, from + LONGEST_S);
	let low = before;
	for (let t = from; t < end; t++) if (base.after3[t] < low) low = base.after3[t];
	let mostDeg = 0;
	for (let t = from; t < end; t++) {
		const above = logRatio[t] - low;
		if (above !== above) return false;
		if (above > 0) mostDeg += 6 * grid.cadenceRpm[t] * above;
	}
	return mostDeg < LEAST_CAREFUL_DEG - ROUNDING_DEG;
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
