import { describe, expect, it } from 'vitest';
import { driveSignals, type DriveSignals } from '$lib/drivetrain/driveSignals';
import { median } from '$lib/drivetrain/median';
import { secondGrid } from '$lib/drivetrain/secondGrid';
import { baselines } from '$lib/slip/baselines';
import { seededChance } from '$lib/slip/seededChance';
import { CIRCUMFERENCE_M, steadyRecords, toRide } from './steadyRide';

/** A ride with scatter, rests of every length and missing seconds. */
function restlessSignals(): DriveSignals {
	const chance = seededChance(3);
	const records = steadyRecords(2);
	for (let t = 0; t < records.rpm.length; t++) {
		if (chance.next() < 0.08) records.rpm.fill(chance.next() < 0.5 ? 0 : NaN, t, t + 25 * chance.next() ** 3);
		if (chance.next() < 0.05) records.watts.fill(0, t, t + 8 * chance.next());
		if (chance.next() < 0.1) records.mps[t] *= 0.9 + 0.2 * chance.next();
	}
	return driveSignals(secondGrid(toRide(records), CIRCUMFERENCE_M));
}

/** By definition: the nearest values on one side, none too far away. */
function sideMedian(
	logRatio: Float64Array,
	counts: (t: number) => boolean,
	t: number,
	side: -1 | 1,
	most: number,
	reachS: number
): number {
	const near: number[] = [];
	for (let k = t + side; Math.abs(k - t) <= reachS && near.length < most; k += side)
		if (k >= 0 && k < logRatio.length && counts(k)) near.push(logRatio[k]);
	return median(near);
}

describe('baselines', () => {
	it('gives at every second the median of the nearest seconds on each side, to the last bit', () => {
		const signals = restlessSignals();
		const { logRatio, pressing } = signals;
		const presses = (t: number) => pressing[t] === 1;
		const turns = (t: number) => !Number.isNaN(logRatio[t]);
		const base = baselines(signals);
		for (const [values, counts, side, most, reachS] of [
			[base.before3, presses, -1, 3, 14],
			[base.before7, presses, -1, 7, 14],
			[base.after3, presses, 1, 3, 14],
			[base.after7, presses, 1, 7, 14],
			[base.justBefore, presses, -1, 3, 6],
			[base.justAfter, turns, 1, 3, 4]
		] as const) {
			const expected = Array.from(values, (_, t) => sideMedian(logRatio, counts, t, side, most, reachS));
			expect([...values]).toEqual(expected);
			expect(expected.filter(Number.isNaN).length).toBeGreaterThan(0);
		}
	});
});
