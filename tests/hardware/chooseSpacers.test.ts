import { chooseSpacers, type SpacerCount } from '$lib/hardware/chooseSpacers';
import { describe, expect, it } from 'vitest';
import { seeded } from './seeded';

const STOCK = [
	{ thicknessMm: 2, count: 1 },
	{ thicknessMm: 1, count: 3 },
	{ thicknessMm: 0.5, count: 2 },
	{ thicknessMm: 0.25, count: 4 }
];

describe('chooseSpacers', () => {
	it('takes the smallest number of spacers', () => {
		expect(chooseSpacers(3.5, 0.01, STOCK)).toEqual({
			spacers: [
				{ thicknessMm: 2, count: 1 },
				{ thicknessMm: 1, count: 1 },
				{ thicknessMm: 0.5, count: 1 }
			],
			totalMm: 3.5,
			differenceMm: 0
		});
	});

	it('does not take more of a thickness than there are', () => {
		expect(chooseSpacers(5, 0.01, STOCK)?.spacers).toEqual([
			{ thicknessMm: 2, count: 1 },
			{ thicknessMm: 1, count: 3 }
		]);
		expect(chooseSpacers(7.5, 0.01, STOCK)).toBeNull();
	});

	it('takes one that is within the tolerance before two that are exact, and of equal numbers the closest', () => {
		expect(chooseSpacers(0.75, 0.25, STOCK)?.spacers).toHaveLength(1);
		const closest = chooseSpacers(0.9, 0.5, STOCK);
		expect(closest?.spacers).toEqual([{ thicknessMm: 1, count: 1 }]);
		expect(closest?.differenceMm).toBeCloseTo(0.1, 12);
	});

	it('needs none for a width that is there already, and none helps a stack that is too wide', () => {
		expect(chooseSpacers(0.02, 0.05, STOCK)?.spacers).toEqual([]);
		expect(chooseSpacers(-0.02, 0.05, STOCK)?.spacers).toEqual([]);
		expect(chooseSpacers(-0.2, 0.05, STOCK)).toBeNull();
		expect(chooseSpacers(1, 0.05, [])).toBeNull();
	});

	it('refuses a negative tolerance and widths beyond 100 mm', () => {
		expect(() => chooseSpacers(1, -0.1, STOCK)).toThrow('toleranceMm: -0.1');
		expect(() => chooseSpacers(101, 0.1, STOCK)).toThrow('neededMm: 101');
		expect(() => chooseSpacers(NaN, 0.1, STOCK)).toThrow(RangeError);
	});

	it('finds as few as trying all combinations does (300 seeded drawers)', () => {
		const random = seeded(17);
		for (let round = 0; round < 300; round++) {
			const stock = Array.from({ length: 1 + Math.floor(random() * 4) }, (_, index) => ({
				thicknessMm: Math.round((0.1 + random() * 2) * 100) / 100 + index * 1e-3,
				count: Math.floor(random() * 4)
			}));
			const needed = Math.round(random() * 600) / 100;
			const tolerance = Math.round(random() * 20) / 100;
			const best = bruteForce(needed, tolerance, stock);
			const found = chooseSpacers(needed, tolerance, stock);
			const number = found && found.spacers.reduce((sum, { count }) => sum + count, 0);
			expect(number).toBe(best?.number ?? null);
			if (!found || !best) continue;
			expect(Math.abs(found.differenceMm)).toBeCloseTo(best.off, 6);
			const sum = found.spacers.reduce((total, { thicknessMm, count }) => total + thicknessMm * count, 0);
			expect(sum).toBeCloseTo(found.totalMm, 9);
			for (const { thicknessMm, count } of found.spacers)
				expect(count).toBeLessThanOrEqual(
					stock
						.filter((spacer) => Math.abs(spacer.thicknessMm - thicknessMm) < 1e-9)
						.reduce((total, spacer) => total + spacer.count, 0)
				);
		}
	});
});

function bruteForce(needed: number, tolerance: number, stock: readonly SpacerCount[]) {
	let best: { number: number; off: number } | null = null;
	const go = (index: number, sum: number, number: number): void => {
		const off = Math.abs(sum - needed);
		if (
			off <= tolerance + 1e-9 &&
			(!best || number < best.number || (number === best.number && off < best.off))
		)
			best = { number, off };
		if (index === stock.length) return;
		for (let count = 0; count <= stock[index].count; count++)
			go(index + 1, sum + count * stock[index].thicknessMm, number + count);
	};
	go(0, 0, 0);
	return best as { number: number; off: number } | null;
}
