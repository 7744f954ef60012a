import { describe, expect, it } from 'vitest';
import { driveSignals } from '$lib/drivetrain/driveSignals';
import { secondGrid } from '$lib/drivetrain/secondGrid';
import { baselines } from '$lib/slip/baselines';
import { excessDeg, findCandidates, higherOf, lowerOf } from '$lib/slip/findCandidates';
import { seededChance } from '$lib/slip/seededChance';
import { CIRCUMFERENCE_M, putSlip, steadyRecords, toRide } from './steadyRide';

describe('findCandidates', () => {
	it('passes over no second in which the crank gains what is looked at', () => {
		const chance = seededChance(9);
		const records = steadyRecords(4);
		for (let t = 5; t + 5 < records.rpm.length; t++) {
			if (chance.next() < 0.2) records.rpm[t] += 12 * (chance.next() - 0.3);
			if (chance.next() < 0.01) putSlip(records, t, 120 * chance.next());
			if (chance.next() < 0.01) records.rpm.fill(0, t, t + 4);
		}
		const signals = driveSignals(secondGrid(toRide(records), CIRCUMFERENCE_M));
		const base = baselines(signals);
		const found = findCandidates(signals, base);
		let gains = 0;
		for (let t = 0; t < signals.grid.seconds; t++) {
			const before = base.justBefore[t];
			const high = higherOf(before, base.justAfter[t]);
			const carefulDeg = excessDeg(signals, t, t, high);
			const generousDeg = excessDeg(signals, t, t, lowerOf(before, base.after3[t]));
			if (!(signals.grid.cadenceRpm[t] >= 20) || !(carefulDeg >= 16 || generousDeg >= 64)) continue;
			gains++;
			// itself, or a stronger one that begins beside it
			expect(found.some(({ from }) => Math.abs(from - t) <= 3)).toBe(true);
		}
		expect(gains).toBeGreaterThan(30);
		expect(found.length).toBeLessThan(0.3 * signals.grid.seconds);
	});
});
