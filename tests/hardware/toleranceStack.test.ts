import { toleranceStack, type ChainLink } from '$lib/hardware/toleranceStack';
import { describe, expect, it } from 'vitest';
import { seeded } from './seeded';

const link = (sign: 1 | -1, nominalMm: number, minusMm: number, plusMm = minusMm): ChainLink => ({
	sign,
	nominalMm,
	minusMm,
	plusMm
});

describe('toleranceStack', () => {
	it('is the example of its own description', () => {
		const stack = toleranceStack([link(1, 20, 0.3), link(-1, 19, 0.4)]);
		expect(stack.nominalMm).toBeCloseTo(1, 12);
		expect(stack.worstCase.lowestMm).toBeCloseTo(0.3, 12);
		expect(stack.worstCase.highestMm).toBeCloseTo(1.7, 12);
		expect(stack.rootSumSquare.lowestMm).toBeCloseTo(0.5, 12);
		expect(stack.rootSumSquare.highestMm).toBeCloseTo(1.5, 12);
	});

	it('gives nothing for no links and the same limits both ways for one', () => {
		expect(toleranceStack([])).toEqual({
			nominalMm: 0,
			worstCase: { lowestMm: 0, highestMm: 0 },
			rootSumSquare: { lowestMm: 0, highestMm: 0 }
		});
		const { worstCase, rootSumSquare } = toleranceStack([link(1, 5, 0.1, 0.3)]);
		expect(worstCase).toEqual(rootSumSquare);
		expect(worstCase.lowestMm).toBeCloseTo(4.9, 12);
		expect(worstCase.highestMm).toBeCloseTo(5.3, 12);
	});

	it('has the worst case of trying every combination of limits (200 seeded chains)', () => {
		const random = seeded(31);
		for (let round = 0; round < 200; round++) {
			const links = Array.from({ length: 1 + Math.floor(random() * 7) }, () =>
				link(random() < 0.5 ? 1 : -1, random() * 50, random() * 0.4, random() * 0.4)
			);
			const sums = Array.from({ length: 2 ** links.length }, (_, bits) =>
				links.reduce(
					(sum, { sign, nominalMm, minusMm, plusMm }, index) =>
						sum + sign * (nominalMm + ((bits >> index) & 1 ? plusMm : -minusMm)),
					0
				)
			);
			const { worstCase, rootSumSquare } = toleranceStack(links);
			expect(worstCase.lowestMm).toBeCloseTo(Math.min(...sums), 9);
			expect(worstCase.highestMm).toBeCloseTo(Math.max(...sums), 9);
			expect(rootSumSquare.lowestMm).toBeGreaterThanOrEqual(worstCase.lowestMm - 1e-9);
			expect(rootSumSquare.highestMm).toBeLessThanOrEqual(worstCase.highestMm + 1e-9);
		}
	});

	it('has root-sum-square limits within which 99.7 % of independent normal lengths fall (seeded)', () => {
		// tolerance = three standard deviations of each link
		const random = seeded(8);
		const normal = () => Math.sqrt(-2 * Math.log(random())) * Math.cos(2 * Math.PI * random());
		const links = [link(1, 30, 0.1), link(-1, 12, 0.06), link(1, 4, 0.02, 0.08), link(-1, 9, 0.05)];
		const { rootSumSquare } = toleranceStack(links);
		let inside = 0;
		for (let draw = 0; draw < 40_000; draw++) {
			const sum = links.reduce((total, { sign, nominalMm, minusMm, plusMm }) => {
				const middle = nominalMm + (plusMm - minusMm) / 2;
				return total + sign * (middle + (normal() * (minusMm + plusMm)) / 6);
			}, 0);
			if (sum >= rootSumSquare.lowestMm && sum <= rootSumSquare.highestMm) inside++;
		}
		// 0.9973 with a standard error of 0.00026
		expect(inside / 40_000).toBeGreaterThan(0.9963);
		expect(inside / 40_000).toBeLessThan(0.9983);
	});

	it('refuses a negative tolerance and a length that is not a number', () => {
		expect(() => toleranceStack([link(1, 5, -0.1)])).toThrow('tolerance: --0.1');
		expect(() => toleranceStack([link(1, NaN, 0)])).toThrow('length: NaN');
	});
});
