import type { DriveSignals } from '$lib/drivetrain/driveSignals';
import { cutRatio } from './cutRatio';
import { excessDeg, TURNING_RPM, type Candidate } from './findCandidates';
import { LEAST_REPORTED_DEG } from './reportLimits';

/** Peaks of up to two seconds. */
const WIDTH_S = 3;
/** A peak that stands out by less is not looked at. */
const LEAST_PEAK_DEG = 30;
/** A second beside the peak belongs to it while it holds this share of the peak's excess. */
const BELONGS = 0.3;

/**
 * Adds the narrow peaks that no candidate of reportable size holds: slips in the middle of a change of gear, where the
 * ratio before and after says little of the second itself, and those that follow another closely. They are measured
 * against the higher of their two sides.
 *
 * @param signals the ride's signals
 * @param candidates in order of time
 * @returns all of them in order of time
 */
export function withPeaks(signals: DriveSignals, candidates: readonly Candidate[]): Candidate[] {
	const { logRatio, grid } = signals;
	const { seconds, cadenceRpm } = grid;
	const held = new Uint8Array(seconds);
	for (const { from, to, carefulDeg } of candidates) {
		if (carefulDeg >= LEAST_REPORTED_DEG) held.fill(1, from, to + 1);
	}
	const out = [...candidates];
	for (let t = 1; t + 1 < seconds; t++) {
		const here = logRatio[t];
		if (held[t] || here < logRatio[t - 1] || here < logRatio[t + 1] || !(cadenceRpm[t] >= TURNING_RPM))
			continue;
		const reference = cutRatio(signals, WIDTH_S, t);
		const peakDeg = excessDeg(signals, t, t, reference);
		if (!(peakDeg >= LEAST_PEAK_DEG)) continue;
		const belongs = (k: number) => excessDeg(signals, k, k, reference) > BELONGS * peakDeg;
		const from = belongs(t - 1) ? t - 1 : t;
		const to = belongs(t + 1) ? t + 1 : t;
		const carefulDeg = excessDeg(signals, from, to, reference);
		out.push({ from, to, carefulDeg, generousDeg: carefulDeg, reference });
	}
	return out.sort((a, b) => a.from - b.from);
}
