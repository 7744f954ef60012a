/**
 * Where a function changes its sign between two places, by halving: slow, certain, and the same on every
 * machine.
 *
 * @param of continuous, with different signs at both ends (an end that is exactly 0 is an answer)
 * @param low start of the range
 * @param high end of the range
 * @returns the root to the last digit that halving reaches; NaN when both ends have the same sign
 * @example rootBetween((x) => x * x - 2, 0, 2) // 1.41421356
 * Source: bisection, any textbook of numerical analysis.
 */
export function rootBetween(of: (x: number) => number, low: number, high: number): number {
	const atLow = of(low);
	const atHigh = of(high);
	if (atLow === 0) return low;
	if (atHigh === 0) return high;
	if (!(atLow * atHigh < 0)) return NaN;
	let [a, b] = [low, high];
	for (let step = 0; step < 200; step++) {
		const middle = (a + b) / 2;
		if (middle === a || middle === b) break;
		const value = of(middle);
		if (value === 0) return middle;
		if (value < 0 === atLow < 0) a = middle;
		else b = middle;
	}
	return (a + b) / 2;
}
