import { inverseOfSymmetric } from './inverseOfSymmetric';
import type { KeptFactors } from './keptFactors';
import type { FactorRow } from './poissonRegression';

/** Coefficients of highest likelihood, the first of them the level, and their covariances. */
export interface LogLinearSummit {
	readonly coefficients: readonly number[];
	readonly inverse: readonly (readonly number[])[];
}

/**
 * The summit of the likelihood of a log-linear rate by Newton's steps, in factors centred and scaled.
 *
 * @param rows counts and exposures, at least one event in all
 * @param kept which factors enter, and their scales
 * @returns coefficients and covariances; null when the likelihood has no summit within reach
 * @example logLinearSummit(rows, keptFactors(rows))?.coefficients
 * Source: McCullagh and Nelder 1989, Generalized Linear Models, 2nd ed., section 2.5.
 */
export function logLinearSummit(
	rows: readonly FactorRow[],
	{ places, scales }: KeptFactors
): LogLinearSummit | null {
	const design = rows.map(({ values }) => [
		1,
		...places.map((factor, i) => (values[factor] - scales[i].mean) / scales[i].spread)
	]);
	const exposure = rows.reduce((sum, row) => sum + row.exposure, 0);
	const coefficients = design[0].map(() => 0);
	coefficients[0] = Math.log(rows.reduce((sum, row) => sum + row.count, 0) / exposure);
	for (let round = 0; round < 100; round++) {
		const means = design.map((x, r) => rows[r].exposure * Math.exp(dot(x, coefficients)));
		const score = coefficients.map((_, j) =>
			design.reduce((sum, x, r) => sum + x[j] * (rows[r].count - means[r]), 0)
		);
		const information = coefficients.map((_, i) =>
			coefficients.map((__, j) => design.reduce((sum, x, r) => sum + x[i] * x[j] * means[r], 0))
		);
		const inverse = inverseOfSymmetric(information);
		if (inverse === null) return null;
		const steps = inverse.map((row) => dot(row, score));
		const largest = Math.max(...steps.map(Math.abs));
		if (largest < 1e-10) return { coefficients, inverse };
		// far from the summit a full step can overshoot
		steps.forEach((step, j) => (coefficients[j] += step * Math.min(1, 2 / largest)));
	}
	return null;
}

function dot(a: readonly number[], b: readonly number[]): number {
	return a.reduce((sum, value, i) => sum + value * b[i], 0);
}
