import { describe, expect, it } from 'vitest';
import { driveSignals } from '$lib/drivetrain/driveSignals';
import { secondGrid } from '$lib/drivetrain/secondGrid';
import { placeCandidate } from '$lib/slip/candidateFeatures';
import { explainByGears } from '$lib/slip/explainByGears';
import { rideContext } from '$lib/slip/rideContext';
import { CIRCUMFERENCE_M, putSlip, steadyRecords, toRide, type Records } from './steadyRide';

function explained(records: Records, near: number) {
	const context = rideContext(driveSignals(secondGrid(toRide(records), CIRCUMFERENCE_M)));
	const candidate = context.candidates.find((one) => Math.abs(one.from - near) <= 1)!;
	return explainByGears(context, placeCandidate(context, candidate));
}

describe('explainByGears', () => {
	it('finds a slip better than gears alone, with its size within a fifth', () => {
		const records = steadyRecords();
		putSlip(records, 600, 150);
		const { gearsOnly, withSlip, excessDeg } = explained(records, 600);
		expect(gearsOnly - withSlip).toBeGreaterThan(5);
		expect(excessDeg).toBeGreaterThan(120);
		expect(excessDeg).toBeLessThan(180);
	});

	it('finds gears alone good enough for a shift to a gear of the ride and back', () => {
		const records = steadyRecords();
		for (let t = 600; t < 604; t++) records.rpm[t] = Math.round(records.rpm[t] * (19 / 17));
		const shift = explained(records, 600);
		expect(shift.gearsOnly - shift.withSlip).toBeLessThan(5);
		expect(shift.changes).toBeGreaterThanOrEqual(1);
	});
});
