import { expect, test } from 'vitest';
import { expectedSlips, torqueWords } from '$lib/server/evidence/expectedSlips';
import { strata } from '$lib/server/evidence/strata';
import { cell, ride, slip } from './rides';

const of = (...rides: ReturnType<typeof ride>[]) => strata(rides, 'slips', 'slip');
const slips = (count: number, torqueBin = 5) =>
	Array.from({ length: count }, (_, index) => slip({ startS: 100 + index * 60, torqueBin }));

test('The old rate times the new distance, group by group', () => {
	// 8 slips on 40 km at 16 to 25 Nm, 1 on 10 km at 25 to 40 Nm; the new build rides 20 and 30 km there
	const old = of(
		ride({
			cells: [cell(5, 40_000), cell(7, 10_000)],
			events: [...slips(8), slip({ startS: 9e3, torqueBin: 7 })]
		})
	);
	const result = expectedSlips(
		of(ride({ cells: [cell(4, 20_000), cell(6, 30_000)], events: [slip({ torqueBin: 6 })] })),
		old
	);
	expect(result.expected).toBeCloseTo(8 / 2 + 3, 9);
	expect(result.counted).toBe(1);
	expect(result.ratio).toBeCloseTo(1 / 7, 9);
	expect(result.groups.map(({ torque, expected }) => [torque, expected])).toEqual([
		['16 to 25 Nm', 4],
		['25 to 40 Nm', 3]
	]);
	expect(result.comparedM).toBe(50_000);
	expect(result.notComparedM).toBe(0);
});

test('A new build that was ridden only gently does not pass on the hard kilometres of the old one', () => {
	const old = of(ride({ cells: [cell(0, 30_000), cell(8, 10_000)], events: slips(12, 8) }));
	const result = expectedSlips(of(ride({ cells: [cell(0, 400_000)] })), old);
	expect(result).toMatchObject({ counted: 0, expected: 0, ratio: null, upper: null });
});

test('Torque and age that the old build never rode are left out, shown, and their slips are told', () => {
	const old = of(ride({ cells: [cell(5, 40_000)], events: slips(4) }));
	const result = expectedSlips(
		of(
			ride({ cells: [cell(5, 10_000), cell(9, 5_000)], events: slips(1, 9) }),
			ride({ ageFromM: 300_000, cells: [cell(5, 25_000)] })
		),
		old
	);
	expect(result).toMatchObject({ counted: 0, comparedM: 10_000, notComparedM: 30_000, slipsNotCompared: 1 });
	expect(result.leftOut).toEqual([
		{ torque: '16 to 25 Nm', ageFromM: 250_000, ageToM: 500_000, observedM: 25_000 },
		{ torque: 'from 40 Nm', ageFromM: 0, ageToM: 100_000, observedM: 5_000 }
	]);
});

test('A group that the old build hardly rode has no rate to expect by', () => {
	const old = of(ride({ cells: [cell(5, 40_000), cell(8, 1_900)], events: [...slips(2), ...slips(3, 8)] }));
	const result = expectedSlips(of(ride({ cells: [cell(5, 40_000), cell(8, 20_000)] })), old);
	expect(result.expected).toBeCloseTo(2, 9);
	expect(result.notComparedM).toBe(20_000);
});

test('Bursts on either side make the limits wider', () => {
	const old = of(ride({ events: slips(10) }));
	const now = of(ride({ events: slips(3) }));
	const single = expectedSlips(now, old);
	const bursts = expectedSlips(now, old, { counted: 3, reference: 3 });
	expect(bursts.lower).toBeLessThan(single.lower);
	expect(bursts.upper!).toBeGreaterThan(single.upper!);
});

test('Groups of torque are named by their edges', () => {
	expect([-1, 0, 2, 4].map(torqueWords)).toEqual([
		'torque not known',
		'0 to 8 Nm',
		'16 to 25 Nm',
		'from 40 Nm'
	]);
});
