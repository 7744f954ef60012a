import { expect, test } from 'vitest';
import { setAgainst } from '$lib/server/evidence/setAgainst';
import { ride, slip } from './rides';

const slips = (count: number) =>
	Array.from({ length: count }, (_, place) => slip({ startS: 100 + 60 * place, standing: 'confirmed' }));
const rides = (counts: readonly number[]) => counts.map((count) => ride({ events: slips(count) }));
const OLD = rides([3, 4, 2, 3, 4, 3, 2, 4, 3, 2]);

test('A burst in one ride widens both comparisons, by the same allowance', () => {
	const spread = setAgainst(rides([1, 1, 1, 1, 1, 1, 0, 0, 0, 0]), OLD, 'slips', 'none');
	const burst = setAgainst(rides([6, 0, 0, 0, 0, 0, 0, 0, 0, 0]), OLD, 'slips', 'none');
	expect(burst.ratio.ratio).toBeCloseTo(spread.ratio.ratio!, 9);
	expect(burst.expected.ratio).toBeCloseTo(spread.expected.ratio!, 9);
	expect(burst.ratio.upper!).toBeGreaterThan(1.3 * spread.ratio.upper!);
	expect(burst.expected.upper!).toBeGreaterThan(1.3 * spread.expected.upper!);
});

test('At one torque and age the two comparisons are the same', () => {
	const { ratio, expected } = setAgainst(rides([1, 0, 1, 0, 1]), OLD, 'slips', 'none');
	expect(expected.ratio).toBeCloseTo(ratio.ratio!, 9);
	expect(expected.notComparedM).toBe(0);
});
