import { checkConfidence } from './checks';
import { normalQuantile } from './normalQuantile';
import type { PowerLawFit } from './powerLawProcess';

/**
 * The mean exposure between events that a system has reached when watching ended, if the rate then stays as it
 * is: the reciprocal of the unbiased rate at the end, with approximate limits.
 *
 * @param fit from `powerLawProcess` with an end fixed apart from the events
 * @param confidence two-sided, 0 < confidence < 1
 * @returns mean and limits; Infinity where nothing bounds it (one event; an upper limit from too few events)
 * @throws RangeError for a confidence outside (0, 1)
 * @example meanGapAtEnd(fit, 0.8) // { mean: 310.2, lower: 157.7, upper: 548.6 }
 * Source: NIST/SEMATECH e-Handbook 8.4.5.2 (the upper limit exists only for more than z^2 / 2 events).
 */
export function meanGapAtEnd(
	fit: PowerLawFit,
	confidence: number
): { mean: number; lower: number; upper: number } {
	checkConfidence('confidence', confidence);
	const n = fit.events;
	const z = normalQuantile(1 - (1 - confidence) / 2);
	const mean = fit.shapeUnbiased > 0 ? fit.end / (n * fit.shapeUnbiased) : Infinity;
	if (n < 2) return { mean, lower: 0, upper: Infinity };
	const below = n + z ** 2 / 4 + Math.sqrt((n * z ** 2) / 2 + z ** 4 / 16);
	const above = n - z * Math.sqrt(n / 2);
	return {
		mean,
		lower: (mean * n * (n - 1)) / below ** 2,
		upper: above > 0 ? (mean * n * (n - 1)) / above ** 2 : Infinity
	};
}
