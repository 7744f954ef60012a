import { toleranceStack } from '$lib/hardware/toleranceStack';
import { describe, expect, it } from 'vitest';

/**
 * Source: the worked example "Tolerance stack-up" of the course PAI-150 at
 * physicalai-bmi.org/education/manufacturing/tolerance-stack-up (read 2026-11-25): three parts of 6.000,
 * 9.000 and 5.000 in a pocket of 20.200 with tolerances 0.10, 0.12, 0.08 and 0.05. It prints a gap of two
 * tenths, a worst case of 0.35 and a root sum square of 0.18. A course page and no handbook: no worked
 * example of one could be read here. The formulas are those of F. Scholz, Tolerance Stack Analysis Methods,
 * research report, December 1995.
 */
describe('toleranceStack against a published example', () => {
	const symmetric = (sign: 1 | -1, nominalMm: number, tolerance: number) =>
		({ sign, nominalMm, minusMm: tolerance, plusMm: tolerance }) as const;
	const stack = toleranceStack([
		symmetric(1, 20.2, 0.05),
		symmetric(-1, 6, 0.1),
		symmetric(-1, 9, 0.12),
		symmetric(-1, 5, 0.08)
	]);
	const half = ({ lowestMm, highestMm }: { lowestMm: number; highestMm: number }) =>
		(highestMm - lowestMm) / 2;

	it('leaves the printed gap', () => expect(stack.nominalMm).toBeCloseTo(0.2, 6));
	it('adds up to the printed worst case', () =>
		expect(Math.abs(half(stack.worstCase) - 0.35)).toBeLessThan(0.005));
	it('comes to the printed root sum square', () =>
		expect(Math.abs(half(stack.rootSumSquare) - 0.18)).toBeLessThan(0.005));
});
