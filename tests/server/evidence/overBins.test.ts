import { expect, test } from 'vitest';
import { overBins } from '$lib/server/evidence/overBins';

function parts(fromM: number, toM: number, widthM: number): [number, number][] {
	const found: [number, number][] = [];
	overBins(fromM, toM, widthM, (bin, metres) => found.push([bin, metres]));
	return found;
}

test('A stretch divides over the bins that it touches', () => {
	expect(parts(80, 230, 100)).toEqual([
		[0, 20],
		[1, 100],
		[2, 30]
	]);
	expect(parts(100, 200, 100)).toEqual([[1, 100]]);
	expect(parts(5, 5, 100)).toEqual([]);
});

test('Edges that rounding moves neither stop it nor lose distance', () => {
	// 3 x 0.1 is a little more than 0.3: a running sum from edge to edge would stand still here
	for (const widthM of [0.1, 1 / 3, 97.3, 1234.567 / 500])
		for (let from = 0; from < 40 * widthM; from += widthM) {
			const sum = parts(from, from + 7 * widthM, widthM).reduce((total, [, metres]) => total + metres, 0);
			expect(sum).toBeCloseTo(7 * widthM, 6);
		}
});
