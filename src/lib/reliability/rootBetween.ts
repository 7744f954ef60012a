/**
 * Where a function changes its sign between two places: interpolation while it closes in, halving when it does
 * not, so that the answer is certain and the same on every machine.
 *
 * @param of continuous, with different signs at both ends (an end that is exactly 0 is an answer)
 * @param low start of the range
 * @param high end of the range
 * @returns the root, to about the last digit; NaN when both ends have the same sign
 * @example rootBetween((x) => x * x - 2, 0, 2) // 1.41421356
 * Source: Brent 1973, Algorithms for Minimization without Derivatives, chapter 4.
 */
export function rootBetween(of: (x: number) => number, low: number, high: number): number {
	// `best` is the nearest guess, `other` lies across the root, `before` is the guess before
	let [before, best] = [low, high];
	let [atBefore, atBest] = [of(low), of(high)];
	if (atBefore === 0) return low;
	if (atBest === 0) return high;
	if (!(atBefore * atBest < 0)) return NaN;
	let [other, atOther] = [before, atBefore];
	let step = best - before;
	let lastStep = step;
	for (let round = 0; round < 500; round++) {
		if (Math.abs(atOther) < Math.abs(atBest)) {
			[before, best, other] = [best, other, best];
			[atBefore, atBest, atOther] = [atBest, atOther, atBest];
		}
		const tolerance = 2 * Number.EPSILON * Math.abs(best) + Number.MIN_VALUE;
		const half = (other - best) / 2;
		if (Math.abs(half) <= tolerance || atBest === 0) return best;
		const guess = interpolated(before, best, other, atBefore, atBest, atOther);
		const takes =
			Math.abs(lastStep) >= tolerance &&
			Math.abs(atBefore) > Math.abs(atBest) &&
			Math.abs(guess) < Math.min(1.5 * Math.abs(half) - tolerance, Math.abs(lastStep) / 2) &&
			guess * half > 0;
		[lastStep, step] = takes ? [step, guess] : [half, half];
		[before, atBefore] = [best, atBest];
		best += Math.abs(step) > tolerance ? step : Math.sign(half) * tolerance;
		atBest = of(best);
		if (atBest > 0 === atOther > 0) {
			[other, atOther] = [before, atBefore];
			lastStep = step = best - before;
		}
	}
	return best;
}

/** step from `best` to where the line (two places) or inverse parabola (three) through the values meets 0 */
function interpolated(
	before: number,
	best: number,
	other: number,
	atBefore: number,
	atBest: number,
	atOther: number
): number {
	const s = atBest / atBefore;
	if (before === other) return ((other - best) * s) / (s - 1) || 0;
	const q = atBefore / atOther;
	const r = atBest / atOther;
	const top = s * ((other - best) * q * (q - r) - (best - before) * (r - 1));
	return -top / ((q - 1) * (r - 1) * (s - 1)) || 0;
}
