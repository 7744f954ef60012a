import { expect, test } from 'vitest';
import { randomNumbers } from '$lib/reliability/randomNumbers';
import type { BuildEvidence, EvidenceRide } from '$lib/server/evidence/buildEvidence';
import { torqueCurve } from '$lib/server/evidence/torqueCurve';
import { cell, ride, slip } from './rides';

const COUNTING = { unit: 'slips', unreviewed: 'slip' } as const;
const build = (rides: EvidenceRide[]): BuildEvidence => ({
	buildId: 1,
	build: 'Old',
	wheels: [{ id: 1, name: 'Wheel 1', endM: 500_000 }],
	rides
});
/** turns at a torque bin; two strokes each */
const turned = (torqueBin: number, observedTurns: number) => ({
	...cell(torqueBin, 5 * observedTurns),
	observedTurns
});

/** 80 rides over bins whose middles are 6, 18, 35 and 50 Nm; slips drawn a stroke */
function drawn(chanceOf: (torqueNm: number) => number, { seed = 3, burst = 1 } = {}): BuildEvidence {
	const draw = randomNumbers(seed);
	const at = [6, 18, 35, 50];
	return build(
		Array.from({ length: 80 }, () => {
			const cells = [turned(1, 4000), turned(4, 3000), turned(7, 800), turned(8, 200)];
			const events = cells.flatMap(({ torqueBin, observedTurns }, place) =>
				Array.from({ length: draw.poisson((2 * observedTurns * chanceOf(at[place])) / burst) }, () =>
					Array.from({ length: burst }, (_, step) => slip({ torqueBin, startS: 100 + 30 * step }))
				).flat()
			);
			return ride({ cells, events });
		})
	);
}

test('The limits of the curve hold the truth from which slips were drawn', () => {
	// log odds -11 + 0.1 a Nm: 2.72-fold for each 10 Nm
	const chance = (torqueNm: number) => 1 / (1 + Math.exp(11 - 0.1 * torqueNm));
	let held = 0;
	for (let seed = 1; seed <= 40; seed++) {
		const curve = torqueCurve(drawn(chance, { seed }), COUNTING);
		expect(curve.kind).toBe('fit');
		if (curve.perTenNm!.lower <= Math.E && Math.E <= curve.perTenNm!.upper) held++;
		for (const { torqueNm, value, lower, upper } of curve.smooth) {
			expect(lower).toBeLessThan(value);
			expect(upper).toBeGreaterThan(value);
			expect(torqueNm).toBeLessThanOrEqual(50);
		}
	}
	// 95 % of 40 is 38; 34 or fewer come by chance in 1.4 % of such sets (binomial)
	expect(held).toBeGreaterThanOrEqual(35);
});

test('Slips that come in bursts widen the limits', () => {
	const chance = (torqueNm: number) => 1 / (1 + Math.exp(9.5 - 0.06 * torqueNm));
	const width = (burst: number) => {
		const { lower, upper } = torqueCurve(drawn(chance, { burst }), COUNTING).perTenNm!;
		return Math.log(upper / lower);
	};
	expect(width(6)).toBeGreaterThan(1.7 * width(1));
});

test('Steps never fall with torque, count two strokes a turn, and a torque not ridden has no value', () => {
	const events = [...Array<null>(6).fill(null)].map((_, place) =>
		slip({ torqueBin: place < 4 ? 2 : 5, startS: 100 + 100 * place })
	);
	const { points } = torqueCurve(
		build([ride({ cells: [turned(2, 500), turned(5, 1000)], events })]),
		COUNTING
	);
	expect(points.map(({ strokes }) => strokes)).toEqual([0, 0, 1000, 0, 0, 2000, 0, 0, 0, 0]);
	// 4 of 1000, then 2 of 2000, which would fall: 6 of 3000 at both
	expect(points[2].neverFalling).toBeCloseTo(20, 9);
	expect(points[5].neverFalling).toBeCloseTo(20, 9);
	expect(points[9]).toMatchObject({ fromNm: 60, toNm: null, neverFalling: null });
});

test('The smooth curve ends at the bins that were observed for 2 km or more', () => {
	const events = Array.from({ length: 12 }, (_, place) =>
		slip({ torqueBin: place % 3 === 0 ? 1 : 5, startS: 100 * (place + 1) })
	);
	const { kind, smooth } = torqueCurve(
		build([ride({ cells: [turned(1, 4000), turned(5, 2000), turned(7, 100)], events })]),
		COUNTING
	);
	expect(kind).toBe('fit');
	// bins 4 to 8 and 20 to 25 Nm; half a kilometre at 30 to 40 Nm carries no curve
	expect([smooth[0].torqueNm, smooth.at(-1)!.torqueNm]).toEqual([6, 22.5]);
});

test('A slip without a torque is counted apart and enters no point', () => {
	const events = [slip({ torqueBin: -1 }), slip({ torqueBin: 5, startS: 500 })];
	const curve = torqueCurve(build([ride({ cells: [turned(5, 100)], events })]), COUNTING);
	expect(curve.withoutTorque).toBe(1);
	expect(curve.points.reduce((sum, { slips }) => sum + slips, 0)).toBe(1);
});

test('Nothing smooth is drawn through few slips, through one torque, or where torque parts them wholly', () => {
	const many = (bin: number, count: number) =>
		Array.from({ length: count }, (_, place) => slip({ torqueBin: bin, startS: 100 + 100 * place }));
	const kind = (rides: EvidenceRide[]) => {
		const { kind: told, smooth, perTenNm } = torqueCurve(build(rides), COUNTING);
		expect([smooth, perTenNm]).toEqual([[], null]);
		return told;
	};
	expect(kind([])).toBe('too few');
	expect(kind([ride({ cells: [turned(1, 900), turned(5, 900)], events: many(5, 4) })])).toBe('too few');
	expect(kind([ride({ cells: [turned(5, 900)], events: many(5, 8) })])).toBe('one torque');
	// as many strokes as slips at the hardest: each of them slipped
	expect(kind([ride({ cells: [turned(1, 900), turned(8, 4)], events: many(8, 8) })])).toBe('separated');
});

test('Rejected slips are in no point', () => {
	const events = [slip({ torqueBin: 5 }), slip({ torqueBin: 5, startS: 300, standing: 'rejected' })];
	const { points } = torqueCurve(build([ride({ cells: [turned(5, 100)], events })]), COUNTING);
	expect(points[5].slips).toBe(1);
});
