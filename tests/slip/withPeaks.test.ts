import { describe, expect, it } from 'vitest';
import { driveSignals } from '$lib/drivetrain/driveSignals';
import { secondGrid } from '$lib/drivetrain/secondGrid';
import { baselines } from '$lib/slip/baselines';
import { findCandidates, type Candidate } from '$lib/slip/findCandidates';
import { LEAST_REPORTED_DEG } from '$lib/slip/reportLimits';
import { withPeaks } from '$lib/slip/withPeaks';
import { CIRCUMFERENCE_M, developmentOf, putSlip, steadyRecords, toRide, type Records } from './steadyRide';

const AT_S = 600;

/** One sprocket after the other, two seconds each, at a steady pace of the legs: speed rises with each. */
function acceleratedRecords(): Records {
	const records = steadyRecords();
	[24, 21, 19, 17, 15, 13].forEach((sprocket, i) => {
		for (let t = AT_S - 6 + 2 * i; t < AT_S - 4 + 2 * i; t++)
			records.mps[t] = (records.rpm[t] * developmentOf(sprocket)) / 60;
	});
	return records;
}

function candidatesOf(records: Records): { before: Candidate[]; all: Candidate[] } {
	const signals = driveSignals(secondGrid(toRide(records), CIRCUMFERENCE_M));
	const before = findCandidates(signals, baselines(signals));
	return { before, all: withPeaks(signals, before) };
}
const large = (candidates: readonly Candidate[]) =>
	candidates.filter(
		({ from, to, carefulDeg }) => from <= AT_S + 1 && to >= AT_S && carefulDeg >= LEAST_REPORTED_DEG
	);

describe('withPeaks', () => {
	it('finds the slip between one change of gear and the next that lies below both sides of the medians', () => {
		const records = acceleratedRecords();
		putSlip(records, AT_S + 1, 100);
		const { before, all } = candidatesOf(records);
		expect(large(before)).toHaveLength(0);
		expect(large(all)).toHaveLength(1);
		const [{ carefulDeg, from }] = large(all);
		expect(from).toBe(AT_S + 1);
		// what the first second shows of it: 70 of 100 degrees, less what the gear before explains
		expect(carefulDeg).toBeGreaterThan(46);
		expect(carefulDeg).toBeLessThan(110);
	});

	it('finds nothing in the changes of gear alone', () => {
		expect(large(candidatesOf(acceleratedRecords()).all)).toHaveLength(0);
	});

	it('adds nothing where a candidate holds the peak, and keeps their order', () => {
		const records = steadyRecords();
		putSlip(records, AT_S, 150);
		const { before, all } = candidatesOf(records);
		expect(large(all)).toEqual(large(before));
		expect(large(all)).toHaveLength(1);
		expect(all.map(({ from }) => from)).toEqual(all.map(({ from }) => from).sort((a, b) => a - b));
	});
});
