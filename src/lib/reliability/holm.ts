/**
 * P-values of several questions, raised so that the chance of even one false alarm among them stays below the
 * level chosen (Holm's step-down correction). Needs no independence of the questions.
 *
 * @param pValues each 0 to 1; NaN (a question that could not be asked) stays NaN and does not count
 * @returns corrected p-values in the same order, never below the given ones, at most 1
 * @throws RangeError for values outside 0 to 1
 * @example holm([0.01, 0.04, 0.03, 0.005]) // [0.03, 0.06, 0.06, 0.02]
 * Source: Holm 1979, Scandinavian J. Statistics 6:65.
 */
export function holm(pValues: readonly number[]): number[] {
	for (const p of pValues)
		if (p < 0 || p > 1) throw new RangeError(`a p-value must lie between 0 and 1; it is ${p}`);
	const asked = pValues.map((p, i) => ({ p, i })).filter(({ p }) => !Number.isNaN(p));
	asked.sort((a, b) => a.p - b.p);
	const corrected = new Array<number>(pValues.length).fill(NaN);
	let largest = 0;
	asked.forEach(({ p, i }, rank) => {
		// a smaller p-value never ends up above a larger one
		largest = Math.max(largest, Math.min(1, (asked.length - rank) * p));
		corrected[i] = largest;
	});
	return corrected;
}
