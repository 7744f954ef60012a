import { describe, expect, it } from 'vitest';
import { driveSignals } from '$lib/drivetrain/driveSignals';
import { secondGrid } from '$lib/drivetrain/secondGrid';
import { placeCandidate } from '$lib/slip/candidateFeatures';
import { overrunSize } from '$lib/slip/overrunSize';
import { rideContext } from '$lib/slip/rideContext';
import { CIRCUMFERENCE_M, putSlip, steadyRecords, toRide, type Records } from './steadyRide';

const AT = 600;

function sizeAt(records: Records, byTurn = false) {
	const context = rideContext(driveSignals(secondGrid(toRide(records), CIRCUMFERENCE_M)));
	const candidate = context.candidates.find(({ from, to }) => from <= AT + 1 && to >= AT)!;
	return overrunSize(context, placeCandidate(context, candidate), byTurn);
}

describe('overrunSize', () => {
	it('gives the angle that was put in, within 20 % in the middle of twenty rides, and within its limits in nine of ten', () => {
		const ratios: number[] = [];
		let covered = 0;
		for (let seed = 1; seed <= 20; seed++) {
			const records = steadyRecords(seed);
			putSlip(records, AT, 150);
			const { value, lower, upper } = sizeAt(records).crankDeg;
			ratios.push(value / 150);
			if (lower <= 150 && upper >= 150) covered++;
		}
		ratios.sort((a, b) => a - b);
		expect(ratios[10]).toBeGreaterThan(0.9);
		expect(ratios[10]).toBeLessThan(1.1);
		expect(ratios[1]).toBeGreaterThan(0.8);
		expect(ratios[18]).toBeLessThan(1.2);
		expect(covered).toBeGreaterThanOrEqual(18);
	});

	it('adds up the seconds that stand out of the noise and leaves the quiet ones beside them out', () => {
		const records = steadyRecords();
		records.rpm[AT] += 25;
		records.watts[AT] *= 0.2;
		expect(sizeAt(records)).toMatchObject({ from: AT, to: AT });
		records.rpm[AT + 1] += 12;
		expect(sizeAt(records)).toMatchObject({ from: AT, to: AT + 1 });
	});

	it('lowers only the lower limit where cadence is measured turn by turn', () => {
		const records = steadyRecords();
		putSlip(records, AT, 150);
		const mean = sizeAt(records).crankDeg;
		const turn = sizeAt(records, true).crankDeg;
		expect(turn.value).toBe(mean.value);
		expect(turn.upper).toBe(mean.upper);
		expect(turn.lower).toBeLessThan(0.8 * mean.lower);
	});

	it('reads one turn as 360 degrees less what the wheel explains: 112 rpm where 84 were needed are 90 degrees', () => {
		const records = steadyRecords();
		for (let t = AT - 20; t < AT + 20; t++) {
			records.rpm[t] = 84;
			records.mps[t] = (84 * (46 / 17) * CIRCUMFERENCE_M) / 60;
		}
		records.rpm[AT] = 112;
		records.watts[AT] *= 0.2;
		const { crankDeg } = sizeAt(records, true);
		// 6 x 28 = 168 as a mean over the second; 360 x (1 - 84 / 112) = 90 as one turn
		expect(crankDeg.value).toBeGreaterThan(160);
		expect(crankDeg.lower).toBeLessThan(90);
	});
});
