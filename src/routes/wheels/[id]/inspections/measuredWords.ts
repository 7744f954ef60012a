/**
 * Readings with their unit, each with as many decimals as the instrument shows; digits that somebody wrote down
 * beyond that are kept.
 *
 * @param resolution smallest step of the instrument, or null
 * @example measuredWords([1.6, 1.61], 0.01, 'mm', 'en-GB') // "1.60; 1.61 mm", kept on one line with its unit
 */
export function measuredWords(
	values: readonly number[],
	resolution: number | null,
	unit: string,
	locale: string
): string {
	const format = new Intl.NumberFormat(locale, {
		minimumFractionDigits: resolution === null ? 0 : decimalsOf(resolution),
		maximumFractionDigits: 4
	});
	return `${values.map((value) => format.format(value)).join('; ')}\u00a0${unit}`;
}

/** digits after the decimal sign of a step: 0.02 -> 2, 0.5 -> 1; at most 4 */
function decimalsOf(step: number): number {
	for (let digits = 0; digits < 4; digits++) {
		const scaled = step * 10 ** digits;
		if (Math.abs(scaled - Math.round(scaled)) < 1e-9) return digits;
	}
	return 4;
}
